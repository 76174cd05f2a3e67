package org.belthigh.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LabTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Lab LAB = new Lab(CATALOGUE, CATALOGUE.curricula().get("belthigh-2027"));
  private static final int SEASONS = 500;

  private static Cell run(Skill skill, AgeBand band, Hitter hitter) {
    return LAB.run(skill, band, hitter, SEASONS, 7, 12, 0);
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

  @Test
  void most_hitters_at_the_mark_are_moved_up_within_the_season() {
    Cell cell = run(Skill.DRIVE, AgeBand.AGE_13_14, Hitter.AT_MARK);

    assertThat(cell.movedUp().value()).isGreaterThan(0.8);
    assertThat(cell.meanTosses()).isGreaterThan(cell.wald());
  }

  @Test
  void eight_of_ten_looked_at_weekly_moves_up_many_at_the_floor() {
    Cell cell = run(Skill.SEE, AgeBand.AGE_9_10, Hitter.AT_FLOOR);

    assertThat(cell.eightOfTen().value()).isGreaterThan(5 * cell.movedUp().value());
  }

  @Test
  void the_same_seed_gives_the_same_page() {
    Cell one = run(Skill.SEE, AgeBand.AGE_13_14, Hitter.LEARNING);
    Cell two = run(Skill.SEE, AgeBand.AGE_13_14, Hitter.LEARNING);

    assertThat(LabReport.markdown(List.of(one), SEASONS, 7, "x"))
        .isEqualTo(LabReport.markdown(List.of(two), SEASONS, 7, "x"))
        .contains("| see | 13-14 | see-4 | 12 |");
    assertThat(LabReport.svg(List.of(one))).startsWith("<svg").contains("<title");
  }

  @Test
  void sending_is_a_game_under_eleven() {
    assertThat(LAB.judged(Skill.SEND, AgeBand.AGE_9_10)).isFalse();
    assertThat(LAB.judged(Skill.SEND, AgeBand.AGE_11_12)).isTrue();
  }
}
