package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.DrillQuestion;
import org.belthigh.history.Handed;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weeks that are other than usual, and what holds from week to week. */
class WeeksTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  private static final LocalDate FOURTH = FIRST.plusWeeks(3);

  @TempDir private Path folder;

  private void write(String file, String text) throws Exception {
    Files.createDirectories(folder.resolve(file).getParent());
    Files.writeString(folder.resolve(file), text);
  }

  /** Three hitters who practise on Tuesdays and Thursdays; {@code more} calendar rows. */
  private ClubRecord club(String... more) throws Exception {
    write(
        "club.yaml",
        """
        name: Weeks
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """);
    write(
        "roster.csv",
        """
        id,first_name,born,bats,group
        a1,Ada,2017-01-05,R,u10
        a2,Bo,2017-02-05,L,u10
        a3,Cy,2016-12-05,R,u10
        """);
    StringBuilder calendar = new StringBuilder("date,group,kind,minutes,hitting_minutes,adults\n");
    for (LocalDate d = FIRST; !d.isAfter(LocalDate.of(2027, 5, 24)); d = d.plusDays(1)) {
      if (d.getDayOfWeek() == DayOfWeek.TUESDAY || d.getDayOfWeek() == DayOfWeek.THURSDAY) {
        calendar.append(d).append(",u10,practice,90,40,2\n");
      }
    }
    for (String row : more) {
      calendar.append(row).append('\n');
    }
    write("calendar.csv", calendar.toString());
    return Intake.read(folder, CATALOGUE);
  }

  private static Plan plan(ClubRecord record, LocalDate from, int weeks) {
    PlanRequest request =
        new PlanRequest(from, weeks, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return new Planner(CATALOGUE).plan(record, request);
  }

  private static List<Day> week(PlayerPlan player, LocalDate first) {
    return player.days().stream()
        .filter(d -> !d.date().isBefore(first) && d.date().isBefore(first.plusDays(7)))
        .toList();
  }

  private static int tosses(List<Day> days) {
    return days.stream().flatMap(d -> d.items().stream()).mapToInt(Item::reps).sum();
  }

  private static int swings(List<Day> days) {
    return days.stream().mapToInt(Day::swings).sum();
  }

  private static long atHome(List<Day> days) {
    return days.stream().filter(d -> d.place() == Place.HOME).count();
  }

  @Test
  void every_fourth_week_of_the_season_is_lighter_whatever_day_the_plan_begins_on()
      throws Exception {
    ClubRecord record = club();
    Plan whole = plan(record, FIRST, 12);

    for (PlayerPlan player : whole.players()) {
      for (int w = 0; w < 12; w++) {
        List<Day> days = week(player, FIRST.plusWeeks(w));
        boolean lighter = w % 4 == 3;
        assertThat(atHome(days)).as("week %s", w).isEqualTo(lighter ? 1 : 2);
        assertThat(player.weeks().get(w).kind())
            .isEqualTo(lighter ? PlannedWeek.Kind.LIGHTER : PlannedWeek.Kind.USUAL);
        if (lighter) {
          assertThat(tosses(days))
              .as("week %s", w)
              .isLessThan(tosses(week(player, FIRST.plusWeeks(w - 1))));
          assertThat(swings(days)).isGreaterThan(0);
        }
      }
    }
    for (int shift = 1; shift < 7; shift++) {
      Plan other = plan(record, FOURTH.minusDays(shift), 3);
      for (PlayerPlan player : other.players()) {
        assertThat(player.days())
            .filteredOn(
                d -> !d.items().isEmpty() && d.note().orElseThrow().key().endsWith("lighter"))
            .isNotEmpty()
            .allMatch(d -> !d.date().isBefore(FOURTH) && d.date().isBefore(FOURTH.plusWeeks(1)));
        assertThat(atHome(week(player, FOURTH))).isLessThanOrEqualTo(2);
      }
    }
  }

  @Test
  void the_card_of_a_lighter_week_says_so_and_the_coach_sheet_too() throws Exception {
    Plan lighter = plan(club(), FOURTH, 1);
    Plan usual = plan(club(), FOURTH.minusWeeks(1), 1);

    assertThat(lighter.players())
        .allSatisfy(p -> assertThat(p.card().week().orElseThrow().key()).isEqualTo("week.lighter"));
    assertThat(lighter.groups().get(0).practices())
        .allSatisfy(
            s -> assertThat(s.notes()).extracting(n -> n.key()).contains("practice.lighter"));
    assertThat(lighter.groups().get(0).overview().ahead())
        .extracting(p -> p.key())
        .containsExactly("ahead.lighter");
    assertThat(usual.players()).allSatisfy(p -> assertThat(p.card().week()).isEmpty());
    assertThat(usual.groups().get(0).practices()).allSatisfy(s -> assertThat(s.notes()).isEmpty());
  }

  @Test
  void the_days_before_a_tournament_have_fewer_tosses_and_at_most_one_home_day() throws Exception {
    Plan plain = plan(club(), FIRST, 1);
    Plan before = plan(club("2027-03-06,u10,tournament,300,,"), FIRST, 1);
    LocalDate thursday = FIRST.plusDays(3);

    for (int i = 0; i < plain.players().size(); i++) {
      Day usual = plain.players().get(i).days().get(3);
      Day near = before.players().get(i).days().get(3);
      assertThat(near.date()).isEqualTo(thursday);
      assertThat(swings(List.of(near))).isBetween(1, swings(List.of(usual)) - 1);
      assertThat(atHome(before.players().get(i).days().subList(2, 5))).isLessThanOrEqualTo(1);
      assertThat(before.players().get(i).days().get(4).items()).as("the eve").isEmpty();
      assertThat(before.players().get(i).card().week().orElseThrow().key())
          .isEqualTo("week.before-tournament");
    }
  }

  /** So many of so many calls right, on a day of the first hitter. */
  private static String calls(String day, int right, int of) {
    StringBuilder rows = new StringBuilder();
    for (int i = 1; i <= of; i++) {
      String called = i <= right ? "low-in" : "ball";
      rows.append("%s,a1,zone-call,%d,low-in,%s,no%n".formatted(day, i, called));
    }
    return rows.toString();
  }

  /** One step proved, a good day on the next, then two poor ones. */
  private ClubRecord slump(int rightOfEight) throws Exception {
    write(
        "logs/a1.csv",
        "date,player,drill,toss,zone,called,swing\n"
            + calls("2027-03-02", 20, 20)
            + calls("2027-03-04", 20, 20)
            + calls("2027-03-18", 7, 8)
            + calls("2027-04-06", rightOfEight, 8)
            + calls("2027-04-08", rightOfEight, 8));
    return club();
  }

  @Test
  void after_a_dip_a_week_has_one_skill_an_easier_step_and_fewer_tosses() throws Exception {
    LocalDate from = LocalDate.of(2027, 4, 12);
    PlayerPlan easy = plan(slump(2), from, 2).players().get(0);
    PlayerPlan usual = plan(slump(7), from, 2).players().get(0);
    DecisionLine see = easy.decisions().get(0);

    assertThat(see.rules()).startsWith("PRG-011");
    assertThat(easy.weeks()).extracting(PlannedWeek::kind).startsWith(PlannedWeek.Kind.EASY);
    assertThat(usual.weeks()).extracting(PlannedWeek::kind).startsWith(PlannedWeek.Kind.USUAL);
    Item home =
        easy.days().subList(0, 7).stream()
            .filter(d -> d.place() == Place.HOME)
            .flatMap(d -> d.items().stream())
            .findFirst()
            .orElseThrow();
    assertThat(atHome(easy.days().subList(0, 7))).isEqualTo(1);
    assertThat(atHome(usual.days().subList(0, 7))).isEqualTo(2);
    assertThat(home.skill()).isEqualTo(Skill.SEE);
    assertThat(home.step()).isEqualTo("see-3").isLessThan(see.step());
    assertThat(home.reps()).isEqualTo(12);
    assertThat(easy.card().week().orElseThrow().key()).isEqualTo("week.easy");
    assertThat(easy.card().week().orElseThrow().values()).containsEntry("back", "yes");
    assertThat(easy.days().subList(7, 14))
        .flatExtracting(Day::items)
        .filteredOn(i -> i.skill() == Skill.SEE)
        .allSatisfy(i -> assertThat(i.step()).as("the week after").isEqualTo(see.step()));
  }

  @Test
  void after_the_season_there_is_time_off_and_a_fresh_look_in_spring() throws Exception {
    Plan plan = plan(club(), LocalDate.of(2027, 5, 24), 3);

    for (PlayerPlan player : plan.players()) {
      assertThat(player.days().subList(1, 21)).allMatch(d -> d.items().isEmpty());
      assertThat(player.weeks().get(2).kind()).isEqualTo(PlannedWeek.Kind.TIME_OFF);
    }
    Card card = plan(club(), LocalDate.of(2027, 6, 7), 1).players().get(0).card();
    assertThat(card.things()).isEmpty();
    assertThat(card.aim().key()).isEqualTo("aim.time-off");
    assertThat(card.week().orElseThrow().values()).containsEntry("when", "after");
    assertThat(plan.groups().get(0).overview().ahead())
        .extracting(p -> p.key())
        .contains("ahead.time-off");
  }

  @Test
  void assumed_practices_end_with_the_season_and_a_calendar_that_goes_on_is_followed()
      throws Exception {
    ClubRecord going = club("2027-06-08,u10,practice,90,40,2");
    LocalDate june = LocalDate.of(2027, 6, 7);
    assertThat(plan(going, june, 1).players())
        .allSatisfy(p -> assertThat(swings(p.days())).isGreaterThan(0));

    Files.delete(folder.resolve("calendar.csv"));
    ClubRecord bare = Intake.read(folder, CATALOGUE);
    assertThat(plan(bare, june, 2).players())
        .allSatisfy(p -> assertThat(p.days()).allMatch(d -> d.items().isEmpty()));
    assertThat(plan(bare, FIRST, 1).players())
        .allSatisfy(p -> assertThat(swings(p.days())).isGreaterThan(0));
  }

  @Test
  void weeks_after_the_checkpoint_say_on_what_they_depend() throws Exception {
    Plan fresh = plan(club(), FIRST, 2);
    PlayerPlan dipped = plan(slump(2), LocalDate.of(2027, 4, 12), 2).players().get(0);
    Plan demo = plan(Intake.read(Path.of("demo-players"), CATALOGUE), LocalDate.of(2027, 4, 5), 2);
    write("wellness.csv", "date,player,kind\n2027-03-01,a1,head-injury\n");
    Plan held = plan(club(), FIRST, 2);

    assertThat(fresh.players())
        .allSatisfy(p -> assertThat(what(p)).isEqualTo("depends.first"))
        .allSatisfy(p -> assertThat(p.depends().get().day()).isEqualTo(FIRST.plusWeeks(1)));
    assertThat(what(dipped)).isEqualTo("depends.easy");
    assertThat(demo.players())
        .extracting(WeeksTest::what)
        .contains("depends.settles", "depends.begins", "depends.hold");
    assertThat(held.players()).extracting(WeeksTest::what).startsWith("depends.hold");
    assertThat(plan(club(), FIRST, 1).players()).allMatch(p -> p.depends().isEmpty());
    assertThat(fresh.groups().get(0).overview().rows())
        .allSatisfy(r -> assertThat(r.depends()).isPresent());
  }

  private static String what(PlayerPlan player) {
    return player.depends().orElseThrow().what().key();
  }

  @Test
  void no_drill_is_done_until_it_bores_where_its_step_has_another() throws Exception {
    Plan plan = plan(Intake.read(Path.of("demo-players"), CATALOGUE), FIRST, 12);
    DrillChoice choice =
        new DrillChoice(CATALOGUE.curricula().get("belthigh-2027"), Map.of(), false);
    int home = 0;
    int practice = 0;

    for (PlayerPlan player : plan.players()) {
      Runs runs = new Runs(3);
      for (Day day : player.days()) {
        for (Item item : day.items()) {
          Step step = CATALOGUE.curricula().get("belthigh-2027").step(item.step()).orElseThrow();
          boolean bores =
              runs.bores(day.date(), item.skill(), item.drill())
                  && choice.alternate(step, choice.drill(item.drill()), day.place());
          home += bores && day.place() == Place.HOME ? 1 : 0;
          practice += bores && day.place() != Place.HOME ? 1 : 0;
          runs.add(day.date(), item.skill(), item.drill());
        }
      }
    }
    assertThat(home).isZero();
    // a practice weighs it against what a volunteer has to set up: once in the season
    assertThat(practice).isLessThanOrEqualTo(1);
  }

  @Test
  void a_skill_of_the_week_gets_a_second_look_on_another_day() throws Exception {
    Plan plan = plan(club(), FIRST, 6);

    for (PlayerPlan player : plan.players()) {
      for (int w = 0; w < 6; w++) {
        List<Day> days = week(player, FIRST.plusWeeks(w));
        Map<Skill, Long> looks = new EnumMap<>(Skill.class);
        days.forEach(
            d ->
                d.items().stream()
                    .map(Item::skill)
                    .distinct()
                    .forEach(s -> looks.merge(s, 1L, Long::sum)));
        assertThat(looks.values().stream().filter(n -> n >= 2).count())
            .as("%s week %s: %s", player.who().id(), w, looks)
            .isGreaterThanOrEqualTo(2);
      }
    }
  }

  @Test
  void home_work_of_those_of_whom_nothing_is_known_waits_for_the_evaluation_day() throws Exception {
    Plan plan = plan(club("2027-03-06,u10,evaluation,120,90,3"), FIRST, 2);
    LocalDate saturday = FIRST.plusDays(5);

    for (PlayerPlan player : plan.players()) {
      assertThat(player.days().subList(0, 5)).noneMatch(d -> d.place() == Place.HOME);
      assertThat(player.days().get(5).items()).isNotEmpty();
      assertThat(atHome(week(player, FIRST.plusWeeks(1)))).isEqualTo(2);
    }
    assertThat(plan.groups().get(0).practices())
        .filteredOn(s -> s.date().equals(saturday))
        .allSatisfy(
            s -> assertThat(s.notes()).extracting(n -> n.key()).contains("practice.first-look"))
        .isNotEmpty();
  }

  @Test
  void a_game_pushes_home_work_away_from_the_day_after_it() throws Exception {
    Plan without = plan(club(), FIRST, 1);
    Plan with = plan(club("2027-03-06,u10,game,90,,"), FIRST, 1);

    assertThat(without.players())
        .allSatisfy(p -> assertThat(p.days().get(6).place()).isEqualTo(Place.HOME));
    assertThat(with.players())
        .allSatisfy(
            p -> {
              assertThat(p.days().get(5).items()).as("game day").isEmpty();
              assertThat(p.days().get(6).items()).as("the day after").isEmpty();
            });
  }

  @Test
  void the_day_after_heavy_pitching_has_half_the_swings_at_most() throws Exception {
    write("throws.csv", "date,player,pitches\n2027-03-01,a1,60\n");
    Day rested = plan(club(), FIRST.plusDays(1), 1).players().get(0).days().get(0);

    assertThat(rested.note().orElseThrow().key()).isEqualTo("day.practice.rested");
    assertThat(rested.swings()).isLessThanOrEqualTo(35);
  }

  @Test
  void what_was_missed_is_not_made_up() throws Exception {
    ClubRecord record = club();
    LocalDate second = FIRST.plusWeeks(1);
    PlanRequest request =
        new PlanRequest(second, 1, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    Handed handed = plan(record, FIRST, 1).handedOut();

    Plan missed = new Planner(CATALOGUE).plan(record, request, History.of(List.of(handed)));

    for (PlayerPlan player : missed.players()) {
      assertThat(player.back().orElseThrow().notLogged()).isEqualTo(player.back().get().days());
      assertThat(atHome(player.days())).isEqualTo(2);
      assertThat(player.days())
          .filteredOn(d -> d.place() == Place.HOME)
          .allSatisfy(d -> assertThat(tosses(List.of(d))).isEqualTo(18));
      assertThat(swings(player.days())).isLessThanOrEqualTo(120);
    }
  }

  @Test
  void what_asks_for_no_writing_is_not_missed() throws Exception {
    LocalDate second = FIRST.plusWeeks(1);
    Handed handed =
        new Handed(
            FIRST,
            List.of(
                new Handed.Session(FIRST, "a1", "home", "spot-cards", 18, 0, 8),
                new Handed.Session(FIRST.plusDays(1), "a1", "field", "zone-call", 15, 12, 8)),
            List.of(new Handed.Stood("a1", "see", "see-3", "keep-going")));
    PlanRequest request =
        new PlanRequest(second, 1, Set.of(), Set.of(), Optional.empty(), Optional.empty());

    Plan plan = new Planner(CATALOGUE).plan(club(), request, History.of(List.of(handed)));

    LookBack back = plan.players().get(0).back().orElseThrow();
    assertThat(back.days()).isEqualTo(1);
    assertThat(back.notLogged()).isEqualTo(1);
  }

  /** NATA 2019: an hour of organised sport a week for each year of age, so ten at ten. */
  @Test
  void a_practice_on_top_of_a_full_week_has_no_hitting_work_and_the_overview_says_so()
      throws Exception {
    LocalDate tuesday = FIRST.plusDays(1);
    String saturday = FIRST.plusDays(5).toString();
    Plan usual = plan(club(saturday + ",u10,game,420,,2"), FIRST, 1);
    Plan full = plan(club(saturday + ",u10,game,421,,2"), FIRST, 1);

    assertThat(usual.groups().get(0).overview().ahead()).isEmpty();
    assertThat(full.groups().get(0).overview().ahead())
        .contains(Phrase.of("ahead.full", "date", tuesday, "players", 3, "source", "NATA 2019"));
    for (PlayerPlan player : full.players()) {
      assertThat(player.days().stream().filter(d -> d.place() == Place.FIELD))
          .allSatisfy(d -> assertThat(d.items()).isEmpty());
    }
  }

  /** The overview says of a full week: an hour for each year of age, and two days without sport. */
  @Test
  void the_numbers_that_the_overview_names_are_those_of_the_parameters() {
    for (AgeBand band : AgeBand.values()) {
      assertThat(CATALOGUE.parameter("hours-per-week-per-year-of-age").on(FIRST).at(band))
          .isEqualTo(1);
      assertThat(CATALOGUE.parameter("free-days-per-week").on(FIRST).at(band)).isEqualTo(2);
    }
  }

  @Test
  void at_home_what_is_written_down_comes_before_what_is_not() {
    DrillChoice choice =
        new DrillChoice(CATALOGUE.curricula().get("belthigh-2027"), Map.of(), false);
    for (Step step : CATALOGUE.curricula().get("belthigh-2027").ladders().get(Skill.SEE).steps()) {
      Optional<Drill> first =
          choice.of(step, Place.HOME, true, DrillQuestion.any(), Map.of(), d -> false);
      assertThat(first.filter(d -> d.logged()).isPresent())
          .as(step.id())
          .isEqualTo(choice.logged(step, Place.HOME));
    }
  }
}
