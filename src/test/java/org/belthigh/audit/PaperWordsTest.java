package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What the auditor reads out of the text of a page. */
class PaperWordsTest {
  @Test
  void the_lists_before_a_practice_are_told_apart() {
    String box =
        """
        Before you start
        No throwing: Tobias 19 – carry balls in
        Arm rests: Noor 14,
        Andrés 22 – no pitching
        No swings: Ada 3 – helps
        Ask each player: does anything hurt?
        No swings: nobody
        """;

    assertThat(PaperWords.lists(box, "en"))
        .containsOnlyKeys("throwing", "resting-arm", "swinging")
        .hasEntrySatisfying("resting-arm", l -> assertThat(l).contains("Noor", "Andrés"))
        .hasEntrySatisfying("swinging", l -> assertThat(l).contains("Ada").doesNotContain("nobody"))
        .hasEntrySatisfying("throwing", l -> assertThat(l).doesNotContain("Noor"));
    assertThat(PaperWords.lists("Sin lanzar: Ana 1\nPregunte a cada uno: ¿te duele?", "es"))
        .containsOnlyKeys("throwing");
  }

  @Test
  void the_number_of_an_arm_box_is_not_that_of_its_day() {
    assertThat(
            PaperWords.mostPitches("You may pitch on Monday,\nApril 5: 75 pitches at most.", "en"))
        .hasValue(75);
    assertThat(
            PaperWords.mostPitches("Puedes pitchear el lunes, 5 de abril: máximo 50 tiros.", "es"))
        .hasValue(50);
    assertThat(PaperWords.mostPitches("Your arm rests.", "en")).isEmpty();
  }

  @Test
  void gear_has_a_number_where_sheets_give_one() {
    assertThat(PaperWords.gear("bat", "Bat", 2)).isEqualTo("Bat (2)");
    assertThat(PaperWords.gear("tape", "Tape", 2)).isEqualTo("Tape");
  }

  @Test
  void a_number_is_read_after_its_words_and_no_further() {
    PaperText row = new PaperText("Ada 3 up to 95 up to 35 7 ask first");

    assertThat(row.numberAfter(row.find("up to", 0))).contains("95");
    assertThat(row.numberAfter(row.find("up to", row.find("95", 0)))).contains("35");
    assertThat(row.numberAfter(row.find("ask", 0))).isEmpty();
  }
}
