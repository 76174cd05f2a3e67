package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.handout.PrintedPages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words, dates and feet as they are looked for on a page that was read back. */
class PaperTextTest {
  private static PaperText text(String text) {
    return new PaperText(text);
  }

  private static List<PaperText> pages(String... pages) {
    return Stream.of(pages).map(PaperText::new).toList();
  }

  @Test
  void line_ends_hyphens_marks_and_case_do_not_count() {
    assertThat(text("Stay be-\nhind the SCREEN!").has("stay behind the screen")).isTrue();
    assertThat(text("Stay behind").has("Stay behind the screen")).isFalse();
    assertThat(text("Núñez").has("Nunez")).as("an accent is part of a letter").isFalse();
    assertThat(text("Nu\u0301n\u0303ez").has("núñez")).as("however it is written").isTrue();
  }

  @Test
  void whole_words_are_counted_and_parts_of_words_are_not() {
    PaperText page = text("Ana 7\nAnabel 17 and Ana 70, Ana 7.");

    assertThat(page.count("Ana 7")).isEqualTo(2);
    assertThat(page.count("Ana")).isEqualTo(3);
    assertThat(page.count("7")).isEqualTo(2);
    assertThat(page.count("Bea")).isZero();
    assertThat(page.count("")).as("nothing stands nowhere").isZero();
    assertThat(page.hasWords("Anabel 17")).isTrue();
    assertThat(page.hasWords("bel 17")).isFalse();
    assertThat(page.hasWords("Ana")).as("at the very beginning").isTrue();
  }

  @Test
  void where_words_begin_is_told_from_a_place_on() {
    PaperText page = text("Bo Al Bo");

    assertThat(page.find("Bo", 0)).isZero();
    assertThat(page.find("Bo", 1)).isEqualTo(4);
    assertThat(page.find("Bo", 5)).isEqualTo(-1);
    assertThat(page.between(2, 6).has("Al Bo")).isTrue();
    assertThat(page.between(2, 4).has("Bo")).isFalse();
    assertThat(page.between(2, 4).count("Al")).as("its end is the end of a word").isEqualTo(1);
    assertThat(page.between(2, 4).squeezed()).isEqualTo("al");
  }

  @Test
  void a_text_begins_with_words() {
    assertThat(text("Ana · 7\nCard").startsWith("Ana 7")).isTrue();
    assertThat(text("Card Ana 7").startsWith("Ana 7")).isFalse();
  }

  @Test
  void a_sentence_may_go_on_overleaf() {
    assertThat(PaperText.have(pages("stay behind", "the screen"), "behind the screen")).isTrue();
    assertThat(PaperText.have(pages("one", "stay behind the screen"), "behind the screen"))
        .isTrue();
    assertThat(PaperText.have(pages("the screen", "stay behind"), "behind the screen"))
        .as("not backwards")
        .isFalse();
    assertThat(PaperText.have(pages("stay behind", "nothing", "the screen"), "behind the screen"))
        .as("not over a page")
        .isFalse();
    assertThat(PaperText.have(pages("abc", "def"), "abc def")).as("three letters each").isTrue();
    assertThat(PaperText.have(pages("ab", "cdef"), "ab cdef")).as("two are chance").isFalse();
    assertThat(PaperText.have(pages("abcd", "ef"), "abcd ef")).isFalse();
    assertThat(PaperText.have(List.of(), "screen")).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Week of April 5 | en | true",
        "Mon, Apr 5, to Sun | en | true",
        "Mon, Apr. 5 | en | true",
        "Week of APRIL 5 | en | true",
        "Week of April 15 | en | false",
        "Week of April 50 | en | false",
        "Week of March 5 | en | false",
        "April | en | false",
        "semana del 5 de abril | es | true",
        "lun, 5 abr | es | true",
        "semana del 15 de abril | es | false",
        "April 5 | es | false"
      })
  void a_day_stands_on_a_page_with_its_month(String text, String language, boolean stands) {
    assertThat(PaperWords.dated(text, LocalDate.of(2027, 4, 5), language)).isEqualTo(stands);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Printed for April 5, 2027 | en | true",
        "Printed for April 5, 2028 | en | false",
        "Printed for April 5 | en | false",
        "Printed for April 5, 20271 | en | false",
        "para el 5 de abril de 2027 | es | true",
        "para el 5 de abril de 2026 | es | false"
      })
  void a_foot_has_the_year_too(String text, String language, boolean stands) {
    assertThat(PaperWords.madeFor(text, LocalDate.of(2027, 4, 5), language)).isEqualTo(stands);
  }

  @Test
  void a_short_month_is_written_out() {
    LocalDate may = LocalDate.of(2027, 5, 3);

    assertThat(PaperWords.dated("May 3", may, "en")).isTrue();
    assertThat(PaperWords.dated("Mayor 3", may, "en")).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "en, move-up, move up",
    "en, not-seen-enough, not seen enough",
    "es, firm-up, afirmar",
    "es, keep-going, seguir",
    "en, jump, jump"
  })
  void decisions_have_their_words_in_each_language(String language, String id, String words) {
    assertThat(PaperWords.decision(language, id)).isEqualTo(words);
  }

  @Test
  void two_languages_are_known() {
    assertThat(PaperWords.knows("en")).isTrue();
    assertThat(PaperWords.knows("es")).isTrue();
    assertThat(PaperWords.knows("de")).isFalse();
    assertThat(PaperWords.mayPitch("en")).isEqualTo("You may pitch on");
    assertThat(PaperWords.mayPitch("es")).isEqualTo("Puedes pitchear el");
    assertThat(PaperWords.upTo("en")).isEqualTo("up to");
    assertThat(PaperWords.upTo("es")).isEqualTo("hasta");
  }

  private static Paper paper(String... pages) {
    return Paper.of(
        "u10/arm.pdf",
        new PrintedPages(
            "Arm", "en", Stream.of(pages).map(t -> new PrintedPages.Page(t, 612, 792)).toList()),
        "Two Files");
  }

  @Test
  void the_foot_begins_with_the_club_wherever_its_lines_end() {
    Paper paper = paper("Two Files\nArm sheet\nTwo\nFiles · April 5, 2027 · page 1 of 1");

    assertThat(paper.texts()).containsExactly("Two Files\nArm sheet\n");
    assertThat(paper.feet()).containsExactly("Two\nFiles · April 5, 2027 · page 1 of 1");
    assertThat(paper.has("Arm sheet")).isTrue();
    assertThat(paper.has("page 1")).as("a foot is no part of the page").isFalse();
    assertThat(paper.path()).isEqualTo("u10/arm.pdf");
    assertThat(paper.language()).isEqualTo("en");
  }

  @Test
  void of_two_such_lines_the_last_is_the_foot_and_a_page_may_have_none() {
    assertThat(paper("Two Files · top\nArm\nTwo Files · 1 of 1").feet())
        .containsExactly("Two Files · 1 of 1");
    Paper bare = paper("Arm sheet");
    assertThat(bare.feet()).containsExactly("");
    assertThat(bare.texts()).containsExactly("Arm sheet");
    assertThat(bare.pageCount()).isEqualTo(1);
  }

  private static List<Integer> sheets(String... numbers) {
    return paper(Stream.of(numbers).map(n -> "Two Files · " + n).toArray(String[]::new)).sheets();
  }

  @Test
  void the_sheets_in_it_are_whole() {
    assertThat(sheets("1 of 1")).containsExactly(1);
    assertThat(sheets("1 of 2", "2 of 2", "1 of 1")).containsExactly(2, 1);
    assertThat(sheets("1 of 2")).as("a page is missing").isEmpty();
    assertThat(sheets("2 of 2")).as("the first is missing").isEmpty();
    assertThat(sheets("1 of 3", "3 of 3")).as("one between").isEmpty();
    assertThat(sheets("1 of 2", "2 of 3")).as("of another sheet").isEmpty();
    assertThat(sheets("1 of 2", "1 of 2", "2 of 2")).isEmpty();
    assertThat(sheets("1 of 1", "no number")).as("a foot that says nothing").isEmpty();
    assertThat(sheets("1 of 99999999999")).isEmpty();
  }

  @Test
  void words_are_counted_over_all_pages() {
    assertThat(paper("Ana 7", "Ana 7 and Ana 7").count("Ana 7")).isEqualTo(3);
  }
}
