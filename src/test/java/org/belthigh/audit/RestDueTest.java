package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.april;
import static org.belthigh.audit.Thrown.bullpen;
import static org.belthigh.audit.Thrown.game;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Outing;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The auditor's own reckoning of rest, by the tables of the books: Pitch Smart 2018 (s02 to s05) at
 * 10, American Legion 2018 (s13) and a club's stricter numbers at 14.
 */
class RestDueTest {
  private static final LocalDate TEN = LocalDate.of(2017, 1, 5);
  private static final LocalDate FOURTEEN = LocalDate.of(2013, 2, 5);

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  /** Days held as known on each day from the 5th to the 18th, as {@code 6-8}. */
  private List<String> rests(LocalDate born, Outing... outings) throws Exception {
    return new RestDue(CATALOGUE, club.whole().club(), born, List.of(outings))
        .of(april(5), april(18)).stream()
            .map(d -> days(d.from()) + "-" + d.until().map(RestDueTest::days).orElse(""))
            .toList();
  }

  private static String days(LocalDate day) {
    return day.getMonthValue() == 4 ? "" + day.getDayOfMonth() : day.toString();
  }

  @ParameterizedTest
  @CsvSource({"1,", "20,", "21,6-6", "35,6-6", "36,6-7", "50,6-7", "51,6-8", "65,6-8", "66,6-9"})
  void the_rows_of_ten_years_of_age_begin_and_end_where_they_are_printed(int pitches, String rest)
      throws Exception {
    assertThat(rests(TEN, game(april(5), pitches)))
        .isEqualTo(Optional.ofNullable(rest).map(List::of).orElse(List.of()));
  }

  @Test
  void two_games_of_a_day_count_together_and_a_bullpen_or_no_pitch_for_nothing() throws Exception {
    assertThat(rests(TEN, game(april(5), 18), game(april(5), 18))).containsExactly("6-7");
    assertThat(rests(TEN, game(april(5), 18), bullpen(april(5), 60))).isEmpty();
    assertThat(rests(TEN, bullpen(april(5), 60), game(april(5), 0))).isEmpty();
  }

  @Test
  void rest_of_before_the_plan_is_due_from_the_day_after_the_outing() throws Exception {
    assertThat(rests(TEN, game(april(3), 66))).containsExactly("4-7");
    assertThat(rests(TEN, game(april(1), 66))).containsExactly("2-5");
    assertThat(rests(TEN, game(LocalDate.of(2027, 3, 31), 66))).isEmpty();
  }

  @Test
  void an_outing_inside_the_weeks_is_looked_at_on_its_day_and_one_after_them_is_not()
      throws Exception {
    assertThat(rests(TEN, game(april(3), 66), game(april(18), 66))).containsExactly("4-7", "19-22");
    assertThat(rests(TEN, game(april(19), 66))).isEmpty();
  }

  @Test
  void a_third_day_in_a_row_is_one_too_many() throws Exception {
    assertThat(rests(TEN, game(april(3), 5), game(april(4), 5))).containsExactly("5-5");
    assertThat(rests(TEN, game(april(2), 5), game(april(4), 5))).isEmpty();
    assertThat(rests(TEN, game(april(4), 5))).isEmpty();
    assertThat(rests(TEN, game(april(2), 5), game(april(3), 5))).isEmpty();
  }

  @Test
  void two_appearances_in_three_days_bar_a_third() throws Exception {
    club.books("american-legion-2018");

    assertThat(rests(FOURTEEN, game(april(3), 5), game(april(4), 5))).containsExactly("5-5");
    assertThat(rests(FOURTEEN, game(april(4), 5), game(april(4), 5))).containsExactly("5-6");
    assertThat(rests(FOURTEEN, game(april(2), 5), game(april(4), 5))).isEmpty();
    assertThat(rests(FOURTEEN, game(april(5), 5), game(april(5), 5))).containsExactly("6-7");
    assertThat(rests(FOURTEEN, game(april(2), 5), game(april(3), 5))).isEmpty();
  }

  @Test
  void the_pitches_of_seven_days_hold_from_the_number_of_the_club_on() throws Exception {
    club.books("pony-2018").stricter("weekly_max: [{ages: [7, 18], pitches: 40}]");

    assertThat(rests(FOURTEEN, game(april(2), 20), game(april(4), 20))).containsExactly("5-8");
    assertThat(rests(FOURTEEN, game(april(2), 20), game(april(4), 19))).isEmpty();
    assertThat(rests(FOURTEEN, game(april(5), 20), game(april(7), 20))).containsExactly("8-11");
  }

  @Test
  void each_of_several_books_holds() throws Exception {
    club.books("[pony-2018, american-legion-2018]");

    assertThat(rests(FOURTEEN, game(april(4), 5), game(april(4), 16))).containsExactly("5-6");
    assertThat(rests(FOURTEEN, game(april(5), 36))).containsExactly("6-7");
  }

  @Test
  void an_edition_that_is_over_counts_on_its_own_days_and_the_one_after_it_too() throws Exception {
    club.books("pitch-smart-2014");

    assertThat(rests(LocalDate.of(2010, 1, 5), game(april(5), 80))).containsExactly("6-9");
    club.books("pitch-smart-2018");
    assertThat(rests(LocalDate.of(2010, 1, 5), game(april(5), 80))).containsExactly("6-8");
  }
}
