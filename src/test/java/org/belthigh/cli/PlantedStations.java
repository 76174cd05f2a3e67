package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Stations of a practice. */
final class PlantedStations extends KindList {
  PlantedStations() {
    Places station = of(KindList::practices, "stations");
    kind(
        "stations-many",
        "seven stations",
        "drills \\[|squads are at the stations|stations for",
        KindList::practices,
        s -> s.filled("stations"),
        s -> seven(s.list("stations")));
    kind(
        "station-twice",
        "a station stands there twice",
        "station \\d+ stands twice",
        station,
        KindList::any,
        s -> s.twice("stations"));
    kind(
        "station-missing",
        "a station is missing",
        "squads are at the stations",
        station,
        KindList::any,
        s -> s.remove("stations"));
    kind(
        "station-screen",
        "a screen is taken from a station",
        "no screen is set up",
        station,
        s -> s.node().path("screen").asBoolean(),
        s -> s.node().put("screen", false));
    kind(
        "station-adult",
        "the adult is taken from a station",
        "without an adult|its other ways are",
        station,
        s -> s.node().path("adult").asBoolean(),
        s -> s.node().put("adult", false).put("adults", 0));
    kind(
        "station-drill",
        "a station has a drill that nobody does",
        "drills .*no-such-drill",
        station,
        s -> s.node().path("drills").isArray(),
        s -> s.list("drills").add("no-such-drill"));
    kind(
        "station-feet",
        "a station's distance is four feet",
        "feet 4; its first drill has",
        station,
        s -> s.number("feet") > 8,
        s -> s.node().put("feet", 4));
    kind(
        "station-ball",
        "a station's ball is another",
        "ball baseball; its first drill has",
        station,
        s -> s.node().has("ball") && !s.is("ball", "baseball"),
        s -> s.node().put("ball", "baseball"));

    kind(
        "station-number",
        "two stations have one number",
        "station 1 stands twice",
        station,
        s -> s.siblings("stations").size() > 1 && s.number("station") > 1,
        s -> s.node().put("station", 1));
    kind(
        "station-screen-none",
        "a station draws a screen that it does not need",
        "a screen is set up; no drill needs it",
        station,
        s -> !s.node().path("screen").asBoolean(),
        s -> s.node().put("screen", true));
    kind(
        "station-gear",
        "a station's gear is emptied",
        "gear \\{\\}; its squads",
        station,
        s -> s.filled("gear"),
        s -> s.node().putArray("gear"));
    kind(
        "station-helmet",
        "the helmets are taken from a station",
        "gear \\{[^}]*\\}; its squads and drills ask for .*helmet",
        station,
        s -> s.node().path("gear").toString().contains("helmet"),
        s -> without(s.list("gear"), "helmet"));
    kind(
        "station-screen-gear",
        "the screen is taken from a station's gear",
        "gear \\{[^}]*\\}; its squads and drills ask for .*screen",
        station,
        s -> s.node().path("gear").toString().contains("screen"),
        s -> without(s.list("gear"), "screen"));
    kind(
        "station-drills-none",
        "a station with a bat has no drill any more",
        "drills \\[\\]; its squads",
        station,
        s -> s.filled("drills"),
        s -> s.node().putArray("drills"));
    kind(
        "station-idle",
        "a station lists a known drill that nobody does",
        "drills \\[[^]]*(flip-countdown|tee-belt-high)[^]]*\\]; its squads",
        station,
        s -> s.filled("drills") && !s.siblings("stations").toString().contains("flip-countdown"),
        PlantedStations::idle);
    kind(
        "station-feed",
        "a station's feed is another",
        "feed (live|tee); its first drill has",
        station,
        s -> s.node().hasNonNull("feed"),
        s -> s.node().put("feed", s.is("feed", "live") ? "tee" : "live"));
    Places use = of(station, "uses");
    kind(
        "use-ball",
        "a use has another ball",
        "the ball is baseball; the ball of this drill|its (first )?drill has .baseball",
        use,
        s -> !s.is("ball", "baseball"),
        s -> s.node().put("ball", "baseball"));
    kind(
        "use-feet",
        "a use is tossed from nine feet less",
        "tossed from \\d+ ft; this drill is tossed from",
        use,
        s -> s.number("feet") > 12,
        s -> s.more("feet", -9));
    kind(
        "use-missing",
        "a use is left out",
        "drills in use",
        use,
        KindList::any,
        s -> s.remove("uses"));
    Places way = of(KindList::practices, "ways");
    kind(
        "way-swings",
        "more swings in rain than planned",
        "71 swings",
        way,
        s -> s.filled("swings"),
        PlantedStations::raise);
    kind(
        "way-adults",
        "another way has more adults than the practice",
        "adults is \\d+; by the calendar",
        way,
        KindList::any,
        s -> s.more("adults", 5));
    kind(
        "way-place",
        "in rain the field stays",
        "place is .field.; by the calendar",
        way,
        s -> s.is("way", "rain") && s.is("place", "cage"),
        s -> s.node().put("place", "field"));
    Places wet = of(way, "stations");
    kind(
        "way-adult",
        "bats at a station of another way without an adult",
        "without an adult",
        wet,
        s -> s.node().path("adult").asBoolean() && s.filled("drills"),
        s -> s.node().put("adult", false).put("adults", 0));
    kind(
        "way-screen",
        "a screen is taken from a station of another way",
        "no screen is set up",
        wet,
        s -> s.node().path("screen").asBoolean(),
        s -> s.node().put("screen", false));
    kind(
        "way-drill",
        "another way has a drill that is none",
        "the drill no-such-drill",
        wet,
        s -> s.filled("drills"),
        s -> s.list("drills").add("no-such-drill"));
    kind(
        "way-unknown",
        "a way that is none",
        "its other ways are .*snow",
        way,
        KindList::any,
        s -> s.node().put("way", "snow"));
    kind(
        "station-many-seven",
        "seven stations where a place has room for fewer, in another way",
        "stations with bats and",
        way,
        s -> s.filled("stations"),
        s -> seven(s.list("stations")));
  }

  private static void seven(ArrayNode stations) {
    while (stations.size() < 7) {
      ObjectNode next = stations.get(0).deepCopy();
      stations.add(next.put("station", stations.size() + 1));
    }
  }

  private static void without(ArrayNode gear, String what) {
    for (int i = gear.size() - 1; i >= 0; i--) {
      if (gear.get(i).path("what").asText().equals(what)) {
        gear.remove(i);
      }
    }
  }

  private static void idle(Spot station) {
    String drills = station.siblings("stations").toString();
    String idle = drills.contains("tee-belt-high") ? "flip-countdown" : "tee-belt-high";
    station.list("drills").add(idle);
  }

  private static void raise(Spot way) {
    ObjectNode swings = (ObjectNode) way.node().get("swings");
    swings.put(swings.fieldNames().next(), 71);
  }
}
