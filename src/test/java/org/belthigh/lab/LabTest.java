package org.belthigh.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Skill;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LabTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Curriculum CURRICULUM = CATALOGUE.curricula().get("belthigh-2027");
  private static final Lab LAB = new Lab(CATALOGUE, CURRICULUM);
  private static final int SEASONS = 500;
  private static final long SEED = 7;

  private static Cell run(Skill skill, AgeBand band, Scenario scenario) {
    return LAB.run(new Trial(skill, band, scenario, false, SEASONS), SEED);
  }

  private static Cell run(Skill skill, AgeBand band, Hitter hitter) {
    return run(skill, band, Scenario.of(hitter, 12));
  }

  /**
   * Source: A. Wald, Sequential Analysis, 1947 (inspection example 0.1 against 0.3, inputs from
   * memory) and NIST e-Handbook 6.2.6 (0.01 against 0.10, from memory); the last two are drill
   * uses, computed. Expected sample numbers at p1 and p0.
   */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.3, 0.02, 0.03, 23.8217, 28.7048",
    "0.01, 0.1, 0.05, 0.1, 16.4467, 27.957",
    "0.6, 0.8, 0.05, 0.1, 25.9649, 19.0561",
    "0.7, 0.85, 0.1, 0.1, 28.7875, 24.4018"
  })
  void expected_sample_numbers(
      double p0, double p1, double alpha, double beta, double atP1, double atP0) {
    Wald wald = new Wald(p0, p1, alpha, beta);

    assertThat(wald.tossesAtP1()).isCloseTo(atP1, within(1e-3));
    assertThat(wald.tossesAtP0()).isCloseTo(atP0, within(1e-3));
  }

  /** The bound is 5 %; of 500 seasons, 3 standard errors are 2.9 %. */
  @ParameterizedTest
  @EnumSource(
      value = Skill.class,
      names = {"SEE", "CHOOSE", "DRIVE"})
  void a_hitter_at_the_floor_is_rarely_moved_up_and_one_at_the_mark_rarely_firmed_up(Skill skill) {
    assertThat(run(skill, AgeBand.AGE_9_10, Hitter.AT_FLOOR).movedUp().value()).isLessThan(0.08);
    assertThat(run(skill, AgeBand.AGE_9_10, Hitter.AT_MARK).firmedUp().value()).isLessThan(0.08);
  }

  @ParameterizedTest
  @EnumSource(
      value = Hitter.class,
      names = {"TAKES_AT_FLOOR", "CHASES_AT_FLOOR"})
  void nobody_moves_up_on_one_of_two_shares(Hitter hitter) {
    Cell cell = run(Skill.CHOOSE, AgeBand.AGE_11_12, hitter);

    assertThat(cell.movedUp().value()).isLessThan(0.08);
  }

  @Test
  void most_hitters_at_the_mark_are_moved_up_within_the_season() {
    Cell cell = run(Skill.DRIVE, AgeBand.AGE_13_14, Hitter.AT_MARK);

    assertThat(cell.movedUp().value()).isGreaterThan(0.9);
    assertThat(cell.missed().made()).isEqualTo(SEASONS - cell.movedUp().made());
    assertThat(cell.meanTosses()).isGreaterThan(cell.wald());
    assertThat(cell.medianWeek()).isBetween(1, 3);
  }

  /** Asked for is 1.3; of 500 seasons, 3 standard errors are about 0.1. */
  @Test
  void the_plain_test_looked_at_after_each_toss_is_nearly_as_quick_as_walds() {
    Scenario each = Scenario.of(Hitter.AT_MARK, 1).on(Scenario.Rhythm.DAILY);

    Cell cell = LAB.run(new Trial(Skill.DRIVE, AgeBand.AGE_11_12, each, true, SEASONS), SEED);

    assertThat(cell.movedUp().value()).isGreaterThan(0.98);
    assertThat(cell.ratio()).isBetween(1.0, 1.4);
  }

  @Test
  void eight_of_ten_looked_at_weekly_moves_up_many_at_the_floor() {
    Cell cell = run(Skill.SEE, AgeBand.AGE_9_10, Hitter.AT_FLOOR);

    assertThat(cell.eightOfTen().movedUp().value()).isGreaterThan(5 * cell.movedUp().value());
  }

  @Test
  void eight_of_ten_looks_at_each_kind_at_the_end_of_a_week() {
    List<Boolean> good = new ArrayList<>(java.util.Collections.nCopies(24, true));
    List<Boolean> bad = new ArrayList<>(java.util.Collections.nCopies(24, false));
    Scenario scenario = Scenario.of(Hitter.AT_MARK, 12);
    bad.addAll(good);
    good.addAll(java.util.Collections.nCopies(24, true));

    EightOfTen.Passed first = EightOfTen.passed(List.of(good), scenario);
    EightOfTen.Passed both = EightOfTen.passed(List.of(good, bad), scenario);

    assertThat(first).isEqualTo(new EightOfTen.Passed(24, 1));
    assertThat(both).isEqualTo(new EightOfTen.Passed(96, 2));
  }

  @Test
  void a_learner_waits_less_with_more_tosses_and_is_rarely_moved_up_too_soon() {
    Cell few = run(Skill.SEE, AgeBand.AGE_11_12, Scenario.learning(3, 12));
    Cell many = run(Skill.SEE, AgeBand.AGE_11_12, Scenario.learning(3, 24));

    assertThat(few.movedUp().value()).isGreaterThan(0.95);
    assertThat(few.early().value()).isLessThan(0.2);
    assertThat(many.wait(many.byWeek())).isLessThan(few.wait(few.byWeek()));
  }

  /** 95 % is stated; of 1,000 hitters, 4 standard errors are 2.8 %. */
  @Test
  void the_stated_interval_holds_the_true_share() {
    Cell cell = run(Skill.DRIVE, AgeBand.AGE_11_12, Hitter.AT_FLOOR);

    assertThat(cell.firstLook().seen()).isEqualTo(SEASONS);
    assertThat(cell.firstLook().value()).isGreaterThan(0.91);
  }

  /** Source: {@code label_error}, computed: 0.7 right, 0.85 written right, 0.60 agree. */
  @ParameterizedTest
  @CsvSource({"0.7, 0.60", "0.9, 0.766667", "1.0, 0.85"})
  void a_careless_log_agrees_as_reckoned(double right, double agreement) {
    SplittableRandom random = new SplittableRandom(SEED);
    Seasons.Pen pen = new Seasons.Pen(random, 0.15);
    int calls = 40_000;
    int agree = 0;
    for (int i = 0; i < calls; i++) {
      Spot called = random.nextDouble() < right ? Spot.BELT_MIDDLE : Spot.BALL;
      agree += pen.write(Spot.BELT_MIDDLE, Spot.values()) == called ? 1 : 0;
    }

    // 4 standard errors of 40,000 calls are 1 %
    assertThat((double) agree / calls).isCloseTo(agreement, within(0.01));
  }

  @Test
  void streaks_keep_the_share_but_repeat_more_often() {
    Seasons maker = new Seasons(CATALOGUE, CURRICULUM, Skill.DRIVE, AgeBand.AGE_11_12);
    double[] steady = shareAndRepeats(maker, Scenario.of(Hitter.AT_MARK, 24));
    double[] streaky = shareAndRepeats(maker, Scenario.of(Hitter.STREAKY_AT_MARK, 24));

    assertThat(streaky[0]).isCloseTo(steady[0], within(0.02));
    assertThat(streaky[1]).isGreaterThan(steady[1] + 0.05);
  }

  private static double[] shareAndRepeats(Seasons maker, Scenario scenario) {
    int good = 0;
    int repeats = 0;
    int all = 0;
    for (int season = 0; season < 100; season++) {
      List<Boolean> own = maker.season("s", season, scenario).good().get(0);
      for (int i = 1; i < own.size(); i++) {
        good += own.get(i) ? 1 : 0;
        repeats += own.get(i).equals(own.get(i - 1)) ? 1 : 0;
        all++;
      }
    }
    return new double[] {(double) good / all, (double) repeats / all};
  }

  @Test
  void the_result_does_not_depend_on_the_number_of_threads() throws Exception {
    Trial trial = new Trial(Skill.SEE, AgeBand.AGE_13_14, Scenario.learning(4, 12), false, 600);
    ForkJoinPool alone = new ForkJoinPool(1);
    ForkJoinPool many = new ForkJoinPool(3);
    try {
      Cell one = alone.submit(() -> LAB.run(trial, SEED)).get();
      Cell three = many.submit(() -> LAB.run(trial, SEED)).get();

      assertThat(three).isEqualTo(one);
      assertThat(LAB.run(trial, SEED + 1)).isNotEqualTo(one);
    } finally {
      alone.shutdown();
      many.shutdown();
    }
  }

  @Test
  void the_page_has_every_table_and_each_chart_a_title_and_a_description() {
    List<Cell> cells =
        Trial.of(Skill.CHOOSE, AgeBand.AGE_9_10, 10).stream().map(t -> LAB.run(t, SEED)).toList();

    Map<String, String> files = LabReport.files(cells, List.of("send 7-8"), "belthigh lab");

    assertThat(files.get("lab.md"))
        .contains("Made by `belthigh lab`", "Not judged, only played: send 7-8.")
        .contains("| choose 9-10, takes at floor | choose-2 | 10 |")
        .contains("choose 9-10, chases alone", "## Learning", "careless", "streaks", "home")
        .contains("lab/errors.svg", "lab/tosses.svg", "lab/learning.svg", "lab/sureness.svg");
    assertThat(files).hasSize(5);
    files.forEach(
        (path, text) -> {
          if (path.endsWith(".svg")) {
            assertThat(text).startsWith("<svg").contains("<title id=", "<desc id=");
          }
        });
  }

  /** A curriculum of one's own, even with the id of ours, is what is tried. */
  @Test
  void tries_the_curriculum_that_it_is_given() {
    Curriculum other =
        new Curriculum(
            "own",
            CURRICULUM.version(),
            CURRICULUM.status(),
            CURRICULUM.title(),
            CURRICULUM.ladders(),
            CURRICULUM.drills(),
            CURRICULUM.gear());
    Trial trial =
        new Trial(Skill.SEE, AgeBand.AGE_9_10, Scenario.of(Hitter.AT_MARK, 12), false, 50);

    assertThat(new Lab(CATALOGUE, other).run(trial, SEED)).isEqualTo(LAB.run(trial, SEED));
  }

  @Test
  void sending_is_a_game_under_eleven() {
    assertThat(LAB.judged(Skill.SEND, AgeBand.AGE_9_10)).isFalse();
    assertThat(LAB.judged(Skill.SEND, AgeBand.AGE_11_12)).isTrue();
  }

  @Test
  void a_scenario_and_a_trial_check_themselves() {
    assertThatThrownBy(() -> Scenario.learning(1, 12)).hasMessageContaining("but is 1");
    assertThatThrownBy(() -> Scenario.of(Hitter.AT_MARK, 0)).hasMessageContaining("not 0, 0.0");
    assertThatThrownBy(
            () -> new Trial(Skill.SEE, AgeBand.AGE_9_10, Scenario.of(Hitter.AT_MARK, 12), false, 0))
        .hasMessageContaining("but is 0");
  }
}
