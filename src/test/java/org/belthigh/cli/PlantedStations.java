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
        "station",
        KindList::practices,
        s -> s.filled("stations"),
        s -> seven(s.list("stations")));
    kind(
        "station-twice",
        "a station stands there twice",
        "station",
        station,
        KindList::any,
        s -> s.twice("stations"));
    kind(
        "station-missing",
        "a station is missing",
        "station|drill",
        station,
        KindList::any,
        s -> s.remove("stations"));
    kind(
        "station-screen",
        "a screen is taken from a station",
        "screen",
        station,
        s -> s.node().path("screen").asBoolean(),
        s -> s.node().put("screen", false));
    kind(
        "station-adult",
        "the adult is taken from a station",
        "adult",
        station,
        s -> s.node().path("adult").asBoolean(),
        s -> s.node().put("adult", false).put("adults", 0));
    kind(
        "station-drill",
        "a station has a drill that nobody does",
        "drill",
        station,
        s -> s.node().path("drills").isArray(),
        s -> s.list("drills").add("no-such-drill"));
    kind(
        "station-feet",
        "a station's distance is four feet",
        "feet|ft",
        station,
        s -> s.number("feet") > 8,
        s -> s.node().put("feet", 4));
    kind(
        "station-ball",
        "a station's ball is another",
        "ball",
        station,
        s -> s.node().has("ball") && !s.is("ball", "baseball"),
        s -> s.node().put("ball", "baseball"));

    kind(
        "station-number",
        "two stations have one number",
        "station",
        station,
        s -> s.siblings("stations").size() > 1 && s.number("station") > 1,
        s -> s.node().put("station", 1));
    kind(
        "station-screen-none",
        "a station draws a screen that it does not need",
        "screen",
        station,
        s -> !s.node().path("screen").asBoolean(),
        s -> s.node().put("screen", true));
    kind(
        "station-gear",
        "a station's gear is emptied",
        "gear|brought|asked|listed|needs",
        station,
        s -> s.filled("gear"),
        s -> s.node().putArray("gear"));
    kind(
        "station-helmet",
        "the helmets are taken from a station",
        "helmet|gear",
        station,
        s -> s.node().path("gear").toString().contains("helmet"),
        s -> without(s.list("gear"), "helmet"));
    kind(
        "station-screen-gear",
        "the screen is taken from a station's gear",
        "screen|gear",
        station,
        s -> s.node().path("gear").toString().contains("screen"),
        s -> without(s.list("gear"), "screen"));
    kind(
        "station-drills-none",
        "a station with a bat has no drill any more",
        "drill|station",
        station,
        s -> s.filled("drills"),
        s -> s.node().putArray("drills"));
    kind(
        "station-idle",
        "a station lists a known drill that nobody does",
        "drill",
        station,
        s -> s.filled("drills") && !s.siblings("stations").toString().contains("flip-countdown"),
        PlantedStations::idle);
    kind(
        "station-feed",
        "a station's feed is another",
        "feed|fed",
        station,
        s -> s.node().hasNonNull("feed"),
        s -> s.node().put("feed", s.is("feed", "live") ? "tee" : "live"));
    Places use = of(station, "uses");
    kind(
        "use-ball",
        "a use has another ball",
        "ball|baseball",
        use,
        s -> !s.is("ball", "baseball"),
        s -> s.node().put("ball", "baseball"));
    kind(
        "use-feet",
        "a use is tossed from nine feet less",
        "feet|ft",
        use,
        s -> s.number("feet") > 12,
        s -> s.more("feet", -9));
    kind(
        "use-missing", "a use is left out", "use|drill", use, KindList::any, s -> s.remove("uses"));
    Places way = of(KindList::practices, "ways");
    kind(
        "way-swings",
        "more swings in rain than planned",
        "swing",
        way,
        s -> s.filled("swings"),
        PlantedStations::raise);
    kind(
        "way-adults",
        "another way has more adults than the practice",
        "adult",
        way,
        KindList::any,
        s -> s.more("adults", 5));
    kind(
        "way-place",
        "in rain the field stays",
        "place|field|cage",
        way,
        s -> s.is("way", "rain") && s.is("place", "cage"),
        s -> s.node().put("place", "field"));
    Places wet = of(way, "stations");
    kind(
        "way-adult",
        "bats at a station of another way without an adult",
        "adult",
        wet,
        s -> s.node().path("adult").asBoolean() && s.filled("drills"),
        s -> s.node().put("adult", false).put("adults", 0));
    kind(
        "way-screen",
        "a screen is taken from a station of another way",
        "screen",
        wet,
        s -> s.node().path("screen").asBoolean(),
        s -> s.node().put("screen", false));
    kind(
        "way-drill",
        "another way has a drill that is none",
        "drill",
        wet,
        s -> s.filled("drills"),
        s -> s.list("drills").add("no-such-drill"));
    kind(
        "way-unknown",
        "a way that is none",
        "way",
        way,
        KindList::any,
        s -> s.node().put("way", "snow"));
    kind(
        "station-many-seven",
        "seven stations where a place has room for fewer, in another way",
        "station",
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
