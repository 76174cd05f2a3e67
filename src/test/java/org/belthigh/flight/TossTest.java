package org.belthigh.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.belthigh.model.Ball;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: section c of the hitting-science reference, aim for a child of 140 cm. */
class TossTest {
  private static final Projectile PLASTIC = Projectile.of(Ball.PLASTIC).orElseThrow();
  private static final double FOOT = 0.3048;

  @ParameterizedTest
  @CsvSource({
    "12, 18, 0.446, 14.01, 0.5131, 24.6",
    "12, 20, 0.603, 12.76, 0.4592, 18.8",
    "12, 25, 0.761, 9.64,  0.3633, 10.5",
    "15, 18, 0.761, 27.42, 0.7202, 30.9",
    "15, 20, 0.446, 16.08, 0.5967, 25.6",
    "15, 20, 0.603, 18.36, 0.6043, 24.5",
    "15, 20, 0.761, 20.68, 0.6134, 23.4",
    "20, 20, 0.603, 32.09, 0.946,  39.5",
    "20, 25, 0.761, 18.24, 0.6699, 21.7"
  })
  void the_flat_toss_to_each_row(
      int feet, double mph, double target, double degrees, double seconds, double descent) {
    Toss toss =
        Toss.flat(PLASTIC, feet * FOOT, 0.75, target, Launch.mph(mph, 0, 1).speed()).orElseThrow();

    // the targets are printed to the millimetre
    assertThat(toss.launch().degrees()).isCloseTo(degrees, within(0.04));
    assertThat(toss.flight().seconds()).isCloseTo(seconds, within(2e-3));
    assertThat(toss.flight().descent()).isCloseTo(descent, within(0.15));
    assertThat(toss.flight().height()).isCloseTo(target, within(1e-5));
  }

  @ParameterizedTest
  @CsvSource({"18, 0.446", "18, 0.603", "18, 0.761", "20, 0.761"})
  void a_flat_toss_from_20_feet_that_slow_is_refused(double mph, double target) {
    assertThat(Toss.flat(PLASTIC, 20 * FOOT, 0.75, target, Launch.mph(mph, 0, 1).speed()))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"12, 0.55", "15, 0.68", "20, 0.55", "20, 0.72", "25, 0.60"})
  void a_timed_toss_arrives_on_time_and_on_target(int feet, double seconds) {
    Toss toss = Toss.timed(PLASTIC, feet * FOOT, 0.9, 0.6, seconds).orElseThrow();

    assertThat(toss.flight().seconds()).isCloseTo(seconds, within(1e-5));
    assertThat(toss.flight().height()).isCloseTo(0.6, within(1e-5));
    assertThat(Flight.of(PLASTIC, toss.launch(), feet * FOOT)).contains(toss.flight());
  }

  @Test
  void the_same_time_from_nearby_is_a_steep_lob() {
    assertThat(Toss.timed(PLASTIC, 12 * FOOT, 0.9, 0.6, 0.72).orElseThrow().steep()).isTrue();
    assertThat(Toss.timed(PLASTIC, 20 * FOOT, 0.9, 0.6, 0.72).orElseThrow().steep()).isFalse();
  }

  @Test
  void the_steep_bound_is_a_fall_of_more_than_the_row_of_the_tallest_hitter() {
    // the row of a hitter of 185 cm is 20.8 cm high
    Toss steep = Toss.timed(PLASTIC, 12 * FOOT, 0.9, 0.6, 0.72).orElseThrow();

    assertThat(steep.dropOverPlate()).isGreaterThan(0.208);
    assertThat(0.4318 * Math.tan(Math.toRadians(Toss.STEEP_DEGREES))).isGreaterThan(0.208);
  }

  @Test
  void no_arm_keeps_a_foam_ball_up_for_an_hour() {
    assertThat(Toss.timed(Projectile.of(Ball.FOAM).orElseThrow(), 4, 0.9, 0.6, 60)).isEmpty();
  }
}
