package org.belthigh.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareTest {
  /** Newcombe 1998, Statistics in Medicine 17:857-872, Table I, method 3 (four decimals). */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void interval_agrees_with_newcombe_1998(int made, int seen, double low, double high) {
    Share share = new Share(made, seen);

    assertThat(share.low()).isCloseTo(low, within(0.00005));
    assertThat(share.high()).isCloseTo(high, within(0.00005));
  }

  @ParameterizedTest
  @CsvSource({"81, 263", "15, 148", "1, 29", "13, 16", "250, 533", "8, 10", "17, 20", "10, 10"})
  void interval_agrees_with_the_wilson_interval_of_a_library(int made, int seen) {
    Share share = new Share(made, seen);
    ConfidenceInterval wilson = new WilsonScoreInterval().createInterval(seen, made, 0.95);

    assertThat(share.low()).isCloseTo(wilson.getLowerBound(), within(1e-9));
    assertThat(share.high()).isCloseTo(wilson.getUpperBound(), within(1e-9));
  }

  /** Mirror images of the rows above: the interval of the failures turned round. */
  @ParameterizedTest
  @CsvSource({"81, 263", "15, 148", "0, 20", "1, 29", "7, 7"})
  void interval_of_the_failures_is_the_mirror_image(int made, int seen) {
    Share share = new Share(made, seen);
    Share failures = new Share(seen - made, seen);

    assertThat(share.low()).isCloseTo(1 - failures.high(), within(1e-12));
    assertThat(share.high()).isCloseTo(1 - failures.low(), within(1e-12));
  }

  @Test
  void ends_stay_exactly_at_nought_and_one() {
    assertThat(new Share(0, 3).low()).isEqualTo(0.0);
    assertThat(new Share(3, 3).high()).isEqualTo(1.0);
  }

  @Test
  void counts_add_up() {
    Share share = new Share(3, 8).plus(new Share(2, 4)).and(true).and(false);

    assertThat(share).isEqualTo(new Share(6, 14));
    assertThat(share.value()).isEqualTo(6.0 / 14);
  }

  @Test
  void nothing_seen_has_no_value() {
    assertThat(Share.none().isEmpty()).isTrue();
    assertThatIllegalStateException().isThrownBy(Share.none()::value);
    assertThatIllegalStateException().isThrownBy(Share.none()::low);
  }

  @Test
  void more_made_than_seen_cannot_be() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Share(4, 3))
        .withMessage("made must be 0 to seen, but made is 4 and seen is 3");
  }
}
