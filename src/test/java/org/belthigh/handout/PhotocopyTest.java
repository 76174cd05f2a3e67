package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every print of the demo, copied badly. */
class PhotocopyTest {
  /** Half of the 300 dots an inch that copiers usually have; our choice. */
  private static final int POOR = 150;

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void every_word_and_line_is_still_there(String language) throws IOException {
    for (Map.Entry<String, byte[]> print : prints(language).entrySet()) {
      assertThat(Photocopy.lost(print.getValue(), POOR)).as(print.getKey()).isEmpty();
    }
  }

  @Test
  void the_measure_finds_what_a_copier_too_coarse_loses() throws IOException {
    byte[] card = prints("en").get("u10/cards/p01-week-2027-04-05.pdf");

    assertThat(Photocopy.lost(card, POOR / 4))
        .hasSizeGreaterThan(20)
        .anyMatch(lost -> lost.startsWith("a line"))
        .anyMatch(lost -> !lost.startsWith("a line"));
  }

  private static Map<String, byte[]> prints(String language) {
    Plan plan =
        SamplePlans.demo(1, Set.of("u10"), Set.of("p01", "p12"), "letter", Optional.of(language));
    Map<String, byte[]> prints = new TreeMap<>();
    new Handouts(SamplePlans.WORDS)
        .print(plan, EnumSet.complementOf(EnumSet.of(Print.PACKET)), prints::put);
    return prints;
  }
}
