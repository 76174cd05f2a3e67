package org.belthigh.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.apache.commons.statistics.distribution.BetaDistribution;
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

  /**
   * Beside two intervals that the product does not print: the exact one (Clopper-Pearson, Newcombe
   * 1998, Table I, from memory, recomputed; NIST e-Handbook 7.2.4.1, from memory) and Jeffreys'
   * (Brown, Cai and DasGupta 2001, secondary). The exact one never lies inside ours at both ends,
   * and ours stays within five points of a hundred of Jeffreys' from twenty tosses on.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2527, 0.3676",
    "15, 148, 0.0578, 0.1617",
    "0, 20, 0, 0.1684",
    "1, 29, 0.0009, 0.1776"
  })
  void interval_beside_the_exact_one_and_that_of_jeffreys(
      int made, int seen, double low, double high) {
    Share share = new Share(made, seen);
    // the library cannot do without a success: then the whole error lies above, (α/2)^(1/n) from 1
    ConfidenceInterval exact =
        made == 0
            ? new ConfidenceInterval(0, 1 - Math.pow(0.025, 1.0 / seen), 0.95)
            : new ClopperPearsonInterval().createInterval(seen, made, 0.95);
    BetaDistribution jeffreys = BetaDistribution.of(made + 0.5, seen - made + 0.5);
    double from = made == 0 ? 0 : jeffreys.inverseCumulativeProbability(0.025);
    double to = made == seen ? 1 : jeffreys.inverseCumulativeProbability(0.975);

    assertThat(exact.getLowerBound()).isCloseTo(low, within(0.00005));
    assertThat(exact.getUpperBound()).isCloseTo(high, within(0.00005));
    assertThat(share.high() - share.low()).isLessThan(high - low);
    assertThat(share.low()).isCloseTo(from, within(0.03));
    assertThat(share.high()).isCloseTo(to, within(0.05));
  }

  /** Brown, Cai and DasGupta 2001, Statistical Science 16:101-133, secondary: 17 of 20. */
  @Test
  void the_beta_quantiles_of_the_library_give_jeffreys_interval() {
    BetaDistribution jeffreys = BetaDistribution.of(17.5, 3.5);

    assertThat(jeffreys.inverseCumulativeProbability(0.025)).isCloseTo(0.651422, within(5e-7));
    assertThat(jeffreys.inverseCumulativeProbability(0.975)).isCloseTo(0.955869, within(5e-7));
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
