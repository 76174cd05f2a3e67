package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Stations of a practice. */
final class PlantedStations extends KindList {
  PlantedStations() {
    Places station = of(KindList::practices, "stations");
    kind("stations-many", "seven stations", "station", KindList::practices, s -> s.filled("stations"), s -> seven(s.list("stations")));
    kind("station-twice", "a station stands there twice", "station", station, KindList::any, s -> s.twice("stations"));
    kind("station-missing", "a station is missing", "station|drill", station, KindList::any, s -> s.remove("stations"));
    kind("station-screen", "a screen is taken from a station", "screen", station, s -> s.node().path("screen").asBoolean(), s -> s.node().put("screen", false));
    kind("station-adult", "the adult is taken from a station", "adult", station, s -> s.node().path("adult").asBoolean(), s -> s.node().put("adult", false).put("adults", 0));
    kind("station-drill", "a station has a drill that nobody does", "drill", station, s -> s.node().path("drills").isArray(), s -> s.list("drills").add("no-such-drill"));
    kind("station-feet", "a station's distance is four feet", "feet|ft", station, s -> s.number("feet") > 8, s -> s.node().put("feet", 4));
    kind("station-ball", "a station's ball is another", "ball", station, s -> s.node().has("ball") && !s.is("ball", "baseball"), s -> s.node().put("ball", "baseball"));
    // MORE
  }

  private static void seven(ArrayNode stations) {
    while (stations.size() < 7) {
      ObjectNode next = stations.get(0).deepCopy();
      stations.add(next.put("station", stations.size() + 1));
    }
  }
}
