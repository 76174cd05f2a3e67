package org.belthigh.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class GrainTest {
  @ParameterizedTest
  @EnumSource(Grain.class)
  void ten_spots_look_like_as_many_answers_as_the_grain_has(Grain grain) {
    assertThat(Arrays.stream(Spot.values()).map(grain::seen).distinct())
        .hasSize(grain.answers())
        .contains("ball");
  }
}
