package org.belthigh.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CallTest {
  @ParameterizedTest
  @CsvSource(
      nullValues = "nothing",
      value = {
        "5, belt-middle, middle, belt, strike",
        "ball, ball, ball, ball, ball",
        "none, ball, ball, ball, ball",
        "-, ball, ball, ball, ball",
        "low, nothing, nothing, low, strike",
        "middle, nothing, middle, nothing, strike",
        "Away, nothing, away, nothing, strike",
        "strike, nothing, nothing, nothing, strike"
      })
  void is_read_at_its_own_grain_and_at_coarser_ones(
      String text, String nine, String column, String row, String strike) {
    Call call = Call.parse(text).orElseThrow();

    assertThat(call.readAt(Grain.NINE).orElse(null)).isEqualTo(nine);
    assertThat(call.readAt(Grain.COLUMN).orElse(null)).isEqualTo(column);
    assertThat(call.readAt(Grain.ROW).orElse(null)).isEqualTo(row);
    assertThat(call.readAt(Grain.STRIKE).orElse(null)).isEqualTo(strike);
  }

  @ParameterizedTest
  @CsvSource({
    "5, NINE",
    "ball, NINE",
    "none, NINE",
    "belt, ROW",
    "middle, COLUMN",
    "strike, STRIKE"
  })
  void knows_its_grain(String text, Grain grain) {
    assertThat(Call.parse(text).orElseThrow().grain()).isEqualTo(grain);
  }

  @Test
  void nothing_is_read_from_other_words() {
    assertThat(Call.parse("beltt")).isEmpty();
    assertThat(Call.parse("")).isEmpty();
    assertThat(Call.parse("10")).isEmpty();
  }
}
