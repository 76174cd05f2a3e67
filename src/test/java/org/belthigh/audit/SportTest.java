package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.Intake;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the auditor takes a child's days to hold, apart from the plan. */
class SportTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  /** A Monday. */
  private static final LocalDate FROM = LocalDate.of(2027, 4, 5);

  private static final int UNLOGGED = 120;

  @TempDir private Path folder;

  private final FinishedPlan.Person ada =
      new FinishedPlan.Person("a1", "u10", 10, List.of(), List.of(), List.of(), false);

  private Sport sport(String file, String... rows) throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Two Files
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
          - {id: u14, name: Under 14, age: [13, 14]}
        """);
    Files.writeString(
        folder.resolve("roster.csv"),
        "id,first_name,born,bats,group\na1,Ada,2017-01-05,R,u10\nb1,Bo,2013-02-05,R,u14\n");
    if (rows.length > 0) {
      Files.writeString(folder.resolve(file), String.join("\n", rows) + "\n");
    }
    return sport();
  }

  private Sport sport() throws Exception {
    return new Sport(
        Intake.read(folder, CATALOGUE).upTo(FROM),
        new FinishedPlan("", FROM, 2, List.of(ada), List.of()));
  }

  private double minutes(Sport sport, int dayOfApril) {
    return sport.minutes(ada, LocalDate.of(2027, 4, dayOfApril));
  }

  @Test
  void without_a_calendar_tuesdays_and_thursdays_of_the_plan_have_ninety_minutes()
      throws Exception {
    Sport sport = sport("calendar.csv");

    assertThat(sport.assumes(ada)).isTrue();
    assertThat(minutes(sport, 1)).as("the Thursday before").isZero();
    assertThat(minutes(sport, 5)).as("Monday").isZero();
    assertThat(minutes(sport, 6)).as("Tuesday").isEqualTo(90);
    assertThat(minutes(sport, 8)).as("Thursday").isEqualTo(90);
    assertThat(minutes(sport, 15)).as("the last Thursday").isEqualTo(90);
    assertThat(minutes(sport, 20)).as("the Tuesday after").isZero();
  }

  @Test
  void a_break_is_no_calendar_and_its_days_have_no_practice() throws Exception {
    Sport sport =
        sport("calendar.csv", "date,group,kind", "2027-04-06,all,break", "2027-04-08,all,off");

    assertThat(sport.assumes(ada)).isTrue();
    assertThat(minutes(sport, 6)).isZero();
    assertThat(minutes(sport, 8)).isZero();
    assertThat(minutes(sport, 13)).isEqualTo(90);
  }

  @Test
  void another_groups_calendar_is_none_for_this_one() throws Exception {
    Sport sport = sport("calendar.csv", "date,group,kind", "2027-04-07,u14,practice");

    assertThat(sport.assumes(ada)).isTrue();
    assertThat(minutes(sport, 7)).isZero();
  }

  @Test
  void events_last_as_long_as_they_say_or_as_long_as_such_an_event_does() throws Exception {
    Sport sport =
        sport(
            "calendar.csv",
            "date,group,kind,minutes",
            "2027-04-05,u10,practice,75",
            "2027-04-06,u10,practice,",
            "2027-04-07,u10,game,",
            "2027-04-08,all,tournament,",
            "2027-04-09,u10,game,60",
            "2027-04-09,u10,evaluation,30",
            "2027-04-10,u10,off,240",
            "2027-04-11,u14,game,");

    assertThat(sport.assumes(ada)).isFalse();
    assertThat(minutes(sport, 5)).isEqualTo(75);
    assertThat(minutes(sport, 6)).isEqualTo(90);
    assertThat(minutes(sport, 7)).isEqualTo(120);
    assertThat(minutes(sport, 8)).isEqualTo(120);
    assertThat(minutes(sport, 9)).isEqualTo(90);
    assertThat(minutes(sport, 10)).isZero();
    assertThat(minutes(sport, 11)).isZero();
    assertThat(minutes(sport, 13)).as("nothing is assumed beside a calendar").isZero();
  }

  @Test
  void other_sport_of_the_last_week_goes_on_and_older_does_not() throws Exception {
    Sport sport =
        sport(
            "other.csv",
            "date,player,hours,what",
            "2027-03-29,a1,1,swim",
            "2027-03-30,a1,1.5,soccer",
            "2027-04-05,a1,2,soccer",
            "2027-03-31,b1,3,soccer");

    assertThat(sport.minutes(ada, LocalDate.of(2027, 3, 29))).isEqualTo(60);
    assertThat(sport.minutes(ada, LocalDate.of(2027, 3, 30))).isEqualTo(90);
    assertThat(minutes(sport, 5)).isEqualTo(120);
    assertThat(minutes(sport, 6)).as("practice and soccer").isEqualTo(180);
    assertThat(minutes(sport, 7)).as("another child's").isZero();
    assertThat(minutes(sport, 12)).as("swim of a week ago is over").isEqualTo(120);
    assertThat(minutes(sport, 13)).isEqualTo(180);
  }

  @Test
  void a_past_week_without_a_log_counts_where_there_was_a_practice() throws Exception {
    Sport sport =
        sport(
            "calendar.csv",
            "date,group,kind",
            "2027-03-30,u10,practice",
            "2027-03-23,u10,game",
            "2027-03-16,u10,practice",
            "2027-03-16,u10,game");

    assertThat(sport.played(ada, FROM.minusWeeks(1), UNLOGGED)).hasValue(UNLOGGED);
    assertThat(sport.played(ada, FROM.minusWeeks(2), UNLOGGED)).as("a game alone").isEmpty();
    assertThat(sport.played(ada, FROM.minusWeeks(3), UNLOGGED)).as("beside a game").isEmpty();
    assertThat(sport.played(ada, FROM.minusWeeks(4), UNLOGGED)).isEmpty();
  }

  @Test
  void swings_of_a_past_week_are_those_logged_for_that_child() throws Exception {
    sport("calendar.csv", "date,group,kind", "2027-03-30,u10,practice");
    Files.createDirectories(folder.resolve("logs"));
    Files.writeString(
        folder.resolve("logs/tallies.csv"),
        """
        date,player,drill,measure,made,of
        2027-03-29,a1,countdown,countdown,9,12
        2027-04-04,a1,field-call,field-call,3,8
        2027-04-04,a1,zone-call,zone-recognition,3,8
        2027-04-04,b1,field-call,field-call,3,8
        2027-03-28,a1,field-call,field-call,1,5
        """);
    Files.writeString(
        folder.resolve("logs/tosses.csv"),
        """
        date,player,drill,toss,zone,swing,hit
        2027-03-31,a1,tee-countdown,1,5,yes,hard
        2027-03-31,a1,tee-countdown,2,5,no,
        2027-03-31,b1,tee-countdown,1,5,yes,hard
        2027-03-28,a1,tee-countdown,1,5,yes,hard
        2027-03-28,a1,tee-countdown,2,5,yes,hard
        2027-04-05,a1,tee-countdown,1,5,yes,hard
        2027-04-05,a1,tee-countdown,2,5,yes,hard
        """);

    assertThat(sport().played(ada, FROM.minusWeeks(1), UNLOGGED)).hasValue(9 + 8 + 1);
    assertThat(sport().played(ada, FROM.minusWeeks(2), UNLOGGED)).hasValue(5 + 2);
  }

  @Test
  void without_a_calendar_only_the_week_before_is_taken_as_practised() throws Exception {
    Sport sport = sport("calendar.csv");

    assertThat(sport.played(ada, FROM.minusWeeks(1), UNLOGGED)).hasValue(UNLOGGED);
    assertThat(sport.played(ada, FROM.minusWeeks(2), UNLOGGED)).isEmpty();
  }

  @Test
  void without_a_calendar_a_past_week_is_played_on_its_tuesday_and_its_thursday() throws Exception {
    Sport tuesdayOff = sport("calendar.csv", "date,group,kind", "2027-03-30,all,off");
    assertThat(tuesdayOff.played(ada, FROM.minusWeeks(1), UNLOGGED)).hasValue(UNLOGGED);

    Sport bothOff =
        sport("calendar.csv", "date,group,kind", "2027-03-30,all,off", "2027-04-01,all,break");
    assertThat(bothOff.played(ada, FROM.minusWeeks(1), UNLOGGED)).isEmpty();
  }

  @Test
  void an_evaluation_is_a_week_played_alone_or_beside_a_practice_and_not_beside_a_game()
      throws Exception {
    Sport sport =
        sport(
            "calendar.csv",
            "date,group,kind",
            "2027-03-30,u10,evaluation",
            "2027-03-23,u10,evaluation",
            "2027-03-23,u10,practice",
            "2027-03-16,u10,evaluation",
            "2027-03-16,u10,game");

    assertThat(sport.played(ada, FROM.minusWeeks(1), UNLOGGED)).hasValue(UNLOGGED);
    assertThat(sport.played(ada, FROM.minusWeeks(2), UNLOGGED)).hasValue(UNLOGGED);
    assertThat(sport.played(ada, FROM.minusWeeks(3), UNLOGGED)).isEmpty();
  }
}
