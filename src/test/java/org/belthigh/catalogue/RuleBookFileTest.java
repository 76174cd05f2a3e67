package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;

/**
 * A rule book is read as it is printed, and one that a printing mistake has made milder or unclear
 * is refused. The book of these tests is made up; read anew in each.
 */
class RuleBookFileTest {
  private static final String BOOK =
      """
      id: made-up
      organisation: Made Up League
      title: "Pitches and rest"
      edition: "first"
      age: actual
      sources: [common-practice]
      status: confirmed
      bands:
        - ages: [9, 10]
          daily_max: 60
          rest:
            - {from: 1, to: 20, days: 0}
            - {from: 21, to: 40, days: 1}
            - {from: 41, days: 2}
        - ages: [11, 12]
          daily_max: 80
          weekly_max: 120
          rest:
            - {from: 1, to: 80, days: 1}
      """;

  private static CatalogueLoader.Result<RuleBook> read(String text) {
    return CatalogueLoader.ruleBook("book.yaml", text, CatalogueLoader.load().orThrow());
  }

  private static RuleBook book(String old, String other) {
    return read(changed(old, other)).orThrow();
  }

  private static String changed(String old, String other) {
    assertThat(BOOK).contains(old);
    return BOOK.replace(old, other);
  }

  /** What is said of the book with {@code other} in the place of {@code old}. */
  private static List<String> said(String old, String other) {
    CatalogueLoader.Result<RuleBook> result = read(changed(old, other));
    assertThat(result.value()).isEmpty();
    return result.problems().stream()
        .map(Problem::text)
        .map(t -> t.replaceFirst("book.yaml line [0-9]+ column [0-9]+, ", ""))
        .map(t -> t.replace("\n", " "))
        .toList();
  }

  @Test
  void bands_and_rows_are_read_as_they_are_printed() {
    RuleBook book = read(BOOK).orThrow();

    assertThat(book.bands())
        .containsExactly(
            new RuleBook.Band(
                9,
                10,
                60,
                OptionalInt.empty(),
                List.of(
                    new RuleBook.RestRow(1, OptionalInt.of(20), 0, true),
                    new RuleBook.RestRow(21, OptionalInt.of(40), 1, true),
                    new RuleBook.RestRow(41, OptionalInt.empty(), 2, true))),
            new RuleBook.Band(
                11,
                12,
                80,
                OptionalInt.of(120),
                List.of(new RuleBook.RestRow(1, OptionalInt.of(80), 1, true))));
  }

  @Test
  void the_rules_around_the_table_are_read() {
    RuleBook book =
        book(
            "status: confirmed",
            """
            status: confirmed
            consecutive_days: 2
            appearances: {most: 2, days: 3}
            same_day: should-not
            avoid_catching: true
            finish_the_batter: to-last-batter
            catcher:
              pitches_that_bar_catching: 41
              innings_that_bar_pitching: 4
              return_pitches: 21
              return_pitches_older: 31
              return_ages_older: [15, 16]
              source: s57
            years:
              - {ages: [0, 12], innings: 80, months_off: 4, months_in_a_row: 2, source: s05}""");

    assertThat(book.consecutiveDays()).hasValue(2);
    assertThat(book.appearances()).contains(new RuleBook.Appearances(2, 3));
    assertThat(book.sameDay()).isEqualTo(RuleBook.SameDay.SHOULD_NOT);
    assertThat(book.avoidCatching()).isTrue();
    assertThat(book.finishTheBatter()).isEqualTo(RuleBook.LegalCount.TO_LAST_BATTER);
    assertThat(book.catcher()).contains(new RuleBook.CatcherRules(41, 4, 21, 31, 15, 16, "s57"));
    assertThat(book.year(12)).contains(new RuleBook.Year(0, 12, OptionalInt.of(80), 4, 2, "s05"));
    assertThat(book.year(13)).isEmpty();
    assertThat(book.allSources()).containsExactly("common-practice", "s57", "s05");
  }

  @Test
  void a_source_that_does_not_exist_is_a_fault_wherever_the_book_names_it() {
    assertThat(said("[common-practice]", "[common-practise]"))
        .containsExactly(
            "sources: there is no source 'common-practise'; it must be the id of a source that"
                + " exists. Maybe 'common-practice' is meant.");
    assertThat(
            said(
                "status: confirmed",
                "status: confirmed\nyears:\n  - {ages: [0, 12], months_off: 4, months_in_a_row: 2,"
                    + " source: common-practise}"))
        .hasSize(1);
  }

  @Test
  void no_two_books_have_one_id() {
    SortedMap<String, String> files = new TreeMap<>(Resources.all());
    files.put("rules/books/copy.yaml", files.get("rules/books/pitch-smart-2018.yaml"));

    assertThat(CatalogueLoader.load(files).problems())
        .extracting(Problem::text)
        .anyMatch(t -> t.contains("there is a rule book 'pitch-smart-2018' already"));
  }

  @Test
  void rows_from_memory_ask_for_the_days_of_the_next_confirmed_one() {
    RuleBook book =
        book(
            """
            status: confirmed
            bands:
              - ages: [9, 10]
                daily_max: 60
                rest:
                  - {from: 1, to: 20, days: 0}
                  - {from: 21, to: 40, days: 1}
            """,
            """
            status: partly
            bands:
              - ages: [9, 10]
                daily_max: 60
                rest:
                  - {from: 1, to: 20, days: 0, status: from-memory}
                  - {from: 21, to: 40, days: 1, status: from-memory}
            """);

    assertThat(book.restDays(9, 1)).isEqualTo(2);
    assertThat(book.restDays(9, 21)).isEqualTo(2);
    assertThat(book.printsRest(9, 20)).isFalse();
    assertThat(book.printsRest(9, 41)).isTrue();
  }

  @Test
  void the_last_row_of_a_band_is_never_from_memory() {
    assertThat(said("{from: 41, days: 2}", "{from: 41, days: 2, status: from-memory}"))
        .contains(
            "rest: the last row is from memory; a row that is from memory is read as the next one,"
                + " so the last one must be confirmed. Leave the band out until a source is found.");
  }

  @Test
  void a_book_with_a_row_from_memory_is_not_called_confirmed() {
    assertThat(said("to: 40, days: 1}", "to: 40, days: 1, status: from-memory}"))
        .containsExactly(
            "status: the book is called confirmed, and a row is from memory; a book with a row from"
                + " memory is 'partly' confirmed. Write status: partly.");
  }

  @Test
  void an_open_book_has_no_numbers_and_any_other_has_some() {
    assertThat(said("status: confirmed", "status: open"))
        .containsExactly(
            "status: the book is called open, and has numbers; an open book has none, since none is"
                + " confirmed. Write status: partly, and say of each row how sure it is.");
    String bands = BOOK.substring(BOOK.indexOf("bands:"));
    assertThat(said(bands, "bands: []\n"))
        .containsExactly(
            "bands: there is no band that can be read; a rule book has at least one age band. Add a"
                + " band such as {ages: [9, 10], daily_max: 75, rest: […]}.");
    RuleBook open = read(changed(bands, "bands: []\n").replace("confirmed", "open")).orThrow();
    assertThat(open.bands()).isEmpty();
    assertThat(open.longestRest()).isZero();
  }

  @Test
  void a_band_says_for_which_ages_it_is() {
    assertThat(said("ages: [9, 10]", "weekly_max: 100"))
        .containsExactly(
            "ages: the key is missing or empty; ages must be the youngest and the oldest age of the"
                + " band. Write it as [9, 10].");
    assertThat(said("ages: [9, 10]", "ages: [10, 9]"))
        .containsExactly(
            "ages: [10, 9] is no such range; ages must be two whole numbers from 1 to 99, the lower"
                + " first. Write it as [9, 10].");
    assertThat(
            said(
                "status: confirmed",
                "status: confirmed\nyears: [{months_off: 4, months_in_a_row: 2, source: s05}]"))
        .singleElement()
        .asString()
        .startsWith("ages: the key is missing or empty;");
  }

  @Test
  void a_band_has_at_least_one_row() {
    assertThat(said("- {from: 1, to: 80, days: 1}", "[]"))
        .containsExactly(
            "rest: there is no row that can be read; a band has at least one row of rest. Add a row"
                + " such as {from: 1, to: 20, days: 0}.");
  }

  @Test
  void more_pitches_may_ask_for_as_much_rest_but_never_for_less() {
    assertThat(book("{from: 41, days: 2}", "{from: 41, days: 1}").restDays(9, 41)).isEqualTo(1);
    assertThat(said("{from: 41, days: 2}", "{from: 41, days: 0}"))
        .containsExactly(
            "rest: 0 days follow 1; more pitches never need less rest. Correct the days of one of"
                + " the two rows.");
  }

  @Test
  void a_row_may_be_one_count_of_pitches_long_but_not_end_before_it_begins() {
    RuleBook book =
        book(
            "- {from: 21, to: 40, days: 1}",
            "- {from: 21, to: 21, days: 1}\n      - {from: 22, to: 40, days: 1}");

    assertThat(book.restDays(9, 21)).isEqualTo(1);
    assertThat(said("{from: 21, to: 40, days: 1}", "{from: 21, to: 20, days: 1}"))
        .anyMatch(t -> t.startsWith("rest: the row from 21 ends at 20; only the last row may be"));
    assertThat(said("{from: 21, to: 40, days: 1}", "{from: 21, days: 1}"))
        .anyMatch(t -> t.startsWith("rest: the row from 21 ends nowhere; only the last row may"));
  }

  @Test
  void the_last_row_is_open_or_ends_at_the_most_pitches_of_a_day() {
    assertThat(said("{from: 1, to: 80, days: 1}", "{from: 1, to: 81, days: 1}"))
        .containsExactly(
            "rest: the last row ends at 81; the last row is open or ends at the most pitches of a"
                + " day, 80. Leave out 'to' in the last row.");
  }

  @Test
  void rows_and_bands_follow_each_other_without_gap_or_overlap() {
    assertThat(said("{from: 21, to: 40", "{from: 22, to: 40"))
        .singleElement()
        .asString()
        .startsWith("rest: a row begins at 22 pitches;")
        .contains("so this one begins at 21");
    assertThat(said("{from: 41, days: 2}", "{from: 40, days: 2}"))
        .singleElement()
        .asString()
        .contains("so this one begins at 41");
    assertThat(said("ages: [11, 12]", "ages: [12, 12]"))
        .singleElement()
        .asString()
        .startsWith("bands: ages 10 and 12 follow each other;")
        .contains("so the next begins at 11");
  }
}
