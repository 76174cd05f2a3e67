package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Growth;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.Step;
import org.belthigh.model.AgeBand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TugTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 9);

  /** Full weight, no decay, no later beginnings: the plain test of the books. */
  private static final Weights FULL =
      new Weights(1, 1, 1, 0, new Difficulty(0.25), Double.POSITIVE_INFINITY, 0);

  private static Tug tug(double mark, double floor, double error) {
    Catalogue catalogue =
        new Catalogue(
            Map.of(),
            Map.of("m", parameter("m", mark), "f", parameter("f", floor)),
            Map.of(),
            Map.of(),
            List.of(),
            Map.of(),
            new Growth(List.of()));
    return new Tug(
        new Step.Bar(Step.Counted.HARD_HITS, "m", "f"),
        Optional.empty(),
        catalogue,
        FULL,
        error,
        error);
  }

  private static Parameter parameter(String id, double value) {
    Map<AgeBand, Double> byAge = new java.util.EnumMap<>(AgeBand.class);
    for (AgeBand band : AgeBand.values()) {
      byAge.put(band, value);
    }
    return new Parameter(
        id,
        "",
        "share",
        0,
        1,
        "reviewed",
        DAY,
        List.of(
            new Parameter.Dated(
                LocalDate.of(2026, 1, 1),
                byAge,
                "common-practice",
                org.belthigh.catalogue.Evidence.JUDGEMENT,
                "")));
  }

  /**
   * Wald's line for 0.60 against 0.80: an acceptance number of slope·n + h. Source: A. Wald 1947
   * (inputs for drill use computed): success adds 0.287682, failure -0.693147.
   */
  @Test
  void a_toss_adds_the_log_likelihood_ratio() {
    Tug tug = tug(0.80, 0.60, 0.05);

    tug.add(1, 1, DAY, AgeBand.AGE_9_10, 0, 1);
    double success = tug.proof();
    tug.add(0, 1, DAY, AgeBand.AGE_9_10, 0, 1);

    assertThat(success).isCloseTo(0.287682, within(1e-6));
    assertThat(tug.proof() - success).isCloseTo(-0.693147, within(1e-6));
  }

  /** Source: Wald's inspection example 0.1 against 0.3, from memory: 1.098612 and -0.251314. */
  @Test
  void agrees_with_walds_inspection_example() {
    Tug tug = tug(0.3, 0.1, 0.02);

    tug.add(1, 1, DAY, AgeBand.AGE_9_10, 0, 1);
    double success = tug.proof();
    tug.add(0, 1, DAY, AgeBand.AGE_9_10, 0, 1);

    assertThat(success).isCloseTo(1.098612, within(1e-6));
    assertThat(tug.proof() - success).isCloseTo(-0.251314, within(1e-6));
  }

  @Test
  void the_bar_is_the_log_of_one_over_the_error() {
    assertThat(tug(0.8, 0.6, 0.05).markBar()).isCloseTo(Math.log(20), within(1e-12));
  }

  /**
   * The lines between which Wald's test goes on: slope·n - low and slope·n + high successes.
   * Sources: A. Wald 1947, from memory (0.1 against 0.3); NIST e-Handbook 6.2.6, from memory (0.01
   * against 0.10); 0.60 against 0.80 computed.
   */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.3, 0.02, 0.03, 0.186169, 2.582626, 2.875389",
    "0.01, 0.10, 0.05, 0.10, 0.039747, 0.938862, 1.205379",
    "0.60, 0.80, 0.05, 0.10, 0.706695, 2.295294, 2.946865"
  })
  void the_lines_of_walds_test(
      double floor, double mark, double a, double b, double slope, double low, double high) {
    Tug tug = tug(mark, floor, a);
    tug.add(1, 1, DAY, AgeBand.AGE_9_10, 0, 1);
    double success = tug.proof();
    tug.add(0, 1, DAY, AgeBand.AGE_9_10, 0, 1);
    double failure = tug.proof() - success;
    double each = success - failure;

    assertThat(-failure / each).isCloseTo(slope, within(1e-6));
    assertThat(-Math.log(b / (1 - a)) / each).isCloseTo(low, within(1e-6));
    assertThat(Math.log((1 - b) / a) / each).isCloseTo(high, within(1e-6));
  }

  @Test
  void best_remembers_the_highest_look_and_nothing_between_looks() {
    Tug tug = tug(0.8, 0.6, 0.05);

    tug.add(3, 3, DAY, AgeBand.AGE_9_10, 0, 1);
    tug.look(DAY);
    tug.add(0, 3, DAY, AgeBand.AGE_9_10, 0, 1);
    tug.look(DAY);

    assertThat(tug.best()).isCloseTo(3 * 0.287682, within(1e-5));
    assertThat(tug.proof()).isLessThan(0);
  }

  /** Ville's inequality, measured: looked at after every toss for a whole season of 300. */
  @Test
  void a_hitter_at_the_floor_is_rarely_proved_however_often_one_looks() {
    java.util.SplittableRandom random = new java.util.SplittableRandom(20270309);
    int seasons = 4_000;
    int proved = 0;
    for (int s = 0; s < seasons; s++) {
      Tug tug = tug(0.8, 0.6, 0.05);
      for (int toss = 0; toss < 300; toss++) {
        tug.add(random.nextDouble() < 0.6 ? 1 : 0, 1, DAY, AgeBand.AGE_9_10, 0, 1);
        tug.look(DAY);
      }
      proved += tug.best() >= tug.markBar() ? 1 : 0;
    }

    // at most 5 % in truth; 3 standard errors of 4,000 seasons are 1 %
    assertThat((double) proved / seasons).isBetween(0.01, 0.06);
  }
}
