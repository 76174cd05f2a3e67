package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.Phrase;
import org.belthigh.plan.practice.Effort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A week is called full of sport only where it is, and each other reason is the real one. */
class FullWeekTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);
  private static final int WEEKS = 2;
  private static final long SEED = 20270405L;

  /** Home sessions that the week before may have had. */
  private static final int SLACK = 60;

  @TempDir private Path folder;

  /** More lines of club.yaml. */
  private String more = "";

  /**
   * A club of two whose practices are on some weekdays from the season's first day on.
   *
   * @param days 1 for Monday; none for a club without a calendar
   */
  private List<Day> days(LocalDate first, List<Integer> days, String minutes, int age)
      throws Exception {
    StringBuilder calendar = new StringBuilder("date,group,kind,minutes,adults\n");
    first
        .datesUntil(MONDAY.plusWeeks(WEEKS + 1))
        .filter(d -> days.contains(d.getDayOfWeek().getValue()))
        .forEach(d -> calendar.append(d + ",u,practice," + minutes + ",2\n"));
    return days(first, days.isEmpty() ? "" : calendar.toString(), age);
  }

  private List<Day> days(LocalDate first, String calendar, int age) throws Exception {
    return plan(first, calendar, age).players().stream().flatMap(p -> p.days().stream()).toList();
  }

  private Plan plan(LocalDate first, String calendar, int age) throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Fresh Start
        rule_book: pitch-smart-2018
        season: {first: "%s", last: "2027-07-24"}
        groups:
          - {id: u, name: Under, age: [%d, %d]}
        %s
        """
            .formatted(first, age - 1, age, more));
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group
        a1,Ada,%1$d-01-05,R,u
        a2,Bo,%1$d-02-05,L,u
        """
            .formatted(2027 - age));
    Files.deleteIfExists(folder.resolve("calendar.csv"));
    if (!calendar.isEmpty()) {
      Files.writeString(folder.resolve("calendar.csv"), calendar);
    }
    ClubRecord record = Intake.read(folder, CATALOGUE);
    PlanRequest request =
        new PlanRequest(MONDAY, WEEKS, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return new Planner(Intake.catalogue(folder, CATALOGUE), Effort.USUAL).plan(record, request);
  }

  private static Stream<String> notes(List<Day> days) {
    return days.stream().flatMap(d -> d.note().stream()).map(Phrase::key);
  }

  @ParameterizedTest
  @ValueSource(ints = {-7, -6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 7})
  void a_season_that_has_just_begun_fills_no_week(int start) throws Exception {
    for (int age : List.of(8, 10, 14)) {
      for (List<Integer> days :
          List.of(
              List.<Integer>of(),
              List.of(1),
              List.of(3),
              List.of(5),
              List.of(2, 4),
              List.of(1, 3),
              List.of(2, 5))) {
        for (String minutes : List.of("60", "90", "120")) {
          assertThat(notes(days(MONDAY.plusDays(start), days, minutes, age)))
              .as("from day %d, practices on %s, %s minutes, age %d", start, days, minutes, age)
              .doesNotContain("day.sits-out", "day.swings-used", "day.no-minutes");
        }
      }
    }
  }

  /** Three practices can use up the swings of a week, which is not the same as too much sport. */
  @ParameterizedTest
  @ValueSource(ints = {-7, -6, -3, 0, 2})
  void three_practices_may_run_out_of_swings_but_the_week_is_not_full_of_sport(int start)
      throws Exception {
    for (String minutes : List.of("60", "90", "120")) {
      assertThat(notes(days(MONDAY.plusDays(start), List.of(1, 3, 5), minutes, 8)))
          .doesNotContain("day.sits-out");
    }
    assertThat(notes(days(MONDAY.minusDays(7), List.of(1, 3, 5), "90", 8)))
        .contains("day.swings-used");
  }

  @ParameterizedTest
  @CsvSource({
    "'2027-04-06,u,practice,,2',     day.no-minutes",
    "'2027-04-06,u,evaluation,90,2', day.evaluation",
    "'2027-04-06,u,practice,90,0',   day.no-adult",
    "'2027-04-06,u,off,,',           day.off",
    "'2027-04-06,u,break,,',         day.off"
  })
  void a_day_without_hitting_says_why(String row, String why) throws Exception {
    List<Day> days =
        days(
            MONDAY,
            "date,group,kind,minutes,adults\n" + row + "\n2027-04-08,u,practice,90,2\n",
            10);

    assertThat(notes(days.stream().filter(d -> d.date().equals(MONDAY.plusDays(1))).toList()))
        .containsOnly(why);
  }

  /** A practice of few minutes holds few swings, and a lighter share of those may be none. */
  @Test
  void a_share_of_a_short_practice_that_is_no_swing_is_called_so() throws Exception {
    Files.writeString(
        folder.resolve("wellness.csv"),
        """
        date,player,kind,clears,by
        2027-03-20,a1,head-injury,,
        2027-04-04,a1,cleared,head-injury,physician
        """);

    List<Day> days =
        days(
            MONDAY,
            "date,group,kind,minutes,hitting_minutes,adults\n2027-04-06,u,practice,90,1,1\n",
            10);

    assertThat(notes(days.stream().filter(d -> d.date().equals(MONDAY.plusDays(1))).toList()))
        .containsExactly("day.light-share", "day.practice");
  }

  /** With a curriculum all of whose drills need a net, and no net. */
  @Test
  void where_no_drill_can_be_done_nothing_fits_and_the_overview_says_what_to_do() throws Exception {
    String netted =
        Files.readString(Path.of("curricula/belthigh-2027.yaml"))
            .replace("id: belthigh-2027", "id: netted")
            .replaceAll("gear: \\[(?!net\\b)", "gear: [net, ")
            .replace("[net, ]", "[net]");
    Files.writeString(folder.resolve("netted.yaml"), netted);
    more = "curriculum: netted.yaml\nequipment: {tees: 2, nets: 0}";

    Plan plan =
        plan(
            MONDAY,
            "date,group,kind,minutes,hitting_minutes,adults\n2027-04-06,u,practice,90,45,2\n",
            10);

    assertThat(
            notes(
                plan.players().stream()
                    .flatMap(p -> p.days().stream())
                    .filter(d -> d.date().equals(MONDAY.plusDays(1)))
                    .toList()))
        .containsExactly("day.nothing-fits", "day.nothing-fits");
    assertThat(plan.groups().get(0).overview().ahead())
        .filteredOn(p -> p.key().equals("ahead.nothing-fits"))
        .singleElement()
        .satisfies(p -> assertThat(p.values()).containsEntry("players", 2));
  }

  @Test
  void hours_of_sport_in_the_calendar_do_fill_a_week() throws Exception {
    String games = "2027-04-05,u,game,400,\n2027-04-07,u,game,200,\n2027-04-06,u,practice,90,2\n";

    assertThat(notes(days(MONDAY, "date,group,kind,minutes,adults\n" + games, 10)))
        .contains("day.sits-out");
  }

  @Test
  void games_on_too_many_days_are_not_called_too_many_hours() throws Exception {
    StringBuilder rows = new StringBuilder("date,group,kind,minutes,adults\n");
    List.of(5, 7, 8, 9, 10).forEach(d -> rows.append("2027-04-%02d,u,game,30,\n".formatted(d)));
    rows.append("2027-04-06,u,practice,60,2\n");

    assertThat(notes(days(MONDAY, rows.toString(), 10)))
        .contains("day.no-free-day")
        .doesNotContain("day.sits-out", "day.swings-used");
  }

  /**
   * Whatever the calendar, its blanks and the season's first day: hours are named where they are.
   */
  @Test
  void in_random_calendars_each_reason_is_the_real_one() throws Exception {
    Random random = new Random(SEED);
    for (int round = 0; round < 60; round++) {
      int age = List.of(7, 9, 11, 14).get(random.nextInt(4));
      LocalDate first = MONDAY.plusDays(random.nextInt(15) - 7);
      Map<LocalDate, Integer> minutes = new HashMap<>();
      Set<LocalDate> hitting = new HashSet<>();
      StringBuilder rows = new StringBuilder("date,group,kind,minutes,adults\n");
      for (LocalDate d = MONDAY.minusDays(7); d.isBefore(MONDAY.plusDays(21)); d = d.plusDays(1)) {
        String kind = List.of("practice", "game", "none").get(random.nextInt(3));
        String said = List.of("", "45", "90", "240").get(random.nextInt(4));
        if (!kind.equals("none")) {
          rows.append(d + ",u," + kind + "," + said + ",2\n");
          int usual = kind.equals("game") ? 120 : 90;
          minutes.put(d, said.isEmpty() ? usual : Integer.parseInt(said));
          if (kind.equals("practice") && !said.isEmpty()) {
            hitting.add(d);
          }
        }
      }
      for (Day day : days(first, rows.toString(), age)) {
        String why = day.note().map(Phrase::key).orElse("");
        String run = "seed %d round %d, %s: %s".formatted(SEED, round, day.date(), rows);
        if (why.equals("day.sits-out")) {
          assertThat(mostMinutes(minutes, day.date())).as(run).isGreaterThan(60 * age - SLACK);
          assertThat(hitting).as(run).contains(day.date());
        }
        if (why.equals("day.no-free-day")) {
          assertThat(mostDays(minutes, day.date())).as(run).isGreaterThan(3);
          assertThat(hitting).as(run).contains(day.date());
        }
        if (why.equals("day.no-minutes")) {
          assertThat(hitting).as(run).doesNotContain(day.date());
        }
        assertThat(why).as(run).isNotEqualTo("day.nothing-fits");
      }
    }
  }

  private static int mostMinutes(Map<LocalDate, Integer> minutes, LocalDate day) {
    return windows(day)
        .mapToInt(w -> w.mapToInt(d -> minutes.getOrDefault(d, 0)).sum())
        .max()
        .orElseThrow();
  }

  private static int mostDays(Map<LocalDate, Integer> minutes, LocalDate day) {
    return windows(day)
        .mapToInt(w -> (int) w.filter(minutes::containsKey).count())
        .max()
        .orElseThrow();
  }

  private static Stream<Stream<LocalDate>> windows(LocalDate day) {
    return day.minusDays(6).datesUntil(day.plusDays(1)).map(d -> d.datesUntil(d.plusDays(7)));
  }
}
