package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: the worked heights of the hitting-science reference (estimates of ours on Winter). */
class BodyTest {
  @ParameterizedTest
  @CsvSource({
    "110, 28.8, 66.0, 12.4",
    "125, 32.7, 75.0, 14.1",
    "140, 36.7, 84.0, 15.8",
    "155, 40.6, 93.0, 17.5",
    "170, 44.5, 102.0, 19.2",
    "185, 48.5, 111.0, 20.8"
  })
  void rows_of_the_zone(double stature, double bottom, double top, double row) {
    List<Double> rows = Body.rows(stature);

    assertThat(rows.get(0)).isCloseTo(bottom, within(0.06));
    assertThat(rows.get(3)).isCloseTo(top, within(0.06));
    assertThat(rows.get(1) - rows.get(0)).isCloseTo(row, within(0.06));
  }
}
