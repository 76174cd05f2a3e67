package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.april;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan as it is written is read whole, and each kind of check is made. */
class AuditTest {
  @TempDir private Path folder;

  /** Two weeks of Ada with a hold, a practice on the 6th with one station, and rest else. */
  private static ObjectNode plan() {
    ObjectNode plan = JsonNodeFactory.instance.objectNode();
    plan.put("club", "Two Files").put("curriculum", "belthigh-2027 2027.1");
    plan.put("from", "2027-04-05").put("weeks", 2);
    ObjectNode ada = plan.putArray("players").addObject();
    ada.put("player", "a1").put("group", "u10").put("age", 10);
    ada.putObject("sport_months").putNull("remark");
    ArrayNode decisions = ada.putArray("decisions");
    Stream.of("see", "choose", "drive", "send").forEach(s -> decisions.addObject().put("skill", s));
    ArrayNode holds = ada.putArray("holds");
    holds.addObject().put("kind", "throwing").put("from", "2027-04-05").putNull("until");
    holds.addObject().put("kind", "swinging").put("from", "2027-04-12").put("until", "2027-04-13");
    ArrayNode days = ada.putArray("days");
    for (int d = 5; d < 19; d++) {
      ObjectNode day = days.addObject();
      day.put("date", april(d).toString()).put("place", "rest");
      day.put("minutes", 0).put("swings", 0).put("throws", 0).putArray("items");
    }
    ObjectNode practice = (ObjectNode) days.get(1);
    practice.put("place", "field").put("minutes", 8).put("swings", 9);
    practice
        .withArray("items")
        .addObject()
        .put("drill", "tee-belt-high")
        .put("ball", "baseball")
        .put("feed", "tee")
        .put("feet", 0)
        .put("reps", 12)
        .put("swings", 9)
        .put("minutes", 8);
    ObjectNode printed = plan.putArray("practices").addObject();
    printed.put("group", "u10").put("date", "2027-04-06");
    ObjectNode station = printed.putArray("stations").addObject();
    station.put("station", 1).put("adult", true).putArray("drills").add("tee-belt-high");
    return plan;
  }

  private static ObjectNode ada(ObjectNode plan) {
    return (ObjectNode) plan.at("/players/0");
  }

  private static ObjectNode sixth(ObjectNode plan) {
    return (ObjectNode) plan.at("/players/0/days/1");
  }

  private static List<String> alone(ObjectNode plan) {
    return texts(new Audit(CATALOGUE).alone("plan.json", plan.toString()));
  }

  private List<String> beside(ObjectNode plan, String... calendar) throws Exception {
    SmallClub club = new SmallClub(folder).calendar("2027-04-06,u10,practice,90,40,1");
    club.calendar(calendar);
    return texts(new Audit(CATALOGUE).beside("plan.json", plan.toString(), club.record()));
  }

  private static List<String> texts(List<Problem> problems) {
    return problems.stream()
        .map(Problem::text)
        .map(t -> t.replaceFirst("^plan.json, ", "").replaceFirst("\\.?\n.*", ""))
        .toList();
  }

  @Test
  void a_plan_in_order_has_no_finding_alone() throws Exception {
    assertThat(alone(plan())).isEmpty();
  }

  /** The plan of these tests has the keys of an older form; whole plans: PlantedViolationsTest. */
  @Test
  void a_plan_of_an_older_form_is_told_as_such_beside_its_club_and_breaks_no_load()
      throws Exception {
    assertThat(beside(plan()))
        .contains("plan: it is of an older form, without files or later_rows; plan it anew")
        .noneMatch(t -> t.contains("swings in a day") || t.contains("forbids"));
  }

  @Test
  void everything_that_is_checked_is_read_from_the_file() {
    Findings findings = SmallClub.findings();

    FinishedPlan read = new FinishedPlanFile(findings).read(plan()).orElseThrow();

    assertThat(SmallClub.said(findings)).isEmpty();
    assertThat(read.curriculum()).isEqualTo("belthigh-2027");
    assertThat(read.from()).isEqualTo(FROM);
    assertThat(read.last()).isEqualTo(april(18));
    FinishedPlan.Person ada = read.players().get(0);
    assertThat(ada.id()).isEqualTo("a1");
    assertThat(ada.group()).isEqualTo("u10");
    assertThat(ada.age()).isEqualTo(10);
    assertThat(ada.skills()).containsExactly("see", "choose", "drive", "send");
    assertThat(ada.holds())
        .containsExactly(
            new FinishedPlan.Held("throwing", FROM, Optional.empty()),
            new FinishedPlan.Held("swinging", april(12), Optional.of(april(13))));
    assertThat(ada.yearRemarked()).isFalse();
    assertThat(ada.days()).hasSize(14);
    assertThat(ada.days().get(1))
        .isEqualTo(
            new FinishedPlan.Dated(
                april(6),
                "field",
                8,
                9,
                0,
                List.of(new FinishedPlan.Work("tee-belt-high", "baseball", "tee", 0, 12, 9, 8))));
    assertThat(read.practices())
        .containsExactly(
            new FinishedPlan.Practice(
                "u10",
                april(6),
                List.of(new FinishedPlan.Station(1, true, List.of("tee-belt-high"))),
                List.of()));
  }

  @Test
  void a_remark_on_the_months_is_read_and_a_blank_one_is_none() {
    ObjectNode plan = plan();
    ((ObjectNode) ada(plan).get("sport_months")).put("remark", "Nine months.");
    assertThat(
            new FinishedPlanFile(SmallClub.findings())
                .read(plan)
                .orElseThrow()
                .players()
                .get(0)
                .yearRemarked())
        .isTrue();
  }

  @Test
  void a_curriculum_without_a_version_is_read_too() {
    ObjectNode plan = plan().put("curriculum", "belthigh-2027");

    assertThat(alone(plan)).isEmpty();
    assertThat(alone(plan.put("curriculum", "nobodys 1")))
        .containsExactly(
            "a1 2027-04-06, tee-belt-high: the curriculum has no such drill; drills come from it");
  }

  @ParameterizedTest
  @CsvSource({"club", "from", "weeks", "players"})
  void without_one_of_these_keys_nothing_can_be_checked(String key) {
    ObjectNode plan = plan();
    plan.remove(key);

    assertThat(alone(plan))
        .containsExactly(key + ": the key is missing; a plan has club, from, weeks and players");
  }

  @Test
  void a_first_day_that_is_none_ends_the_reading_there() {
    assertThat(alone(plan().put("from", "2027-02-30")))
        .containsExactly("plan, from: '2027-02-30' is not a date; dates are ISO 8601");
  }

  @Test
  void what_is_no_whole_number_of_0_or_more_is_said() {
    ObjectNode plan = plan();
    sixth(plan).put("minutes", -1).put("swings", 9.5).remove("throws");
    assertThat(alone(plan))
        .contains(
            "a1 2027-04-06, minutes: -1 stands there; minutes is a whole number, 0 or more",
            "a1 2027-04-06, swings: 9.5 stands there; swings is a whole number, 0 or more",
            "a1 2027-04-06, throws: the number is missing; throws is a whole number, 0 or more");
    ObjectNode large = plan();
    sixth(large).put("minutes", 4_294_967_304L);
    assertThat(alone(large))
        .as("8 and 2 to the power of 32")
        .contains(
            "a1 2027-04-06, minutes: 4294967304 stands there; minutes is a whole number, 0 or more");
  }

  @Test
  void a_text_that_is_missing_or_no_text_is_said() {
    ObjectNode plan = plan();
    sixth(plan).remove("place");
    ((ObjectNode) sixth(plan).at("/items/0")).put("ball", 5);

    assertThat(alone(plan))
        .contains(
            "a1 2027-04-06, place: no text stands there; each entry has its place",
            "a1 2027-04-06, ball: no text stands there; each entry has its ball");
  }

  @Test
  void a_player_of_another_club_or_group_ends_the_checks_with_the_club() throws Exception {
    ObjectNode stranger = plan();
    ada(stranger).put("player", "z9");
    assertThat(beside(stranger))
        .containsExactly("z9: the roster has no such player in that group; a plan is for its club");

    ObjectNode moved = plan();
    ada(moved).put("group", "u14");
    assertThat(beside(moved))
        .containsExactly("a1: the roster has no such player in that group; a plan is for its club");
  }

  @Test
  void an_age_is_that_of_the_day_of_birth() throws Exception {
    ObjectNode plan = plan();
    ada(plan).put("age", 9);

    assertThat(beside(plan))
        .filteredOn(t -> t.contains("the age"))
        .containsExactly("a1: the age is 9; by the day of birth it is 10 on 2027-04-05");
  }

  @Test
  void without_the_day_of_birth_a_birthday_may_have_come_after_the_first_day() {
    FinishedPlan.Person ada = SmallClub.ada();
    Ages ages = new Ages(FROM, Optional.empty());

    assertThat(ages.on(ada, FROM.minusDays(1))).isEqualTo(10);
    assertThat(ages.on(ada, FROM)).isEqualTo(10);
    assertThat(ages.on(ada, FROM.plusDays(1))).isEqualTo(11);
  }

  @Test
  void every_kind_of_check_is_made() throws Exception {
    ObjectNode plan = plan();
    sixth(plan).put("swings", 71).put("throws", 1);
    ((ObjectNode) plan.at("/practices/0/stations/0")).put("adult", false);
    ((ObjectNode) sixth(plan).at("/items/0")).put("ball", "tennis");

    assertThat(beside(plan, "2027-04-06,u10,game,,,"))
        .anyMatch(t -> t.startsWith("a1 2027-04-06: swings is 71, its items add up to 9"))
        .anyMatch(t -> t.startsWith("a1 2027-04-06: work that the hold on throwing forbids"))
        .anyMatch(t -> t.startsWith("a1 2027-04-06: 71 swings in a day"))
        .anyMatch(t -> t.startsWith("a1 2027-04-06, tee-belt-high: a tennis"))
        .anyMatch(t -> t.startsWith("a1 2027-04-06: hitting work on the day of a game"))
        .anyMatch(t -> t.startsWith("u10 2027-04-06, station 1: bats without an adult"));
    assertThat(
            beside(
                plan(),
                "2026-05-06,u10,game,,,",
                "2026-06-06,u10,game,,,",
                "2026-07-06,u10,game,,,",
                "2026-08-06,u10,game,,,",
                "2026-09-06,u10,game,,,",
                "2026-10-06,u10,game,,,",
                "2026-11-06,u10,game,,,"))
        .filteredOn(t -> t.contains("months of the sport"))
        .singleElement()
        .asString()
        .startsWith("a1 2026-05 to 2027-04: 9 months of the sport are known");
  }

  @Test
  void what_is_no_json_is_said_with_its_line() {
    assertThat(new Audit(CATALOGUE).alone("plan.json", "{\n\"club\": }"))
        .singleElement()
        .satisfies(p -> assertThat(p.text()).startsWith("plan.json line 2: this is not JSON"));
  }

  @Test
  void each_check_beside_the_club_is_made() throws Exception {
    ObjectNode plan = plan();
    ObjectNode ada = ada(plan);
    ada.put("label", "Ida").putArray("arms").addObject().put("date", "2027-04-05");
    ((ObjectNode) ada.at("/arms/0")).put("answer", "may-pitch").put("may_catch", true);
    ObjectNode day = (ObjectNode) ada.at("/days/0");
    ((ObjectNode) sixth(plan).at("/items/0")).put("skill", "see").put("step", "drive-1");
    for (int i = 0; i < 14; i++) {
      ObjectNode home = (ObjectNode) ada.at("/days/" + i);
      home.put("place", i == 1 ? "field" : "home");
    }
    assertThat(day.path("place").asText()).isEqualTo("home");
    plan.putObject("asked").putArray("players").add("b1");
    ((ObjectNode) plan.at("/practices/0")).put("hitting_minutes", 10);
    plan.withArray("/practices/0/rotations").addObject().put("minute", 0).put("minutes", 99);
    new SmallClub(folder)
        .with(
            "throws.csv",
            "date,player,pitches,kind",
            "2027-04-05,a1,20,game",
            "2027-04-07,a1,5,game");
    SmallClub club = new SmallClub(folder).calendar("2027-04-06,u10,practice,90,40,1");
    List<String> said =
        texts(new Audit(CATALOGUE).beside("plan.json", plan.toString(), club.whole()));

    assertThat(said)
        .as("front")
        .anyMatch(t -> t.startsWith("rule_books: pitch-smart-2018 is missing"))
        .as("roster")
        .anyMatch(t -> t.startsWith("a1: the child was not asked for"))
        .as("practice")
        .anyMatch(t -> t.startsWith("u10 2027-04-06") && t.contains("hitting_minutes"))
        .as("rotation")
        .anyMatch(t -> t.startsWith("u10 2027-04-06") && t.contains("minute 99"))
        .as("later rows")
        .anyMatch(t -> t.startsWith("later_rows: nothing is said of"))
        .as("labels")
        .anyMatch(t -> t.startsWith("a1: the label is 'Ida'"))
        .as("holds say why")
        .anyMatch(t -> t.startsWith("a1, hold on throwing: the source is ''"))
        .as("decisions")
        .anyMatch(t -> t.startsWith("a1, see: "))
        .as("items")
        .anyMatch(t -> t.startsWith("a1 2027-04-06, tee-belt-high: its skill is 'see'"))
        .as("arms")
        .anyMatch(t -> t.startsWith("a1, arms: days"))
        .as("catching")
        .anyMatch(t -> t.startsWith("a1 2027-04-05, arm: the child may catch"))
        .as("cards and home sheets")
        .anyMatch(t -> t.startsWith("a1, cautions of the card: it does not say"))
        .as("weeks")
        .anyMatch(t -> t.startsWith("a1: 0 weeks are named"))
        .as("the plan before")
        .anyMatch(t -> t.startsWith("a1: nothing is said of the plan before"))
        .as("months of the sport")
        .anyMatch(t -> t.startsWith("a1, sport_months: from is"));
  }

  @Test
  void a_plan_of_the_form_of_today_is_not_called_old() throws Exception {
    ObjectNode plan = plan();
    plan.putArray("files");
    assertThat(beside(plan)).anyMatch(t -> t.startsWith("plan: it is of an older form"));
    plan.putArray("later_rows");
    assertThat(beside(plan)).noneMatch(t -> t.startsWith("plan: it is of an older form"));
  }

  @Test
  void less_after_a_clearance_and_one_drill_for_weeks_are_looked_at() throws Exception {
    ObjectNode plan = plan();
    for (int i = 0; i < 14; i++) {
      ObjectNode day = (ObjectNode) ada(plan).at("/days/" + i);
      day.put("place", "home");
      day.putArray("items")
          .addObject()
          .put("drill", "stand-in-spot")
          .put("step", "see-5")
          .put("swings", i == 2 ? 60 : 0);
    }
    new SmallClub(folder)
        .with(
            "wellness.csv",
            "date,player,kind,clears,by",
            "2027-04-04,a1,cleared,arm-pain,physician");

    assertThat(beside(plan))
        .anyMatch(t -> t.contains("within the days after the clearance of arm-pain"))
        .anyMatch(t -> t.contains("more than 9 times running at home"));
  }

  @Test
  void the_other_ways_of_a_practice_are_read() throws Exception {
    ObjectNode plan = plan();
    ObjectNode way = plan.withArray("/practices/0/ways").addObject();
    way.put("way", "rain").put("place", "cage").put("adults", 1);
    way.putObject("swings").put("a1", 9);
    way.putArray("stations").addObject().put("station", 1).put("adult", true).putArray("drills");

    FinishedPlan read = new FinishedPlanFile(SmallClub.findings()).read(plan).orElseThrow();

    FinishedPlan.Way rain = read.practices().get(0).ways().get(0);
    assertThat(rain.name()).isEqualTo("rain");
    assertThat(rain.place()).isEqualTo("cage");
    assertThat(rain.adults()).isEqualTo(1);
    assertThat(rain.swings()).containsExactly(Map.entry("a1", 9));
    assertThat(rain.stations()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"0, false", "1, true", "16, true", "17, false"})
  void a_plan_has_one_to_sixteen_weeks(int weeks, boolean may) {
    Findings findings = SmallClub.findings();
    boolean read = new FinishedPlanFile(findings).read(plan().put("weeks", weeks)).isPresent();

    assertThat(read).isEqualTo(may);
    assertThat(SmallClub.said(findings))
        .isEqualTo(
            may ? List.of() : List.of("weeks: " + weeks + " weeks; a plan has 1 to 16 weeks"));
  }

  @Test
  void weeks_that_are_no_number_are_told_once() {
    Findings findings = SmallClub.findings();

    assertThat(new FinishedPlanFile(findings).read(plan().put("weeks", "two"))).isEmpty();
    assertThat(SmallClub.said(findings)).hasSize(1);
    Findings below = SmallClub.findings();
    assertThat(new FinishedPlanFile(below).read(plan().put("weeks", -1))).isEmpty();
    assertThat(SmallClub.said(below)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"1899, false", "1900, true", "2200, true", "2201, false"})
  void a_date_lies_in_a_year_that_somebody_lives_in(int year, boolean may) {
    ObjectNode plan = plan().put("from", year + "-04-05");

    assertThat(new FinishedPlanFile(SmallClub.findings()).read(plan).isPresent()).isEqualTo(may);
  }

  @Test
  void prints_of_a_plan_that_is_no_json_are_not_looked_at() {
    Papers none =
        new Papers() {
          @Override
          public SortedSet<String> paths() {
            return new TreeSet<>();
          }

          @Override
          public Optional<byte[]> bytes(String path) {
            return Optional.empty();
          }
        };
    Audit audit = new Audit(CATALOGUE);

    assertThat(audit.papers("plan.json", "{", none, Optional.empty())).isEmpty();
    assertThat(texts(audit.papers("plan.json", plan().toString(), none, Optional.empty())))
        .anyMatch(t -> t.startsWith("files: the plan does not say what it printed"));
  }
}
