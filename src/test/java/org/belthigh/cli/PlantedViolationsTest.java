package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.Problem;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The auditor finds every kind of violation that is planted in a good plan, and nothing in that.
 */
class PlantedViolationsTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate APRIL = LocalDate.of(2027, 4, 5);
  private static final LocalDate BREAK = LocalDate.of(2027, 4, 19);
  private static final LocalDate TOURNAMENT = LocalDate.of(2027, 5, 10);

  /** One thing made wrong, and what must be said of it. */
  private record Planted(
      String what, LocalDate from, Consumer<ObjectNode> how, List<String> said, boolean alone) {
    @Override
    public String toString() {
      return what;
    }
  }

  private static Planted planted(String what, Consumer<ObjectNode> how, String... said) {
    return new Planted(what, APRIL, how, List.of(said), false);
  }

  /** One that can be seen without the club folder. */
  private static Planted plain(String what, Consumer<ObjectNode> how, String... said) {
    return new Planted(what, APRIL, how, List.of(said), true);
  }

  private static ClubRecord demo() throws Exception {
    return Intake.read(Path.of("demo-players"), CATALOGUE);
  }

  private static ObjectNode plan(ClubRecord record, LocalDate from) {
    PlanRequest request =
        new PlanRequest(from, 2, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return PlanJson.of(new Planner(CATALOGUE).plan(record, request), ClubOptions.words(CATALOGUE));
  }

  private static ObjectNode player(ObjectNode plan, String id) {
    for (JsonNode player : plan.get("players")) {
      if (player.get("player").asText().equals(id)) {
        return (ObjectNode) player;
      }
    }
    throw new AssertionError(id);
  }

  private static ObjectNode day(ObjectNode plan, String id, String date) {
    for (JsonNode day : player(plan, id).get("days")) {
      if (day.get("date").asText().equals(date)) {
        return (ObjectNode) day;
      }
    }
    throw new AssertionError(date);
  }

  /** Work of one drill on a day, in place of what stands there. */
  private static ObjectNode work(
      ObjectNode day, String place, String drill, String ball, String feed, int feet, int swings) {
    day.put("place", place).put("minutes", 8).put("swings", swings);
    return day.putArray("items")
        .addObject()
        .put("drill", drill)
        .put("skill", "drive")
        .put("step", "drive-1")
        .put("ball", ball)
        .put("feed", feed)
        .put("feet", feet)
        .put("reps", Math.max(12, swings))
        .put("swings", swings)
        .put("minutes", 8);
  }

  private static ObjectNode tee(ObjectNode day, String place, int swings) {
    String ball = place.equals("home") ? "plastic" : "baseball";
    return work(day, place, "tee-belt-high", ball, "tee", 0, swings);
  }

  private static void cards(ObjectNode day) {
    work(day, "home", "spot-cards", "none", "none", 0, 0);
  }

  private static void noHolds(ObjectNode plan, String id) {
    player(plan, id).putArray("holds");
  }

  /** The first hold on throwing that has an end, of whoever has it. */
  private static ObjectNode rest(ObjectNode plan) {
    for (JsonNode hold : plan.findParents("until")) {
      if (hold.hasNonNull("until") && hold.get("kind").asText().equals("throwing")) {
        return (ObjectNode) hold;
      }
    }
    throw new AssertionError("nobody owes rest");
  }

  private static void removeDay(ObjectNode plan, String id, String date) {
    Iterator<JsonNode> days = player(plan, id).get("days").elements();
    while (days.hasNext()) {
      if (days.next().get("date").asText().equals(date)) {
        days.remove();
      }
    }
  }

  private static ObjectNode station(ObjectNode plan, String date) {
    for (JsonNode practice : plan.get("practices")) {
      if (practice.get("date").asText().equals(date)) {
        return (ObjectNode) practice.get("stations").get(0);
      }
    }
    throw new AssertionError(date);
  }

  /** What is done in another way on that date. */
  private static ObjectNode way(ObjectNode plan, String date, String name) {
    for (JsonNode practice : plan.get("practices")) {
      for (JsonNode way : practice.get("ways")) {
        if (practice.get("date").asText().equals(date) && way.get("way").asText().equals(name)) {
          return (ObjectNode) way;
        }
      }
    }
    throw new AssertionError(date + " " + name);
  }

  static Stream<Planted> violations() {
    return Stream.of(
        plain(
            "too many swings in a day",
            p -> tee(day(p, "p06", "2027-04-06"), "field", 71),
            "p06 2027-04-06: 71 swings in a day; at age 9 at most 70 (ours, common practice)"),
        plain(
            "too many swings in seven days",
            p -> {
              tee(day(p, "p06", "2027-04-06"), "field", 67);
              tee(day(p, "p06", "2027-04-08"), "field", 67);
              tee(day(p, "p06", "2027-04-11"), "field", 67);
            },
            " swings; at age 9 at most 200"),
        plain(
            "too many days with swings",
            p -> {
              for (int d = 5; d < 9; d++) {
                tee(day(p, "p06", "2027-04-0" + d), "field", 1);
              }
            },
            "4 days with swings; at age 9 at most 3"),
        plain(
            "too many hitting days and too few free ones",
            p -> {
              for (int d = 12; d < 18; d++) {
                cards(day(p, "p06", "2027-04-" + d));
              }
            },
            "6 hitting days; at age 9 at most 5 (NATA 2019)",
            "1 free days; at least 2 without any organised sport (NATA 2019)"),
        planted(
            "a free day lost to events, other sport and home work together",
            p -> {
              for (String d : List.of("05", "07", "09", "11")) {
                cards(day(p, "p02", "2027-04-" + d));
              }
            },
            "free days; at least 2 without any organised sport"),
        planted(
            "more hours than years of age",
            p -> tee(day(p, "p06", "2027-04-05"), "home", 1).put("minutes", 600),
            "hours of organised sport; at age 9 at most 9.0 (NATA 2019)"),
        planted(
            "a week that rises too far",
            p -> {
              tee(day(p, "p06", "2027-04-06"), "field", 70);
              tee(day(p, "p06", "2027-04-08"), "field", 70);
            },
            " swings; a week rises to "),
        plain(
            "work under a hold on everything, long after it began",
            p -> cards(day(p, "p10", "2027-04-18")),
            "p10 2027-04-18: work that the hold on everything forbids",
            "until ended"),
        plain(
            "swings under a hold on swinging",
            p -> tee(day(p, "p23", "2027-04-07"), "cage", 3),
            "p23 2027-04-07: work that the hold on swinging forbids"),
        planted(
            "a head injury without its hold",
            p -> noHolds(p, "p10"),
            "p10 2027-04-05: no open hold on everything for head-injury"),
        planted(
            "a sore arm without its holds",
            p -> noHolds(p, "p23"),
            "p23 2027-04-05: no open hold on throwing for arm-pain",
            "p23 2027-04-05: no open hold on swinging for arm-pain"),
        planted(
            "a hold that ends by its date where a person must end it",
            p -> player(p, "p10").get("holds").forEach(h -> end(h, "2027-04-10")),
            "no open hold on everything for head-injury"),
        planted(
            "rest of a pitcher a day short",
            p -> end(rest(p), LocalDate.parse(rest(p).get("until").asText()).minusDays(1) + ""),
            "no hold on throwing after",
            "(pitch-smart-2018)"),
        plain(
            "full-effort throws",
            p -> day(p, "p06", "2027-04-06").put("throws", 5),
            "p06 2027-04-06: 5 full-effort throws are planned"),
        plain(
            "a hold of no known kind",
            p -> ((ObjectNode) player(p, "p10").get("holds").get(0)).put("kind", "nothing"),
            "a hold on 'nothing'"),
        planted(
            "work on a game day",
            p -> tee(day(p, "p06", "2027-04-10"), "field", 1),
            "p06 2027-04-10: hitting work on the day of a game"),
        new Planted(
            "work in a break",
            BREAK,
            p -> cards(day(p, "p06", "2027-04-20")),
            List.of("p06 2027-04-20: hitting work on the day of a break"),
            false),
        new Planted(
            "home work on a tournament day",
            TOURNAMENT,
            p -> cards(day(p, "p17", "2027-05-15")),
            List.of("p17 2027-05-15: hitting work on the day of a tournament"),
            false),
        new Planted(
            "home work on the day before a tournament",
            TOURNAMENT,
            p -> cards(day(p, "p17", "2027-05-13")),
            List.of("p17 2027-05-13: home work on the day before a tournament"),
            false),
        planted(
            "home work on a practice day",
            p -> cards(day(p, "p06", "2027-04-06")),
            "p06 2027-04-06: home work on the day of an event"),
        planted(
            "a practice that is not in the calendar",
            p -> tee(day(p, "p06", "2027-04-07"), "field", 1),
            "p06 2027-04-07: a practice that the calendar does not have"),
        planted(
            "more than the hitting minutes",
            p -> tee(day(p, "p06", "2027-04-06").put("minutes", 41), "field", 1).put("minutes", 41),
            "p06 2027-04-06: 41 minutes of hitting work; the practice has 40 hitting minutes"),
        plain(
            "a hard ball at home",
            p -> tee(day(p, "p06", "2027-04-07"), "home", 1).put("ball", "baseball"),
            "p06 2027-04-07, tee-belt-high: a baseball at home"),
        plain(
            "a drill where it may not be done",
            p ->
                work(
                    day(p, "p06", "2027-04-07"), "home", "flip-countdown", "plastic", "flip", 8, 5),
            "flip-countdown: done at home; the curriculum allows it elsewhere only"),
        plain(
            "another ball than the drill's",
            p -> tee(day(p, "p06", "2027-04-06"), "field", 1).put("ball", "tennis"),
            "a tennis; the ball of this drill there is baseball"),
        plain(
            "another feed than the drill's",
            p -> tee(day(p, "p06", "2027-04-06"), "field", 1).put("feed", "overhand"),
            "fed by overhand; this drill is fed by tee"),
        planted(
            "an unscreened toss from too near at 13",
            p ->
                work(
                    day(p, "p17", "2027-04-06"),
                    "home",
                    "front-toss-home",
                    "plastic",
                    "front-toss",
                    18,
                    5),
            "tossed from 18 ft without a screen; at 13 and older from 20 ft or more",
            "tossed from 18 ft; at age 1"),
        plain(
            "swings in a drill without a bat",
            p -> work(day(p, "p06", "2027-04-07"), "home", "spot-cards", "none", "none", 0, 3),
            "3 swings; this drill has no bat"),
        plain(
            "a drill that nobody knows",
            p -> work(day(p, "p06", "2027-04-07"), "home", "made-up", "none", "none", 0, 0),
            "made-up: the curriculum has no such drill"),
        plain(
            "too long at home",
            p -> tee(day(p, "p06", "2027-04-07").put("minutes", 11), "home", 1).put("minutes", 11),
            "11 minutes at home; at age 9 at most 10"),
        plain(
            "too many tosses at home",
            p -> tee(day(p, "p06", "2027-04-07"), "home", 19),
            "19 tosses at home; at age 9 at most 18"),
        plain(
            "bats at a station without an adult",
            p ->
                station(p, "2027-04-06")
                    .put("adult", false)
                    .putArray("drills")
                    .add("tee-belt-high"),
            "u10 2027-04-06, station 1: bats without an adult"),
        plain(
            "with one adult, bats at a station without one",
            p ->
                ((ObjectNode) way(p, "2027-04-06", "one-adult").get("stations").get(1))
                    .putArray("drills")
                    .add("tee-belt-high"),
            "u10 2027-04-06, one-adult, station 2: bats without an adult"),
        plain(
            "with one adult, two stations with bats",
            p ->
                ((ArrayNode) way(p, "2027-04-06", "one-adult").get("stations"))
                    .addObject()
                    .put("station", 9)
                    .put("adult", true)
                    .putArray("drills")
                    .add("tee-belt-high"),
            "u10 2027-04-06, one-adult: 2 stations with bats and 1 adults"),
        plain(
            "in rain, more swings than planned",
            p -> ((ObjectNode) way(p, "2027-04-06", "rain").get("swings")).put("p06", 71),
            "u10 2027-04-06, rain, p06: 71 swings"),
        plain(
            "in rain, a drill that is not for the cage",
            p ->
                ((ArrayNode) way(p, "2027-04-06", "rain").get("stations").get(0).get("drills"))
                    .add("catch-the-strikes"),
            "u10 2027-04-06, rain, catch-the-strikes: done at cage"),
        planted(
            "more stations with bats than adults",
            p -> {
              for (JsonNode practice : p.get("practices")) {
                if (practice.get("date").asText().equals("2027-04-08")) {
                  for (int s = 5; s < 7; s++) {
                    ((ArrayNode) practice.get("stations"))
                        .addObject()
                        .put("station", s)
                        .put("adult", true)
                        .putArray("drills")
                        .add("tee-belt-high");
                  }
                }
              }
            },
            "stations with bats and 1 adults"),
        plain(
            "more swings than tosses",
            p -> tee(day(p, "p06", "2027-04-06"), "field", 9).put("reps", 8),
            "tee-belt-high has 9 swings of 8 tosses"),
        plain(
            "a sum that does not add up",
            p -> day(p, "p06", "2027-04-06").put("swings", 1),
            "p06 2027-04-06: swings is 1, its items add up to"),
        plain(
            "minutes that do not add up",
            p -> day(p, "p06", "2027-04-06").put("minutes", 1),
            "p06 2027-04-06: minutes is 1, its items add up to"),
        plain(
            "a date twice",
            p -> {
              ObjectNode day = day(p, "p06", "2027-04-07").deepCopy();
              ((ArrayNode) player(p, "p06").get("days")).add(day);
            },
            "p06 2027-04-07: the date stands twice"),
        plain(
            "a date missing",
            p -> removeDay(p, "p06", "2027-04-07"),
            "p06: no entry for 2027-04-07"),
        plain(
            "a date that is not planned",
            p -> day(p, "p06", "2027-04-18").put("date", "2027-05-18"),
            "p06 2027-05-18: the date is not planned"),
        plain(
            "work on a day of rest",
            p -> tee(day(p, "p06", "2027-04-07"), "rest", 1),
            "p06 2027-04-07: work on a day of rest"),
        plain(
            "a decision missing",
            p -> ((ArrayNode) player(p, "p06").get("decisions")).remove(0),
            "each player has one for see, choose, drive and send"),
        plain(
            "a decision twice",
            p -> {
              ArrayNode all = (ArrayNode) player(p, "p06").get("decisions");
              all.add(all.get(0).deepCopy());
            },
            "p06: a second decision for see"),
        plain(
            "a number below zero",
            p -> day(p, "p06", "2027-04-06").put("swings", -5),
            "swings is a whole number, 0 or more"),
        plain(
            "a number missing",
            p -> day(p, "p06", "2027-04-06").remove("throws"),
            "throws: the number is missing"),
        plain("a day that is none", p -> p.put("from", "2027-02-30"), "'2027-02-30' is not a date"),
        plain(
            "a key missing", p -> p.remove("players"), "a plan has club, from, weeks and players"),
        planted(
            "an age that the day of birth denies",
            p -> player(p, "p06").put("age", 15),
            "the age is 15; by the day of birth it is 9"),
        planted(
            "months of the sport beyond the guidance, and nothing said",
            p -> ((ObjectNode) player(p, "p19").get("sport_months")).putNull("remark"),
            "p19 2026-05 to 2027-04: 9 months of the sport are known",
            "at most 8 months in twelve",
            "(NATA 2019)"),
        planted(
            "tossed at home from farther than a yard has room for",
            p ->
                work(
                    day(p, "p06", "2027-04-05"),
                    "home",
                    "zone-call",
                    "plastic",
                    "front-toss",
                    26,
                    0),
            "tossed from 26 ft; at age 9 from 15"),
        planted(
            "tossed at home from nearer than the drill has it",
            p ->
                work(day(p, "p06", "2027-04-05"), "home", "zone-call", "foam", "front-toss", 14, 0),
            "tossed from 14 ft; at age 9 from 15"),
        planted(
            "foam outside home, where the drill has baseballs",
            p ->
                work(
                    day(p, "p06", "2027-04-06"), "field", "zone-call", "foam", "front-toss", 15, 0),
            "a foam; the ball of this drill there is"),
        planted(
            "a child left out",
            p -> ((ArrayNode) p.get("players")).remove(5),
            "p06: the child of u10 is left out"),
        planted(
            "a child twice",
            p -> ((ArrayNode) p.get("players")).add(player(p, "p06").deepCopy()),
            "p06: the child stands twice"),
        planted(
            "keep-going turned into move-up",
            p -> ((ObjectNode) player(p, "p06").get("decisions").get(0)).put("decision", "move-up"),
            "p06, see: decision is move-up"),
        planted(
            "a reason that is empty",
            p -> ((ObjectNode) player(p, "p06").get("decisions").get(0)).put("because", ""),
            "p06, see: because says ''"),
        planted(
            "a hold without its source",
            p -> ((ObjectNode) player(p, "p10").get("holds").get(0)).put("source", ""),
            "p10, hold on everything: the source is ''"),
        planted(
            "a practice missing",
            p -> ((ArrayNode) p.get("practices")).remove(0),
            "u10 2027-04-06: the practice is missing"),
        planted(
            "grown-ups raised above the calendar",
            p -> ((ObjectNode) p.get("practices").get(0)).put("adults", 9),
            "u10 2027-04-06: adults is 9"),
        planted("another club", p -> p.put("club", "Nobody"), "club: 'Nobody' stands there"),
        planted(
            "what was set aside emptied",
            p -> p.putArray("set_aside"),
            "set_aside: nothing is said"),
        planted(
            "pitches for who rests",
            p ->
                ((ObjectNode) player(p, "p03").get("arms").get(0))
                    .put("answer", "may-pitch")
                    .put("pitches_left", 75),
            "p03 2027-04-05, arm: the child may pitch"),
        planted(
            "a player of no such club",
            p -> player(p, "p06").put("player", "nobody"),
            "nobody: the roster has no such player in that group"));
  }

  private static void end(JsonNode hold, String until) {
    ((ObjectNode) hold).put("until", until);
  }

  private static String look(ObjectNode plan, Optional<ClubRecord> record) {
    Audit audit = new Audit(CATALOGUE);
    List<Problem> found =
        record
            .map(r -> audit.beside("plan.json", plan.toString(), r))
            .orElseGet(() -> audit.alone("plan.json", plan.toString()));
    return String.join("\n", found.stream().map(Problem::text).toList());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("violations")
  void is_found(Planted planted) throws Exception {
    ClubRecord record = demo();
    ObjectNode plan = plan(record, planted.from());

    planted.how().accept(plan);

    assertThat(look(plan, Optional.of(record))).contains(planted.said());
    if (planted.alone()) {
      // a birthday may have come, as far as the plan alone can tell
      assertThat(look(plan, Optional.empty()).replace("at age 10", "at age 9"))
          .contains(planted.said());
    }
  }

  /** Foam without a bat in a hallway: common practice, no source. */
  @Test
  void a_bat_or_a_hard_shell_in_a_hallway_is_found(@TempDir Path folder) throws Exception {
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
        "id,first_name,born,bats,group,home_space\na1,Ada,2017-06-05,R,u10,hallway\n");
    ClubRecord record = Intake.read(folder, CATALOGUE);
    ObjectNode plan = plan(record, APRIL);

    assertThat(look(plan, Optional.of(record))).isEmpty();
    List<JsonNode> home = new ArrayList<>();
    player(plan, "a1").get("days").forEach(d -> home.add(d));
    home.removeIf(d -> !d.get("place").asText().equals("home"));
    assertThat(home)
        .isNotEmpty()
        .allSatisfy(
            d -> {
              assertThat(d.get("swings").asInt()).isZero();
              assertThat(d.at("/items/0/ball").asText()).isIn("foam", "none");
            });

    tee((ObjectNode) home.get(0), "home", 10);

    assertThat(look(plan, Optional.of(record)))
        .contains("10 swings in a hallway; indoors there is no bat (ours, common practice)")
        .contains("a plastic ball in a hallway; indoors it is foam or none");
  }

  @Test
  void a_good_plan_has_no_finding() throws Exception {
    ClubRecord record = demo();
    for (LocalDate from : List.of(APRIL, BREAK, TOURNAMENT)) {
      assertThat(look(plan(record, from), Optional.of(record))).isEmpty();
      assertThat(look(plan(record, from), Optional.empty())).isEmpty();
    }
  }

  @Test
  void what_is_no_json_is_said_with_its_line() {
    assertThat(new Audit(CATALOGUE).alone("plan.json", "{\n\"club\": }"))
        .singleElement()
        .satisfies(p -> assertThat(p.text()).startsWith("plan.json line 2: this is not JSON"));
  }
}
