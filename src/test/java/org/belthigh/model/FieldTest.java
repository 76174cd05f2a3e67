package org.belthigh.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldTest {
  @ParameterizedTest
  @CsvSource({
    "LEFT, RIGHT, PULL, '4,5'",
    "LEFT_CENTER, RIGHT, PULL, '4,5'",
    "CENTER, RIGHT, CENTER, '4,5,6'",
    "RIGHT_CENTER, RIGHT, OPPOSITE, '5,6'",
    "RIGHT, RIGHT, OPPOSITE, '5,6'",
    "LEFT, LEFT, OPPOSITE, '5,6'",
    "LEFT_CENTER, LEFT, OPPOSITE, '5,6'",
    "CENTER, LEFT, CENTER, '4,5,6'",
    "RIGHT_CENTER, LEFT, PULL, '4,5'",
    "RIGHT, LEFT, PULL, '4,5'"
  })
  void wants_the_belt_spots_that_suit_its_side(
      Field field, Side side, Field.Direction direction, String spots) {
    String wanted =
        Arrays.stream(Spot.values())
            .filter(spot -> field.wants(spot, side))
            .map(spot -> String.valueOf(spot.number()))
            .collect(Collectors.joining(","));

    assertThat(wanted).isEqualTo(spots);
    assertThat(field.direction(side)).isEqualTo(direction);
  }
}
