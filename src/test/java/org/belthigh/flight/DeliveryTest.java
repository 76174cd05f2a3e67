package org.belthigh.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.belthigh.model.Ball;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeliveryTest {
  private static final Projectile PLASTIC = Projectile.of(Ball.PLASTIC).orElseThrow();

  @Test
  void who_tosses_goes_back_until_the_ball_no_longer_drops_steeply() {
    Delivery delivery = Delivery.of(PLASTIC, 12, 25, 0.68, 0.6).orElseThrow();

    assertThat(delivery.feet()).isBetween(15, 17);
    assertThat(delivery.toss().steep()).isFalse();
    assertThat(delivery.toss().flight().seconds()).isCloseTo(0.68, within(1e-5));
    Delivery nearer = Delivery.of(PLASTIC, 12, delivery.feet() - 1, 0.68, 0.6).orElseThrow();
    assertThat(nearer.toss().steep()).isTrue();
    assertThat(nearer.feet()).isEqualTo(12);
  }

  @ParameterizedTest
  @CsvSource({"12, 0.55", "15, 0.55", "20, 0.68"})
  void a_toss_that_is_flat_enough_stays_where_the_drill_has_it(int feet, double seconds) {
    assertThat(Delivery.of(PLASTIC, feet, 25, seconds, 0.6).orElseThrow().feet()).isEqualTo(feet);
  }

  @ParameterizedTest
  @CsvSource({"20, 0.40", "25, 0.55", "60, 0.7"})
  void a_toss_that_no_parent_can_make_is_refused(int feet, double seconds) {
    assertThat(Delivery.of(PLASTIC, feet, feet + 5, seconds, 0.6)).isEmpty();
  }
}
