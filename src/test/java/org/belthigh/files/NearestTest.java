package org.belthigh.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
  @ParameterizedTest
  @CsvSource({
    "belt, belt, 0",
    "belt, bet, 1",
    "belt, bellt, 1",
    "belt, bent, 1",
    "belt, betl, 1",
    "kitten, sitting, 3",
    "'', belt, 4"
  })
  void distance_counts_single_edits(String one, String other, int distance) {
    assertThat(Nearest.distance(one, other)).isEqualTo(distance);
    assertThat(Nearest.distance(other, one)).isEqualTo(distance);
  }

  @Test
  void the_nearest_word_wins_and_of_equals_the_first_by_name() {
    assertThat(Nearest.to("p1", List.of("p11", "p01"))).contains("p01");
    assertThat(Nearest.to("zonecall", List.of("field-call", "zone-call"))).contains("zone-call");
  }

  @Test
  void nothing_near_gives_nothing() {
    assertThat(Nearest.to("someone", List.of("p01", "p02"))).isEmpty();
  }
}
