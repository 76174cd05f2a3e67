package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EffectiveNumberTest {
  private static double decayed(double keep, int sessions) {
    EffectiveNumber number = EffectiveNumber.none();
    for (int i = 0; i < sessions; i++) {
      number = number.and(Math.pow(keep, i));
    }
    return number.value();
  }

  /** Closed form (1 - k^n)(1 + k) / ((1 + k^n)(1 - k)), its limit (1 + k) / (1 - k). */
  @ParameterizedTest
  @CsvSource({
    "0.9, 10, 9.17573",
    "0.8, 5, 4.557484",
    "0.9, 2000, 19",
    "0.7937005259840998, 2000, 8.694644" // half-life of three sessions
  })
  void of_sessions_that_fade(double keep, int sessions, double number) {
    assertThat(decayed(keep, sessions)).isCloseTo(number, within(5e-6));
  }

  @Test
  void equal_weights_count_fully_however_small() {
    EffectiveNumber number = EffectiveNumber.none().and(0.25).and(0.25).and(0.25);

    assertThat(number.value()).isCloseTo(3, within(1e-12));
    assertThat(number.and(0).value()).isCloseTo(3, within(1e-12));
  }

  @Test
  void nothing_weighed_is_nought() {
    assertThat(EffectiveNumber.none().value()).isZero();
  }

  @Test
  void a_weight_below_nought_is_refused() {
    assertThatThrownBy(() -> EffectiveNumber.none().and(-0.1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new EffectiveNumber(1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
