package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.belthigh.model.Grain;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TossMixTest {
  /** So many of each spot of the belt row, of each other spot, and balls. */
  private static TossMix nine(int belt, int other, int balls) {
    Map<String, Integer> tossed = new HashMap<>();
    for (Spot spot : Spot.values()) {
      int n = spot.beltHigh() ? belt : spot.strike() ? other : balls;
      if (n > 0) {
        tossed.put(spot.id(), n);
      }
    }
    return new TossMix(Grain.NINE, tossed);
  }

  /** Chance levels computed for four mixes; 40 % balls is worth 40 % to who never looks. */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 0, 0.11111, 0.11111", // the nine, evenly
    "1, 1, 6, 0.4, 0.2", // 40 % balls
    "4, 1, 2, 0.2, 0.145", // belt-heavy
    "3, 1, 15, 0.5, 0.28667" // half balls
  })
  void blind_answers_are_worth(int belt, int other, int balls, double always, double inProportion) {
    TossMix mix = nine(belt, other, balls);

    assertThat(mix.alwaysCommonest().orElseThrow()).isCloseTo(always, within(5e-6));
    assertThat(mix.inProportion().orElseThrow()).isCloseTo(inProportion, within(5e-6));
  }

  @Test
  void guessing_evenly_over_nine_is_within_one_spot_in_49_of_81_pairs() {
    assertThat(nine(1, 1, 0).withinOneInProportion().orElseThrow()).isEqualTo(49.0 / 81);
    assertThat(nine(2, 2, 7).withinOneInProportion().orElseThrow()).isEqualTo(49.0 / 81);
  }

  @Test
  void calling_the_middle_every_time_is_always_within_one_spot() {
    assertThat(nine(3, 1, 5).withinOneAtBest().orElseThrow()).isEqualTo(1.0);
  }

  @Test
  void within_one_row_the_belt_is_always_right_and_the_low_row_often() {
    TossMix rows = new TossMix(Grain.ROW, Map.of("low", 1, "belt", 1, "high", 1, "ball", 4));

    assertThat(rows.withinOneAtBest().orElseThrow()).isEqualTo(1.0);
    assertThat(rows.withinOneInProportion().orElseThrow()).isEqualTo(7.0 / 9);
    assertThat(rows.commonest()).contains("ball");
  }

  @Test
  void among_equals_the_first_on_the_picture_is_the_commonest() {
    assertThat(nine(1, 1, 1).commonest()).contains("low-in");
  }

  @Test
  void nothing_tossed_is_worth_nothing() {
    TossMix none = new TossMix(Grain.NINE, Map.of());

    assertThat(none.commonest()).isEmpty();
    assertThat(none.alwaysCommonest()).isEmpty();
    assertThat(none.inProportion()).isEmpty();
    assertThat(none.withinOneAtBest()).isEmpty();
    assertThat(none.withinOneInProportion()).isEmpty();
  }

  @Test
  void an_answer_that_was_not_tossed_is_no_part_of_the_mix() {
    assertThatThrownBy(() -> new TossMix(Grain.ROW, Map.of("low", 0)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
