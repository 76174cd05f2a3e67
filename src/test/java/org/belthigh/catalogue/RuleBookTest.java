package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleBookTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  /** Every edge of every row of the three books, restated from the publishers' tables. */
  @ParameterizedTest
  @CsvSource({
    "pitch-smart-2018, 7, 50, '20:0 21:1 35:1 36:2 50:2'",
    "pitch-smart-2018, 8, 50, '20:0 21:1 35:1 36:2 50:2'",
    "pitch-smart-2018, 9, 75, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 75:4'",
    "pitch-smart-2018, 10, 75, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 75:4'",
    "pitch-smart-2018, 11, 85, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 85:4'",
    "pitch-smart-2018, 12, 85, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 85:4'",
    "pitch-smart-2018, 13, 95, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 95:4'",
    "pitch-smart-2018, 14, 95, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 95:4'",
    "pitch-smart-2018, 15, 95, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 95:4'",
    "pitch-smart-2018, 16, 95, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 95:4'",
    "pitch-smart-2018, 17, 105, '30:0 31:1 45:1 46:2 60:2 61:3 80:3 81:4 105:4'",
    "pitch-smart-2018, 18, 105, '30:0 31:1 45:1 46:2 60:2 61:3 80:3 81:4 105:4'",
    "pitch-smart-2018, 19, 120, '30:0 31:1 45:1 46:2 60:2 61:3 80:3 81:4 105:4 106:5 120:5'",
    "pitch-smart-2014, 8, 50, '20:0 21:1 35:1 36:2 50:2'",
    "pitch-smart-2014, 10, 75, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 75:4'",
    "pitch-smart-2014, 17, 105, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 105:4'",
    "pitch-smart-2014, 22, 120, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 120:4'",
    "little-league-reg-vi, 8, 50, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4'",
    "little-league-reg-vi, 14, 95, '20:0 21:1 35:1 36:2 50:2 51:3 65:3 66:4 95:4'",
    "little-league-reg-vi, 16, 95, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 95:4'",
    "little-league-reg-vi, 17, 105, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 105:4'"
  })
  void a_band_has_the_published_limit_and_rest(
      String book, int age, int dailyMax, String pitchesToDays) {
    RuleBook read = CATALOGUE.ruleBook(book);

    assertThat(read.band(age).orElseThrow().dailyMax()).isEqualTo(dailyMax);
    for (String pair : pitchesToDays.split(" ", -1)) {
      int pitches = Integer.parseInt(pair.split(":", -1)[0]);
      int days = Integer.parseInt(pair.split(":", -1)[1]);
      assertThat(read.restDays(age, pitches)).as("%s pitches at %s", pitches, age).isEqualTo(days);
    }
  }

  @Test
  void an_age_without_a_row_borrows_the_next_older_one() {
    RuleBook book = CATALOGUE.ruleBook("pitch-smart-2018");

    assertThat(book.restDays(8, 51)).isEqualTo(3);
    assertThat(book.restDays(8, 66)).isEqualTo(4);
    assertThat(book.restDays(6, 21)).isEqualTo(1);
    assertThat(book.restDays(30, 1)).as("no older row: the longest").isEqualTo(5);
    assertThat(book.restDays(8, 0)).isZero();
  }

  @Test
  void no_table_covers_6_and_23() {
    assertThat(CATALOGUE.ruleBook("pitch-smart-2018").band(6)).isEmpty();
    assertThat(CATALOGUE.ruleBook("pitch-smart-2018").band(23)).isEmpty();
  }

  @Test
  void more_pitches_never_need_less_rest() {
    for (RuleBook book : CATALOGUE.ruleBooks().values()) {
      for (int age = 5; age <= 24; age++) {
        for (int pitches = 1; pitches <= 150; pitches++) {
          assertThat(book.restDays(age, pitches))
              .as("%s, age %s, %s pitches", book.id(), age, pitches)
              .isGreaterThanOrEqualTo(book.restDays(age, pitches - 1));
        }
      }
    }
  }

  @Test
  void the_first_edition_ends_where_the_second_begins() {
    LocalDate last = LocalDate.of(2017, 12, 31);

    assertThat(CATALOGUE.ruleBook("pitch-smart-2014").inForce(last)).isTrue();
    assertThat(CATALOGUE.ruleBook("pitch-smart-2018").inForce(last)).isFalse();
    assertThat(CATALOGUE.ruleBook("pitch-smart-2014").inForce(last.plusDays(1))).isFalse();
    assertThat(CATALOGUE.ruleBook("pitch-smart-2018").inForce(last.plusDays(1))).isTrue();
  }

  @Test
  void every_book_names_edition_source_and_status() {
    for (RuleBook book : CATALOGUE.ruleBooks().values()) {
      assertThat(book.edition()).isNotBlank();
      assertThat(book.sources()).isNotEmpty();
      assertThat(book.status()).isEqualTo("confirmed");
    }
  }
}
