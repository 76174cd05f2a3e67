package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.belthigh.model.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DetectionTest {
  private static Detection of(int hits, int signals, int alarms, int others) {
    return new Detection(new Share(hits, signals), new Share(alarms, others));
  }

  @ParameterizedTest
  @CsvSource({"18, 20, 3, 12", "0, 5, 5, 5", "25, 25, 0, 20", "1, 2, 1, 2", "7, 31, 60, 61"})
  void d_prime_agrees_with_the_quantiles_of_a_library(int h, int n, int f, int m) {
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double hit = normal.inverseCumulativeProbability((h + 0.5) / (n + 1));
    double alarm = normal.inverseCumulativeProbability((f + 0.5) / (m + 1));

    assertThat(of(h, n, f, m).dPrime().orElseThrow()).isCloseTo(hit - alarm, within(1e-9));
    assertThat(of(h, n, f, m).leaning().orElseThrow()).isCloseTo(-(hit + alarm) / 2, within(1e-9));
  }

  /** A textbook normal quantile: z(0.84134) = 1, so 0.84134 against 0.15866 lies 2 apart. */
  @Test
  void two_standard_deviations_apart_is_two() {
    assertThat(of(84134, 100000, 15866, 100000).dPrime().orElseThrow()).isCloseTo(2, within(1e-3));
  }

  @Test
  void swinging_at_everything_and_taking_everything_are_worth_nothing() {
    assertThat(of(20, 20, 20, 20).dPrime().orElseThrow()).isCloseTo(0, within(1e-12));
    assertThat(of(0, 20, 0, 20).dPrime().orElseThrow()).isCloseTo(0, within(1e-12));
    assertThat(of(20, 20, 20, 20).leaning().orElseThrow()).isNegative();
    assertThat(of(0, 20, 0, 20).leaning().orElseThrow()).isPositive();
  }

  @Test
  void one_sort_alone_tells_nothing_apart() {
    assertThat(of(3, 4, 0, 0).dPrime()).isEmpty();
    assertThat(of(0, 0, 3, 4).dPrime()).isEmpty();
    assertThat(Detection.none().leaning()).isEmpty();
  }
}
