package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleBookTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  /** Every edge of every row of every book, restated from the publishers' tables. */
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
    "little-league-reg-vi, 17, 105, '30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 105:4'",
    "babe-ruth-tournament-2018, 7, 50, '1:0 20:0 21:1 35:1 36:2 50:2'",
    "babe-ruth-tournament-2018, 8, 50, '1:0 20:0 21:1 35:1 36:2 50:2'",
    "babe-ruth-tournament-2018, 9, 75, '1:0 40:0 41:1 65:1 66:2 75:2'",
    "babe-ruth-tournament-2018, 10, 75, '1:0 40:0 41:1 65:1 66:2 75:2'",
    "babe-ruth-tournament-2018, 11, 85, '1:0 40:0 41:1 65:1 66:2 85:2'",
    "babe-ruth-tournament-2018, 12, 85, '1:0 40:0 41:1 65:1 66:2 85:2'",
    "babe-ruth-tournament-2018, 13, 95, '1:0 45:0 46:1 75:1 76:2 95:2'",
    "babe-ruth-tournament-2018, 15, 95, '1:0 45:0 46:1 75:1 76:2 95:2'",
    "babe-ruth-tournament-2018, 16, 105, '1:0 45:0 46:1 75:1 76:2 105:2'",
    "babe-ruth-tournament-2018, 18, 105, '1:0 45:0 46:1 75:1 76:2 105:2'",
    "american-legion-2018, 13, 105, '1:0 30:0 31:1 45:1 46:2 60:2 61:3 80:3 81:4 105:4'",
    "american-legion-2018, 19, 105, '1:0 30:0 31:1 45:1 46:2 60:2 61:3 80:3 81:4 105:4'",
    "ontario-rp2-11, 7, 50, '1:0 20:0 21:1 35:1 36:2 50:2'",
    "ontario-rp2-11, 9, 50, '1:0 20:0 21:1 35:1 36:2 50:2'",
    "ontario-rp2-11, 10, 75, '1:0 25:0 26:1 40:1 41:2 55:2 56:3 65:3 66:4 75:4'",
    "ontario-rp2-11, 11, 75, '1:0 25:0 26:1 40:1 41:2 55:2 56:3 65:3 66:4 75:4'",
    "ontario-rp2-11, 12, 85, '1:0 30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 85:4'",
    "ontario-rp2-11, 13, 85, '1:0 30:0 31:1 45:1 46:2 60:2 61:3 75:3 76:4 85:4'",
    "ontario-rp2-11, 14, 95, '1:0 35:0 36:1 50:1 51:2 65:2 66:3 80:3 81:4 95:4'",
    "ontario-rp2-11, 15, 95, '1:0 35:0 36:1 50:1 51:2 65:2 66:3 80:3 81:4 95:4'",
    "ontario-rp2-11, 16, 105, '1:0 40:0 41:1 55:1 56:2 70:2 71:3 85:3 86:4 105:4'",
    "ontario-rp2-11, 18, 105, '1:0 40:0 41:1 55:1 56:2 70:2 71:3 85:3 86:4 105:4'",
    "ontario-rp2-11, 19, 115, '1:0 45:0 46:1 60:1 61:2 75:2 76:3 90:3 91:4 115:4'",
    "ontario-rp2-11, 22, 115, '1:0 45:0 46:1 60:1 61:2 75:2 76:3 90:3 91:4 115:4'",
    "wiaa-2017, 14, 105, '1:0 30:0 31:1 50:1 51:2 75:2 76:3 105:3'",
    "wiaa-2017, 18, 105, '1:0 30:0 31:1 50:1 51:2 75:2 76:3 105:3'",
    "mshsl-2017, 14, 105, '1:0 30:0 31:1 50:1 51:2 75:2 76:3 105:3'",
    "mshsl-2017, 18, 105, '1:0 30:0 31:1 50:1 51:2 75:2 76:3 105:3'",
    "piaa-2017, 14, 100, '1:0 25:0 26:2 50:2 51:2 75:2 76:3 100:3'",
    "piaa-2017, 18, 100, '1:0 25:0 26:2 50:2 51:2 75:2 76:3 100:3'"
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
    }
  }

  @Test
  void numbers_are_confirmed_but_for_a_row_of_one_book_and_a_whole_one() {
    assertThat(CATALOGUE.ruleBooks().values())
        .filteredOn(b -> b.status() != RuleBook.Status.CONFIRMED)
        .extracting(RuleBook::id)
        .containsExactly("piaa-2017", "wbsc-youth");
    assertThat(CATALOGUE.ruleBook("wbsc-youth").bands()).isEmpty();
  }

  @Test
  void a_row_from_memory_asks_for_the_rest_of_the_next_confirmed_one_and_says_so() {
    RuleBook book = CATALOGUE.ruleBook("piaa-2017");

    assertThat(book.restDays(16, 25)).isZero();
    assertThat(book.restDays(16, 26)).isEqualTo(2);
    assertThat(book.restDays(16, 51)).isEqualTo(2);
    assertThat(book.printsRest(16, 25)).isTrue();
    assertThat(book.printsRest(16, 26)).isFalse();
    assertThat(book.printsRest(16, 50)).isFalse();
    assertThat(book.printsRest(16, 51)).isTrue();
    assertThat(book.printsRest(13, 1)).as("no band at all").isFalse();
    assertThat(book.printsRest(13, 0)).isTrue();
  }

  @Test
  void pony_takes_over_the_rows_of_pitch_smart() {
    assertThat(CATALOGUE.ruleBook("pony-2018").bands())
        .isEqualTo(CATALOGUE.ruleBook("pitch-smart-2018").bands());
  }

  @Test
  void only_pitch_smart_has_two_editions_and_the_newer_stands_first() {
    assertThat(CATALOGUE.editions(CATALOGUE.ruleBook("pitch-smart-2014")))
        .extracting(RuleBook::id)
        .containsExactly("pitch-smart-2018", "pitch-smart-2014");
    RuleBook ontario = CATALOGUE.ruleBook("ontario-rp2-11");
    assertThat(CATALOGUE.editions(ontario)).containsExactly(ontario);
  }

  @ParameterizedTest
  @CsvSource({
    "pitch-smart-2018, 8, 60",
    "pitch-smart-2018, 9, 80",
    "pitch-smart-2018, 12, 80",
    "pitch-smart-2018, 13, 100",
    "pitch-smart-2018, 18, 100"
  })
  void innings_of_twelve_months_go_by_age(String book, int age, int innings) {
    assertThat(CATALOGUE.ruleBook(book).year(age).orElseThrow().innings()).hasValue(innings);
  }

  @ParameterizedTest
  @CsvSource({
    "EVERY_PITCH, 51, 45, 95, 51",
    "TO_LAST_BATTER, 51, 45, 95, 46",
    "TO_LAST_BATTER, 46, 46, 95, 46",
    "TO_LAST_BATTER, 51, , 95, 51",
    "BOOKED_AT_MAXIMUM, 106, 99, 100, 100",
    "BOOKED_AT_MAXIMUM, 106, 100, 100, 106",
    "BOOKED_AT_MAXIMUM, 99, 95, 100, 99",
    "BOOKED_AT_MAXIMUM, 106, , 100, 106"
  })
  void a_league_counts_less_only_where_it_was_reported(
      RuleBook.LegalCount count, int pitches, Integer before, int dailyMax, int counted) {
    OptionalInt beforeLast = before == null ? OptionalInt.empty() : OptionalInt.of(before);

    assertThat(count.of(pitches, beforeLast, dailyMax)).isEqualTo(counted);
  }

  @Test
  void a_clubs_own_number_changes_only_what_it_makes_stricter() {
    RuleBook book = CATALOGUE.ruleBook("pitch-smart-2018");
    Stricter stricter =
        new Stricter(
            List.of(new Stricter.Limit(9, 11, 60), new Stricter.Limit(8, 8, 50)),
            List.of(new Stricter.Limit(11, 11, 120)),
            1,
            OptionalInt.of(1));

    RuleBook own = stricter.over(book, "Test Club");

    assertThat(own.dailyMax(8)).hasValue(50);
    assertThat(own.dailyMax(9)).hasValue(60);
    assertThat(own.dailyMax(11)).hasValue(60);
    assertThat(own.dailyMax(12)).hasValue(85);
    assertThat(own.weeklyMax(11)).hasValue(120);
    assertThat(own.weeklyMax(12)).isEmpty();
    assertThat(own.consecutiveDays()).hasValue(1);
    assertThat(own.restDays(12, 20)).isEqualTo(1);
    assertThat(own.restDays(12, 66)).isEqualTo(5);
    assertThat(own.organisation()).isEqualTo("Test Club");
    assertThat(own.sources()).containsExactly("club-own");
  }

  /**
   * s09: since 2018 the league age is the age on 31 August of the season's year, before on 30
   * April. The other bases go by the birthday; division and grade are not known (ours).
   */
  @ParameterizedTest
  @CsvSource({
    "ACTUAL, 2017-05-02, 2027-05-01, 9",
    "ACTUAL, 2017-05-02, 2027-05-02, 10",
    "DIVISION, 2017-05-02, 2027-05-01, 9",
    "DIVISION, 2017-05-02, 2027-05-02, 10",
    "HIGH_SCHOOL, 2012-05-02, 2027-05-01, 14",
    "HIGH_SCHOOL, 2012-05-02, 2027-05-02, 15",
    "LEAGUE_AGE, 2017-08-31, 2027-04-05, 10",
    "LEAGUE_AGE, 2017-09-01, 2027-04-05, 9",
    "LEAGUE_AGE, 2017-01-05, 2027-01-04, 10",
    "LEAGUE_AGE, 2008-08-31, 2018-04-05, 10",
    "LEAGUE_AGE, 2008-09-01, 2018-04-05, 9",
    "LEAGUE_AGE, 2007-04-30, 2017-04-05, 10",
    "LEAGUE_AGE, 2007-05-01, 2017-06-05, 9"
  })
  void which_age_picks_the_row_goes_by_the_book(
      RuleBook.AgeBasis basis, LocalDate born, LocalDate day, int age) {
    assertThat(basis.age(born, day)).isEqualTo(age);
  }

  @ParameterizedTest
  @CsvSource({
    "ACTUAL, LEAGUE_AGE",
    "LEAGUE_AGE, ACTUAL",
    "DIVISION, LEAGUE_AGE",
    "HIGH_SCHOOL, LEAGUE_AGE"
  })
  void beside_the_age_of_a_book_stands_the_one_that_others_go_by(
      RuleBook.AgeBasis basis, RuleBook.AgeBasis other) {
    assertThat(basis.other()).isEqualTo(other);
  }

  /**
   * s57 and s07: 21 pitches after catching end catching for the day, 31 at ages 15 and 16. Neither
   * names 17 and 18, so the stricter figure holds there.
   */
  @Test
  void the_bar_for_going_back_to_catcher_rises_at_15_and_16_alone() {
    RuleBook.CatcherRules rules =
        CATALOGUE.ruleBook("little-league-reg-vi").catcher().orElseThrow();

    assertThat(rules.returnBar(14)).isEqualTo(21);
    assertThat(rules.returnBar(15)).isEqualTo(31);
    assertThat(rules.returnBar(16)).isEqualTo(31);
    assertThat(rules.returnBar(17)).isEqualTo(21);
    assertThat(rules.returnBar(18)).isEqualTo(21);
  }

  @Test
  void a_band_that_is_made_to_reach_an_older_age_keeps_its_numbers() {
    RuleBook.Band band = CATALOGUE.ruleBook("pitch-smart-2018").band(9).orElseThrow();

    RuleBook.Band longer = band.upTo(12);

    assertThat(longer.holds(12)).isTrue();
    assertThat(longer.holds(13)).isFalse();
    assertThat(longer.ageFrom()).isEqualTo(9);
    assertThat(longer.dailyMax()).isEqualTo(75);
    assertThat(longer.rest()).isEqualTo(band.rest());
  }

  @Test
  void a_club_has_numbers_of_its_own_with_the_first_one() {
    assertThat(Stricter.NONE.isNone()).isTrue();
    assertThat(new Stricter(List.of(), List.of(), 1, OptionalInt.empty()).isNone()).isFalse();
    assertThat(new Stricter(List.of(), List.of(), 0, OptionalInt.of(2)).isNone()).isFalse();
  }
}
