package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.april;
import static org.belthigh.audit.Thrown.caught;
import static org.belthigh.audit.Thrown.game;
import static org.belthigh.audit.Thrown.pitched;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.belthigh.intake.Outing;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The auditor's own reckoning of what bars pitching, of the age on the day and of the age at the
 * league's cut-off together. The numbers are those of Pitch Smart 2018 (s02 to s05), Regulation VI
 * (s07 to s09) and American Legion 2018 (s13).
 */
class PitchBarsTest {
  private static final LocalDate TEN = LocalDate.of(2017, 1, 5);
  private static final LocalDate FOURTEEN = LocalDate.of(2013, 2, 5);

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  private PitchBars bars(LocalDate born, Outing... outings) throws Exception {
    return new PitchBars(Beside.given(club, "{}"), born, List.of(outings));
  }

  @Test
  void what_is_left_of_a_day_is_the_most_less_what_was_thrown() throws Exception {
    assertThat(bars(TEN).on(april(5)).most()).isEqualTo(75);
    assertThat(bars(TEN).on(april(5)).free()).isTrue();
    assertThat(bars(TEN, game(april(5), 15)).on(april(5)).most()).isEqualTo(60);
    assertThat(bars(TEN, game(april(5), 74)).on(april(5)).free()).isTrue();
    assertThat(bars(TEN, game(april(5), 75)).on(april(5)).free()).isFalse();
    assertThat(bars(TEN, game(april(5), 80)).on(april(5)).most()).isZero();
  }

  @Test
  void of_two_ages_the_one_with_fewer_pitches_counts() throws Exception {
    LocalDate tenAndEleven = LocalDate.of(2016, 6, 1);
    LocalDate eightAndNine = LocalDate.of(2018, 6, 1);

    assertThat(bars(tenAndEleven).on(april(5)).most()).isEqualTo(75);
    assertThat(bars(eightAndNine).on(april(5)).most()).isEqualTo(50);
    club.books("little-league-reg-vi");
    assertThat(bars(tenAndEleven).on(april(5)).most()).isEqualTo(75);
    assertThat(bars(eightAndNine).on(april(5)).most()).isEqualTo(50);
  }

  @Test
  void of_two_ages_the_one_with_more_rest_counts() throws Exception {
    LocalDate fourteenAndFifteen = LocalDate.of(2012, 6, 1);
    PitchBars bars = bars(fourteenAndFifteen, game(april(5), 60));

    assertThat(bars.on(april(8)).bars())
        .containsExactly("60 pitches on 2027-04-05 need 3 days of rest");
    assertThat(bars.on(april(9)).bars()).isEmpty();
    club.books("little-league-reg-vi");
    bars = bars(fourteenAndFifteen, game(april(5), 60));
    assertThat(bars.on(april(8)).free()).isFalse();
    assertThat(bars.on(april(9)).free()).isTrue();
  }

  @Test
  void a_book_without_a_row_for_the_age_bars_and_says_so() throws Exception {
    LocalDate six = LocalDate.of(2020, 6, 20);

    assertThat(bars(six).on(april(5)).bars())
        .containsExactly("pitch-smart-2018 has no row for age 6");
    assertThat(bars(six).lacksRow(april(5))).isTrue();
    assertThat(bars(six).free(april(5))).as("a birthday far ahead").isEmpty();
    assertThat(bars(TEN).lacksRow(april(5))).isFalse();
  }

  @Test
  void a_birthday_within_the_days_looked_at_frees() throws Exception {
    LocalDate sevenOnThe12th = LocalDate.of(2020, 4, 12);
    LocalDate sevenOnThe13th = LocalDate.of(2020, 4, 13);

    assertThat(bars(sevenOnThe12th).free(april(5))).contains(april(12));
    assertThat(bars(sevenOnThe13th).free(april(5))).isEmpty();
    assertThat(bars(sevenOnThe12th).lacksRow(april(5))).isTrue();
    assertThat(bars(sevenOnThe12th).lacksRow(april(12))).isFalse();
  }

  @Test
  void a_book_without_confirmed_numbers_bars() throws Exception {
    club.books("wbsc-youth");

    assertThat(bars(TEN).on(april(5)).bars()).containsExactly("wbsc-youth has no confirmed number");
    assertThat(bars(TEN).on(april(5)).free()).isFalse();
    assertThat(bars(TEN).on(april(5)).most()).isZero();
  }

  @Test
  void eighty_innings_in_twelve_months_are_counted_in_thirds() throws Exception {
    assertThat(bars(TEN, pitched(april(1), 79.2)).on(april(5)).bars()).isEmpty();
    assertThat(bars(TEN, pitched(april(1), 79.2), pitched(april(3), 0.1)).on(april(5)).bars())
        .containsExactly("pitch-smart-2018 has 80 innings in 12 months");
    assertThat(bars(TEN, pitched(april(1), 79.1), pitched(april(3), 0.1)).on(april(5)).bars())
        .isEmpty();
    assertThat(bars(TEN, pitched(april(1), 79.1), pitched(april(3), 0.2)).on(april(5)).bars())
        .hasSize(1);
  }

  @Test
  void innings_of_more_than_twelve_months_ago_are_over() throws Exception {
    PitchBars bars = bars(TEN, pitched(LocalDate.of(2026, 4, 20), 80.0));

    assertThat(bars.free(april(5))).contains(april(20));
    assertThat(bars.on(april(19)).free()).isFalse();
  }

  @Test
  void who_caught_four_innings_does_not_pitch_by_regulation_vi() throws Exception {
    club.books("little-league-reg-vi");

    assertThat(bars(TEN, caught(april(5), 3)).on(april(5)).bars()).isEmpty();
    assertThat(bars(TEN, caught(april(5), 2), caught(april(5), 2)).on(april(5)).bars())
        .containsExactly("4 innings caught bar pitching by little-league-reg-vi");
    assertThat(bars(TEN, caught(april(4), 4)).on(april(5)).bars()).isEmpty();
  }

  @Test
  void who_caught_at_all_does_not_pitch_that_day_by_pitch_smart() throws Exception {
    assertThat(bars(TEN, caught(april(5), 1)).on(april(5)).bars())
        .containsExactly("pitch-smart-2018 advises against catching and pitching on one day");
    assertThat(bars(TEN, caught(april(5), 0)).on(april(5)).bars()).isEmpty();
  }

  @Test
  void a_second_game_of_a_day_is_barred_where_the_book_says_so() throws Exception {
    assertThat(bars(TEN, game(april(5), 5)).on(april(5)).bars()).isEmpty();
    club.books("little-league-reg-vi");
    assertThat(bars(TEN, game(april(5), 5)).on(april(5)).bars())
        .containsExactly("little-league-reg-vi has no second game on a day of pitching");
    assertThat(bars(TEN, game(april(4), 5)).on(april(5)).bars()).isEmpty();
  }

  @Test
  void days_in_a_row_are_those_just_before() throws Exception {
    assertThat(bars(TEN, game(april(3), 5), game(april(4), 5)).on(april(5)).bars())
        .containsExactly("2 days running before it, at most 2");
    assertThat(bars(TEN, game(april(2), 5), game(april(4), 5)).on(april(5)).bars()).isEmpty();
    assertThat(bars(TEN, game(april(2), 5), game(april(3), 5)).on(april(5)).bars()).isEmpty();
  }

  @Test
  void appearances_are_counted_in_the_days_up_to_the_one_asked() throws Exception {
    club.books("american-legion-2018");

    assertThat(bars(FOURTEEN, game(april(3), 5), game(april(4), 5)).on(april(5)).bars())
        .containsExactly("american-legion-2018 has 2 appearances in 3 days");
    assertThat(bars(FOURTEEN, game(april(2), 5), game(april(4), 5)).on(april(5)).bars()).isEmpty();
    assertThat(bars(FOURTEEN, game(april(5), 5), game(april(6), 5)).on(april(5)).bars()).isEmpty();
    assertThat(bars(FOURTEEN, game(april(4), 5), game(april(4), 5)).free(april(5)))
        .contains(april(7));
  }

  @Test
  void the_week_ends_on_the_day_asked_and_has_seven_days() throws Exception {
    club.books("pony-2018").stricter("weekly_max: [{ages: [7, 18], pitches: 40}]");
    PitchBars bars = bars(FOURTEEN, game(april(2), 20), game(april(4), 10));

    assertThat(bars.on(april(5)).most()).isEqualTo(10);
    assertThat(bars.on(april(8)).most()).isEqualTo(10);
    assertThat(bars.on(april(9)).most()).isEqualTo(30);
    assertThat(bars(FOURTEEN, game(april(2), 20), game(april(4), 20)).free(april(5)))
        .contains(april(9));
  }

  @Test
  void the_first_free_day_is_the_one_after_the_rest_however_long_it_is() throws Exception {
    assertThat(bars(TEN).free(april(5))).contains(april(5));
    assertThat(bars(TEN, game(april(5), 66)).free(april(6))).contains(april(10));
    club.stricter("rest_days_add: 9");
    assertThat(bars(TEN, game(april(5), 66)).free(april(6))).contains(april(19));
  }

  @Test
  void the_books_are_those_of_the_day_that_is_asked() throws Exception {
    club.books("pitch-smart-2014");
    LocalDate seventeen = LocalDate.of(2010, 1, 5);

    assertThat(bars(seventeen, game(april(5), 80)).on(april(9)).free()).isFalse();
    assertThat(bars(seventeen, game(april(5), 80)).on(april(10)).free()).isTrue();
    assertThat(bars(seventeen).on(april(5)).left())
        .containsOnlyKeys("pitch-smart-2014", "pitch-smart-2018");
    club.books("pitch-smart-2018");
    assertThat(bars(seventeen).on(april(5)).left()).containsOnlyKeys("pitch-smart-2018");
  }

  @Test
  void an_older_edition_counts_on_its_own_days() throws Exception {
    LocalDate inForce = LocalDate.of(2017, 6, 1);
    List<Editions> books =
        BooksOnDay.of(
                SmallClub.CATALOGUE, club.whole().club(), List.of("pitch-smart-2018"), april(5))
            .stream()
            .map(s -> new Editions(s.named().id(), s.on(inForce).id(), s.on(april(5)).id()))
            .toList();

    assertThat(books)
        .containsExactly(new Editions("pitch-smart-2018", "pitch-smart-2014", "pitch-smart-2018"));
  }

  /** A series: its first book, and those of two days. */
  private record Editions(String named, String before, String now) {}
}
