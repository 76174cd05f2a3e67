package org.belthigh.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpotTest {
  @ParameterizedTest
  @CsvSource({
    "1, LOW_IN",
    "2, LOW_MIDDLE",
    "3, LOW_AWAY",
    "4, BELT_IN",
    "5, BELT_MIDDLE",
    "6, BELT_AWAY",
    "7, HIGH_IN",
    "8, HIGH_MIDDLE",
    "9, HIGH_AWAY",
    "ball, BALL",
    "BALL, BALL",
    "low-in, LOW_IN",
    "belt in, BELT_IN",
    "High_Middle, HIGH_MIDDLE",
    "away-belt, BELT_AWAY",
    "' 5 ', BELT_MIDDLE"
  })
  void reads_numbers_by_row_from_the_bottom_and_words_in_either_order(String text, Spot spot) {
    assertThat(Spot.parse(text)).contains(spot);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "10", "-1", "5.0", "middle", "belt", "belt-belt", "", "strike"})
  void reads_nothing_from_what_is_no_spot(String text) {
    assertThat(Spot.parse(text)).isEmpty();
  }

  @Test
  void number_row_and_column_belong_together() {
    for (int number = 1; number <= 9; number++) {
      Spot spot = Spot.numbered(number).orElseThrow();
      assertThat(spot.number()).isEqualTo(number);
      assertThat(Spot.at(spot.row().orElseThrow(), spot.column().orElseThrow())).isEqualTo(spot);
      assertThat(spot.strike()).isTrue();
      assertThat(spot.beltHigh()).isEqualTo(number >= 4 && number <= 6);
    }
    assertThat(Spot.numbered(0)).isEmpty();
    assertThat(Spot.numbered(10)).isEmpty();
  }

  @Test
  void a_ball_has_neither_number_nor_row_nor_column() {
    assertThat(Spot.BALL.strike()).isFalse();
    assertThat(Spot.BALL.beltHigh()).isFalse();
    assertThat(Spot.BALL.row()).isEmpty();
    assertThat(Spot.BALL.column()).isEmpty();
    assertThatIllegalStateException()
        .isThrownBy(Spot.BALL::number)
        .withMessage("A ball has no spot number");
  }
}
