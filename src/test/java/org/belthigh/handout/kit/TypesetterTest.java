package org.belthigh.handout.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TypesetterTest {
  private static List<String> set(String text, double room) {
    return Typesetter.set(Text.marked(text), 10, room).stream().map(Line::plain).toList();
  }

  @Test
  void lines_break_at_spaces_and_are_never_wider_than_the_column() {
    String text = "Say the height out loud before the ball gets to the plate, each time.";
    for (double room = 40; room < 400; room += 7) {
      List<Line> lines = Typesetter.set(Text.of(text), 10, room);
      double wide = room;
      assertThat(lines)
          .allSatisfy(line -> assertThat(line.width()).isLessThanOrEqualTo(wide + 0.02));
      assertThat(String.join(" ", lines.stream().map(Line::plain).toList())).isEqualTo(text);
    }
  }

  @Test
  void width_is_the_sum_of_the_advances_of_the_face() {
    // Liberation Sans: i is 455, m is 1706 units of 2048
    assertThat(Typesetter.preferredWidth(Text.of("mi"), 2048)).isEqualTo(1706 + 455);
    assertThat(Typesetter.preferredWidth(Text.bold("mi"), 2048)).isEqualTo(1821 + 569);
  }

  @Test
  void hyphenated_names_break_after_the_hyphen_and_ranges_do_not() {
    assertThat(set("María-Guadalupe", 50)).containsExactly("María-", "Guadalupe");
    assertThat(set("45-60 45-60", 40)).containsExactly("45-60", "45-60");
  }

  @Test
  void a_word_wider_than_the_column_is_broken_with_a_hyphen() {
    assertThat(set("Wolfeschlegelsteinhausen", 60))
        .allSatisfy(line -> assertThat(Face.REGULAR.width(line, 10)).isLessThanOrEqualTo(60))
        .satisfies(lines -> assertThat(lines.get(0)).endsWith("-"))
        .satisfies(
            lines ->
                assertThat(String.join("", lines).replace("-", ""))
                    .isEqualTo("Wolfeschlegelsteinhausen"));
  }

  @Test
  void a_word_is_broken_no_closer_than_three_letters_to_its_ends() {
    assertThat(set("countdowns", 53))
        .allSatisfy(line -> assertThat(line.length()).isGreaterThan(2));
  }

  @Test
  void a_column_too_narrow_for_three_letters_overflows_with_the_word() {
    assertThatThrownBy(() -> set("countdown", 12))
        .isInstanceOfSatisfying(
            Overflow.class, overflow -> assertThat(overflow.text()).isEqualTo("countdown"))
        .hasMessage(
            "text: \"countdown\" is wider than its column even when broken.\n"
                + "Maybe a wider column or a shorter text helps.");
  }

  @Test
  void bold_runs_keep_their_face_across_lines() {
    List<Line> lines = Typesetter.set(Text.marked("see it **early, say it** early"), 10, 60);
    assertThat(lines).hasSizeGreaterThan(1);
    assertThat(lines.stream().flatMap(line -> line.runs().stream()))
        .filteredOn(run -> run.face() == Face.BOLD)
        .extracting(run -> run.text().strip())
        .containsExactly("early,", "say it");
  }

  @Test
  void a_line_feed_breaks_and_a_no_break_space_does_not() {
    assertThat(set("one\ntwo", 300)).containsExactly("one", "two");
    assertThat(set("at 15\u00a0feet", 40)).containsExactly("at", "15\u00a0feet");
  }

  @Test
  void what_the_font_lacks_shows_as_a_box_and_invisible_characters_go() {
    assertThat(Text.of("Łukasz 李 e\u0301\u200b\u0007").plain()).isEqualTo("Łukasz □ é");
  }

  @Test
  void a_lone_pair_of_stars_is_refused() {
    assertThatThrownBy(() -> Text.marked("see **early"))
        .hasMessage("text \"see **early\": a ** has no partner; they must come in pairs.");
  }

  @Test
  void an_empty_text_has_no_lines() {
    assertThat(set("", 100)).isEmpty();
    assertThat(set("  \n ", 100)).isEmpty();
  }
}
