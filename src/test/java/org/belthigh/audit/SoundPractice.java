package org.belthigh.audit;

import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.LIMITS;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Place;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * A practice of one station and one child, sound at first, to be made wrong in one thing a test.
 */
abstract class SoundPractice {
  private static final String SOUND =
      """
      {"asked": {"groups": [], "players": []},
       "players": [{"player": "a1", "days": [
         {"date": "2027-04-06", "place": "field", "items": [
           {"drill": "tee-belt-high", "minutes": 16}]}]}],
       "practices": [{"group": "u10", "date": "2027-04-06", "kind": "practice", "place": "field",
         "where": "", "start": null, "minutes": 90, "hitting_minutes": 45, "adults": 1,
         "stations": [{"station": 1, "adult": true, "adults": 1, "screen": false,
           "drills": ["tee-belt-high"], "feed": "tee", "ball": "baseball", "feet": 0,
           "uses": [{"drill": "tee-belt-high", "feed": "tee", "ball": "baseball", "feet": 0}],
           "gear": []}],
         "rotations": [
           {"minute": 0, "minutes": 8, "posts": [
             {"station": 1, "players": ["a1"], "drill": "tee-belt-high", "job": "hits"}]},
           {"minute": 8, "minutes": 8, "posts": [
             {"station": 1, "players": ["a1"], "drill": "tee-belt-high", "job": "hits"}]}],
         "gear": [], "no_throwing": [], "no_swinging": [], "toss_lists": false,
         "logs": [{"drill": "tee-belt-high", "hitters": ["a1"]}], "ways": []}]}
      """;

  @TempDir private Path folder;
  SmallClub club;
  ObjectNode plan;
  FinishedPlan.Person ada;

  @BeforeEach
  void sound() throws Exception {
    club = new SmallClub(folder).calendar("2027-04-06,u10,practice,90,45,1");
    plan = (ObjectNode) new ObjectMapper().readTree(SOUND);
    ada = SmallClub.ada(SmallClub.day(6, "field", 16, SmallClub.tee("baseball", 8, 16)));
    needed(practice().withArray("gear"));
    needed(station().withArray("gear"));
  }

  private static void needed(ArrayNode gear) {
    DrillGear.of(CATALOGUE.curricula().get("belthigh-2027").drill("tee-belt-high"), Place.FIELD)
        .forEach((what, count) -> gear.addObject().put("what", what).put("count", count));
  }

  final ObjectNode practice() {
    return (ObjectNode) plan.path("practices").get(0);
  }

  final ObjectNode station() {
    return (ObjectNode) practice().path("stations").get(0);
  }

  final ObjectNode rotation(int number) {
    return (ObjectNode) practice().path("rotations").get(number);
  }

  final ObjectNode post(int rotation) {
    return (ObjectNode) rotation(rotation).path("posts").get(0);
  }

  final List<String> said(Consumer<Given> checks) throws Exception {
    ClubRecord record = club.record();
    Given given =
        new Given(
            SmallClub.plan(ada), plan, record, record, CATALOGUE, LIMITS, SmallClub.findings());
    checks.accept(given);
    return SmallClub.said(given.findings());
  }
}
