package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.ada;
import static org.belthigh.audit.SmallClub.cards;
import static org.belthigh.audit.SmallClub.day;
import static org.belthigh.audit.SmallClub.home;
import static org.belthigh.audit.SmallClub.swings;
import static org.belthigh.audit.SmallClub.tee;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A child of 10: at most 70 swings in a day and 200 in any seven days, three days with swings, 10
 * minutes and 18 tosses at home (ours, common practice); five days of hitting, two days without any
 * organised sport and as many hours of it as years of age (s23, National Athletic Trainers'
 * Association 2019). A week begins at 120 swings and rises by a tenth of the mean of the weeks
 * played, and half a day's swings are left while an arm rests (ours, common practice).
 */
class LoadCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void club() throws Exception {
    club = new SmallClub(folder);
  }

  private List<String> beside(FinishedPlan.Dated... days) throws Exception {
    return said(Optional.of(club.record()), days);
  }

  /** With the plan alone, from which no birthday and no past week is known. */
  private static List<String> alone(FinishedPlan.Dated... days) {
    FinishedPlan.Person nine =
        new FinishedPlan.Person("a1", "u10", 9, List.of(), List.of(), List.of(days), false);
    return said(Optional.empty(), nine);
  }

  private static List<String> said(Optional<ClubRecord> record, FinishedPlan.Dated... days) {
    return said(record, ada(days));
  }

  private static List<String> said(Optional<ClubRecord> record, FinishedPlan.Person person) {
    Findings findings = SmallClub.findings();
    new LoadCheck(
            SmallClub.plan(person),
            findings,
            SmallClub.LIMITS,
            new Ages(FROM, record),
            record,
            SmallClub.owed(record))
        .check(person);
    return SmallClub.said(findings);
  }

  private static FinishedPlan.Dated[] cardsOn(int... days) {
    return Arrays.stream(days).mapToObj(SmallClub::cards).toArray(FinishedPlan.Dated[]::new);
  }

  @Test
  void a_day_has_at_most_seventy_swings() throws Exception {
    assertThat(beside(swings(6, 70))).isEmpty();
    assertThat(beside(swings(6, 71)))
        .containsExactly(
            "a1 2027-04-06: 71 swings in a day; at age 10 at most 70 (ours, common practice)");
  }

  @Test
  void any_seven_days_have_at_most_two_hundred_swings() {
    assertThat(alone(swings(7, 70), swings(9, 65), swings(13, 65))).isEmpty();
    assertThat(alone(swings(7, 70), swings(9, 65), swings(13, 66)))
        .containsExactly(
            "a1 2027-04-07 and the six days after: 201 swings; at age 10 at most 200 (ours, common"
                + " practice)");
    assertThat(alone(swings(7, 70), swings(9, 65), swings(14, 66))).as("eight days").isEmpty();
  }

  @Test
  void the_seven_days_that_end_with_the_first_planned_day_are_looked_at_too() throws Exception {
    club.calendar(
        "2027-03-30,u10,game,,,",
        "2027-03-31,u10,game,,,",
        "2027-04-01,u10,game,,,",
        "2027-04-02,u10,game,,,",
        "2027-04-03,u10,game,,,");

    assertThat(beside(cards(5)))
        .containsExactly(
            "a1 2027-03-30 and the six days after: 1 free days; at least 2 without any organised"
                + " sport (NATA 2019)",
            "a1 2027-03-30 and the six days after: 10.133333333333333 hours of organised sport; at"
                + " age 10 at most 10.0 (NATA 2019)");
  }

  @Test
  void a_week_that_the_calendar_alone_fills_is_not_the_plans_fault() throws Exception {
    for (int d = 5; d < 12; d++) {
      club.calendar("2027-04-%02d,u10,game,,,".formatted(d));
    }

    assertThat(beside(swings(18, 10))).isEmpty();
  }

  @Test
  void three_days_of_a_week_have_swings_and_cards_do_not_count() {
    assertThat(alone(swings(5, 9), swings(7, 9), swings(9, 9), cards(10))).isEmpty();
    assertThat(alone(swings(5, 9), swings(7, 9), swings(9, 9), swings(10, 9)))
        .contains(
            "a1 2027-04-05 and the six days after: 4 days with swings; at age 9 at most 3 (ours,"
                + " common practice)");
  }

  @Test
  void five_days_of_a_week_have_hitting_and_two_are_free() {
    assertThat(alone(cardsOn(5, 6, 7, 8, 9))).isEmpty();
    assertThat(alone(cardsOn(5, 6, 7, 8, 9, 10)))
        .contains(
            "a1 2027-04-05 and the six days after: 6 hitting days; at age 9 at most 5 (NATA 2019)",
            "a1 2027-04-05 and the six days after: 1 free days; at least 2 without any organised"
                + " sport (NATA 2019)");
  }

  @Test
  void events_and_home_work_take_free_days_and_days_off_do_not() throws Exception {
    club.calendar(
        "2027-04-05,u10,game,60,,",
        "2027-04-06,u10,game,60,,",
        "2027-04-07,u10,game,60,,",
        "2027-04-08,u10,game,60,,",
        "2027-04-10,u10,off,60,,");

    assertThat(beside(cards(9))).isEmpty();
    assertThat(beside(cards(9), cards(11)))
        .contains(
            "a1 2027-04-05 and the six days after: 1 free days; at least 2 without any organised"
                + " sport (NATA 2019)");
  }

  @Test
  void a_week_has_as_many_hours_of_sport_as_years_of_age_home_work_among_them() throws Exception {
    club.with("other.csv", "date,player,hours,what", "2027-04-05,a1,9.8,swim");

    assertThat(beside(home(7, 9, 12)))
        .as("588 and 12 minutes are ten hours")
        .noneMatch(t -> t.contains("hours"));
    assertThat(beside(home(7, 9, 13)))
        .anyMatch(
            t ->
                t.startsWith("a1 2027-04-05 and the six days after: 10.01666")
                    && t.contains(" hours of organised sport; at age 10 at most 10.0 (NATA 2019)"));
  }

  @Test
  void while_an_arm_rests_a_day_has_half_the_swings() throws Exception {
    club.with("throws.csv", "date,player,pitches,kind", "2027-04-04,a1,36,game");

    assertThat(beside(swings(6, 35), cards(5))).isEmpty();
    assertThat(beside(swings(6, 36)))
        .containsExactly(
            "a1 2027-04-06: 36 swings while the arm rests; at age 10 at most 35 on such a day"
                + " (ours, common practice)");
    assertThat(beside(swings(7, 36))).as("the rest is over").isEmpty();
  }

  @Test
  void home_work_takes_at_most_ten_minutes_and_eighteen_tosses() {
    assertThat(alone(home(6, 18, 10))).isEmpty();
    assertThat(alone(home(6, 19, 10)))
        .containsExactly(
            "a1 2027-04-06: 19 tosses at home; at age 10 at most 18 (ours, common practice)");
    assertThat(alone(home(6, 18, 11)))
        .containsExactly(
            "a1 2027-04-06: 11 minutes at home; at age 10 at most 10 (ours, common practice)");
    assertThat(alone(day(6, "field", 40, tee("baseball", 40, 40)))).as("a practice").isEmpty();
  }

  @Test
  void after_weeks_without_play_a_week_begins_at_the_starting_allowance() throws Exception {
    assertThat(beside(swings(6, 60), swings(8, 60))).isEmpty();
    assertThat(beside(swings(6, 60), swings(8, 61)))
        .containsExactly(
            "a1 week of 2027-04-05: 121 swings; a week rises to 120, a tenth above the mean of the"
                + " weeks played or the starting allowance (ours, common practice)");
  }

  private void logged(String... datesAndSwings) throws Exception {
    List<String> rows = new ArrayList<>(List.of("date,player,drill,measure,made,of"));
    for (String row : datesAndSwings) {
      String[] parts = row.split(" ", -1);
      rows.add(parts[0] + ",a1,field-call,field-call,0," + parts[1]);
    }
    club.with("logs/tallies.csv", rows.toArray(String[]::new));
  }

  @Test
  void a_week_rises_by_a_tenth_of_the_mean_of_the_last_four_that_were_played() throws Exception {
    logged("2027-03-08 100", "2027-03-15 130", "2027-03-29 190");

    assertThat(beside(swings(6, 70), swings(8, 70), swings(10, 14)))
        .as("a tenth above 140, the unplayed week left out")
        .isEmpty();
    assertThat(beside(swings(6, 70), swings(8, 70), swings(10, 15)))
        .singleElement()
        .asString()
        .startsWith("a1 week of 2027-04-05: 155 swings; a week rises to 154,");
  }

  @Test
  void a_small_week_does_not_lower_the_starting_allowance() throws Exception {
    logged("2027-03-29 20");

    assertThat(beside(swings(6, 60), swings(8, 60))).isEmpty();
  }

  @Test
  void two_weeks_without_play_begin_anew() throws Exception {
    logged("2027-03-08 190", "2027-03-15 190");

    assertThat(beside(swings(6, 60), swings(8, 61)))
        .singleElement()
        .asString()
        .contains("a week rises to 120,");
    logged("2027-03-08 150", "2027-03-22 150");
    assertThat(beside(swings(6, 70), swings(8, 70), swings(10, 25))).as("one week").isEmpty();
  }

  @Test
  void a_planned_week_counts_as_played_where_it_has_a_practice_with_swings() throws Exception {
    logged("2027-03-15 150", "2027-03-22 150", "2027-03-29 150");

    assertThat(beside(swings(5, 70), swings(7, 40), swings(13, 70), swings(15, 70), swings(17, 14)))
        .as("a tenth above 140, the mean of 150, 150, 150 and 110")
        .isEmpty();
    assertThat(beside(swings(5, 70), swings(7, 40), swings(13, 70), swings(15, 70), swings(17, 15)))
        .singleElement()
        .asString()
        .startsWith("a1 week of 2027-04-12: 155 swings; a week rises to 154,");
    assertThat(beside(home(5, 18, 8), swings(13, 70), swings(15, 70), swings(17, 25)))
        .as("swings at home alone are no week played, so the mean stays 150")
        .isEmpty();
    assertThat(beside(day(6, "field", 0), swings(13, 70), swings(15, 70), swings(17, 25)))
        .as("nor is a day at the field without a swing")
        .isEmpty();
    assertThat(beside(cards(5), swings(13, 70), swings(15, 70), swings(17, 26)))
        .singleElement()
        .asString()
        .startsWith("a1 week of 2027-04-12: 166 swings; a week rises to 165,");
  }
}
