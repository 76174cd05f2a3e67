package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.decide.Outcome;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlannerTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);

  @TempDir private Path folder;

  private static PlanRequest request(LocalDate from, int weeks) {
    return new PlanRequest(from, weeks, Set.of(), Set.of(), Optional.empty(), Optional.empty());
  }

  private static ClubRecord demo() throws Exception {
    return Intake.read(Path.of("demo-players"), CATALOGUE);
  }

  private static PlayerPlan player(Plan plan, String id) {
    return plan.players().stream().filter(p -> p.who().id().equals(id)).findFirst().orElseThrow();
  }

  private ClubRecord club(String calendar) throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Two Files
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """);
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group
        a1,Ada,2017-01-05,R,u10
        a2,Bo,2017-02-05,L,u10
        a3,Cy,2016-12-05,S,u10
        """);
    if (!calendar.isEmpty()) {
      Files.writeString(folder.resolve("calendar.csv"), calendar);
    }
    return Intake.read(folder, CATALOGUE);
  }

  @Test
  void the_demo_season_keeps_every_limit() throws Exception {
    ClubRecord record = demo();

    Plan plan = new Planner(CATALOGUE).plan(record, request(MONDAY, 7));

    assertThat(plan.players()).hasSize(28);
    PlanLimits.hold(plan, record);
  }

  @Test
  void every_monday_of_the_season_keeps_every_limit() throws Exception {
    ClubRecord record = demo();
    Planner planner = new Planner(CATALOGUE);

    for (LocalDate from = record.club().seasonFirst();
        from.isBefore(record.club().seasonLast());
        from = from.plusDays(9)) {
      PlanLimits.hold(planner.plan(record, request(from, 3)), record);
    }
  }

  @Test
  void two_files_are_enough_for_a_plan_that_a_coach_can_run() throws Exception {
    ClubRecord record = club("");

    Plan plan = new Planner(CATALOGUE).plan(record, request(MONDAY, 3));

    PlanLimits.hold(plan, record);
    assertThat(plan.players())
        .flatExtracting(PlayerPlan::decisions)
        .extracting(DecisionLine::outcome)
        .containsOnly(Outcome.NOT_SEEN_ENOUGH);
    assertThat(plan.groups().get(0).practices())
        .extracting(PracticeSheet::date)
        .containsExactly(LocalDate.of(2027, 4, 6), LocalDate.of(2027, 4, 8));
    for (PlayerPlan player : plan.players()) {
      Set<Skill> skills = new HashSet<>();
      player.days().forEach(d -> d.items().forEach(i -> skills.add(i.skill())));
      assertThat(skills).containsExactlyInAnyOrder(Skill.values());
      assertThat(player.card().things()).isNotEmpty();
      assertThat(player.home()).isNotEmpty();
    }
  }

  @Test
  void a_calendar_of_practices_is_followed() throws Exception {
    ClubRecord record =
        club(
            """
            date,group,kind,minutes,hitting_minutes,adults
            2027-04-07,u10,practice,90,40,2
            2027-04-10,u10,game,120,,
            2027-04-12,all,break,,,
            """);

    Plan plan = new Planner(CATALOGUE).plan(record, request(MONDAY, 2));

    Day wednesday = player(plan, "a1").days().get(2);
    assertThat(wednesday.place()).isEqualTo(Place.FIELD);
    assertThat(wednesday.items()).isNotEmpty();
    assertThat(wednesday.minutes()).isLessThanOrEqualTo(40);
    assertThat(player(plan, "a1").days().get(5).items()).as("game day").isEmpty();
    assertThat(player(plan, "a1").days().get(7).place()).as("break").isEqualTo(Place.REST);
    assertThat(player(plan, "a1").days())
        .filteredOn(d -> d.place() == Place.FIELD && !d.items().isEmpty())
        .hasSize(1);
  }

  @Test
  void nobody_held_does_what_is_held_and_nobody_says_why_in_public() throws Exception {
    Plan plan = new Planner(CATALOGUE).plan(demo(), request(MONDAY, 1));

    PlayerPlan head = player(plan, "p10");
    PlayerPlan arm = player(plan, "p23");

    assertThat(head.days()).allMatch(d -> d.items().isEmpty() && d.place() == Place.REST);
    assertThat(arm.days()).allMatch(d -> d.swings() == 0);
    assertThat(head.holds()).extracting(h -> h.open().key()).containsOnly("held.everything");
    assertThat(plan.groups().get(0).practices())
        .allSatisfy(
            p -> {
              assertThat(p.notToday()).extracting(Label::id).contains("p10");
              assertThat(p.rotations())
                  .flatExtracting(PracticeSheet.Rotation::posts)
                  .flatExtracting(PracticeSheet.Post::hitters)
                  .extracting(h -> h.who().id())
                  .doesNotContain("p10");
            });
  }

  @Test
  void two_who_share_a_first_name_get_an_initial_and_nobody_a_last_name() throws Exception {
    Plan plan = new Planner(CATALOGUE).plan(demo(), request(MONDAY, 1));

    assertThat(player(plan, "p03").who().name()).isEqualTo("Mateo R.");
    assertThat(player(plan, "p04").who().name()).isEqualTo("Mateo H.");
    assertThat(player(plan, "p01").who().name()).isEqualTo("Oscar");
  }

  @Test
  void everybody_in_a_practice_gets_the_same_visits_and_swings_differ_little() throws Exception {
    Plan plan = new Planner(CATALOGUE).plan(demo(), request(MONDAY, 1));

    for (GroupPlan group : plan.groups()) {
      for (PracticeSheet sheet : group.practices()) {
        assertThat(sheet.rotations()).isNotEmpty();
        for (PracticeSheet.Rotation rotation : sheet.rotations()) {
          List<String> there =
              rotation.posts().stream()
                  .flatMap(p -> p.hitters().stream())
                  .map(h -> h.who().id())
                  .toList();
          assertThat(there).as("nobody twice").doesNotHaveDuplicates();
          assertThat(rotation.from() + rotation.minutes())
              .isLessThanOrEqualTo(sheet.hittingMinutes());
        }
      }
    }
  }

  @Test
  void the_order_of_the_roster_does_not_matter() throws Exception {
    ClubRecord record = demo();
    List<org.belthigh.intake.Player> reversed = new java.util.ArrayList<>(record.players());
    java.util.Collections.reverse(reversed);
    ClubRecord turned =
        new ClubRecord(
            record.club(),
            reversed,
            record.events(),
            record.tosses(),
            record.tallies(),
            record.outings(),
            record.wellness(),
            record.otherSports(),
            record.placements(),
            record.unread(),
            record.problems());

    Plan one = new Planner(CATALOGUE).plan(record, request(MONDAY, 3));
    Plan other = new Planner(CATALOGUE).plan(turned, request(MONDAY, 3));

    for (PlayerPlan player : one.players()) {
      assertThat(player(other, player.who().id())).isEqualTo(player);
    }
  }

  @Test
  void later_weeks_are_provisional_and_the_first_is_not() throws Exception {
    Plan plan = new Planner(CATALOGUE).plan(demo(), request(MONDAY, 2));

    assertThat(plan.players())
        .allSatisfy(
            p -> {
              assertThat(p.days().subList(0, 7)).noneMatch(Day::provisional);
              assertThat(p.days().subList(7, 14)).allMatch(Day::provisional);
            });
  }

  @Test
  void a_clubs_stricter_numbers_stand_in_the_pocket_table_and_the_arm_box() throws Exception {
    ClubRecord record = club("");
    assertThat(pocket(record)).extracting(ArmSheet.PocketTable::dailyMax).containsExactly(75, 85);
    assertThat(pocket(record)).allSatisfy(t -> assertThat(t.ages().key()).isEqualTo("arm.table"));

    Files.writeString(
        folder.resolve("club.yaml"),
        Files.readString(folder.resolve("club.yaml"))
            + """
            stricter:
              daily_max: [{ages: [9, 9], pitches: 60}]
              weekly_max: [{ages: [9, 10], pitches: 100}]
              rest_days_add: 1
              days_in_a_row: 1
            """);
    ClubRecord stricter = Intake.read(folder, CATALOGUE);

    assertThat(pocket(stricter))
        .extracting(ArmSheet.PocketTable::dailyMax)
        .containsExactly(60, 75, 85);
    assertThat(pocket(stricter))
        .allSatisfy(
            t -> {
              assertThat(t.ages().values()).containsEntry("book", "Two Files");
              assertThat(t.rest().get(0).days()).isEqualTo(1);
            });
    assertThat(pocket(stricter).get(0).weeklyMax()).hasValue(100);
    assertThat(pocket(stricter).get(2).weeklyMax()).isEmpty();
    Plan plan = new Planner(CATALOGUE).plan(stricter, request(MONDAY, 1));
    assertThat(plan.groups().get(0).arms().cautions())
        .anySatisfy(c -> assertThat(c.key()).isEqualTo("arm.caution.row"));
    assertThat(player(plan, "a1").card().arm().source().key()).isEqualTo("arm.source.stricter");
  }

  private static List<ArmSheet.PocketTable> pocket(ClubRecord record) {
    return new Planner(CATALOGUE).plan(record, request(MONDAY, 1)).groups().get(0).arms().tables();
  }

  @Test
  void a_practice_sheet_has_the_heat_tables_of_the_strictest_region_for_the_youngest()
      throws Exception {
    HeatBox heat =
        new Planner(CATALOGUE)
            .plan(club(""), request(MONDAY, 1))
            .groups()
            .get(0)
            .practices()
            .get(0)
            .heat();

    assertThat(heat.meter()).hasSize(3);
    assertThat(heat.meter().get(2).reading().values()).containsEntry("from", 86.1);
    assertThat(heat.meter().get(2).strictest().values()).containsEntry("table", "ACSM 2007");
    assertThat(heat.meter().get(2).others()).hasSize(1);
    assertThat(heat.index().get(3).reading().values()).containsEntry("from", 103.0);
    assertThat(heat.notes()).extracting(n -> n.key()).contains("heat.sure.young");
    assertThat(heat.mind().key()).isEqualTo("heat.shade");
  }
}
