package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;

/**
 * Each station of a practice has the drills that its squads do, each with its feed, ball and
 * distance; screen, gear and log sheets are those that the drills need, no less and no more.
 */
final class StationCheck {
  private static final Set<Feed> BY_HAND = Set.of(Feed.FLIP, Feed.FRONT_TOSS, Feed.OVERHAND);

  private final Given given;
  private final JsonNode practice;
  private final Place place;
  private final String where;

  /**
   * @param place where the practice is by the calendar
   */
  StationCheck(Given given, JsonNode practice, Place place) {
    this.given = given;
    this.practice = practice;
    this.place = place;
    this.where = practice.path("group").asText() + " " + practice.path("date").asText();
  }

  void check() {
    for (JsonNode station : practice.path("stations")) {
      String at = at(where, station);
      same(at, "drills", posted(station), new TreeSet<>(Given.words(station, "drills")));
      station(at, station, place);
    }
    for (JsonNode way : practice.path("ways")) {
      String other = where + ", " + way.path("way").asText();
      Place there = way.path("place").asText().equals(Place.CAGE.id()) ? Place.CAGE : Place.FIELD;
      for (JsonNode station : way.path("stations")) {
        station(at(other, station), station, there);
      }
    }
    gear();
    logs();
  }

  private static String at(String where, JsonNode station) {
    return where + ", station " + station.path("station").asText();
  }

  private Optional<Drill> drill(String id) {
    return Optional.ofNullable(given.curriculum().drills().get(id));
  }

  private List<Drill> drills(JsonNode station) {
    return Given.words(station, "drills").stream().flatMap(d -> drill(d).stream()).toList();
  }

  /** The drills that squads do at that station, by the rotations. */
  private Set<String> posted(JsonNode station) {
    Set<String> posted = new TreeSet<>();
    for (JsonNode rotation : practice.path("rotations")) {
      for (JsonNode post : rotation.path("posts")) {
        if (post.path("station").equals(station.path("station"))
            && post.path("drill").isTextual()) {
          posted.add(post.path("drill").asText());
        }
      }
    }
    return posted;
  }

  private void same(String at, String what, Object wanted, Object found) {
    if (!wanted.equals(found)) {
      given.fault(at, what + " " + found, "its squads and drills ask for " + wanted);
    }
  }

  private void station(String at, JsonNode station, Place there) {
    boolean adult = station.path("adult").asBoolean();
    same(at, "adults", adult ? 1 : 0, station.path("adults").asInt(-1));
    for (String id : Given.words(station, "drills")) {
      if (drill(id).isEmpty()) {
        given.fault(at, "the drill " + id, "the curriculum has no such drill");
      }
    }
    boolean screen =
        drills(station).stream()
            .anyMatch(d -> DrillGear.of(d, there).containsKey(DrillGear.SCREEN));
    if (screen != station.path("screen").asBoolean()) {
      String found = screen ? "no screen is set up" : "a screen is set up";
      given.broken(at, found, screen ? "a drill there is done behind one" : "no drill needs it");
    }
    Map<String, Integer> needed = new TreeMap<>();
    drills(station).forEach(d -> DrillGear.most(needed, DrillGear.of(d, place)));
    if (drills(station).stream().allMatch(d -> d.at(place))) {
      same(at, "gear", needed, DrillGear.listed(station.path("gear")));
    }
    uses(at, station);
  }

  /** How each drill is done, and the first of them once more for the station. */
  private void uses(String at, JsonNode station) {
    Set<String> used = new TreeSet<>();
    for (JsonNode use : station.path("uses")) {
      used.add(use.path("drill").asText());
      drill(use.path("drill").asText()).ifPresent(d -> use(at + ", " + d.id(), use, d));
    }
    same(at, "drills in use", new TreeSet<>(Given.words(station, "drills")), used);
    JsonNode first = station.path("uses").path(0);
    for (String key : List.of("feed", "ball", "feet")) {
      if (!first.path(key).asText("").equals(said(station, key))) {
        given.fault(
            at, key + " " + station.path(key).asText(), "its first drill has " + first.path(key));
      }
    }
  }

  /** What a station says of its first drill; nothing where it has none. */
  private static String said(JsonNode station, String key) {
    boolean none =
        station.path("uses").isEmpty()
            && (station.path(key).isNull() || station.path(key).asText().equals("0"));
    return none || station.path(key).isNull() ? "" : station.path(key).asText();
  }

  private void use(String at, JsonNode use, Drill drill) {
    if (!use.path("feed").asText().equals(drill.feed().id())) {
      given.fault(
          at, "fed by " + use.path("feed").asText(), "this drill is fed by " + drill.feed().id());
    }
    Ball ball = drill.balls().get(place);
    boolean swapped =
        ball == Ball.BASEBALL && softball() && use.path("ball").asText().equals(Ball.SOFTBALL.id());
    if (ball != null && !swapped && !use.path("ball").asText().equals(ball.id())) {
      given.broken(
          at, "the ball is " + use.path("ball").asText(), "the ball of this drill is " + ball.id());
    }
    Set<Integer> feet = feet(drill);
    if (!feet.contains(use.path("feet").asInt(-1))) {
      given.broken(
          at,
          "tossed from " + use.path("feet").asText() + " ft",
          "this drill is tossed from " + feet + " ft at the age of the group");
    }
  }

  private boolean softball() {
    return given.record().club().groups().stream()
        .anyMatch(g -> g.id().equals(practice.path("group").asText()) && g.softball());
  }

  /**
   * The children of the group and their ages: those of the plan, or where some alone were asked
   * for, those of the roster, since the sheets of a practice have the whole group.
   */
  private Map<String, Integer> children() {
    String group = practice.path("group").asText();
    Map<String, Integer> ages = new TreeMap<>();
    if (given.json().path("asked").path("players").isEmpty()) {
      given.plan().players().stream()
          .filter(p -> p.group().equals(group))
          .forEach(p -> ages.put(p.id(), p.age()));
    } else {
      given.roster().values().stream()
          .filter(p -> p.group().equals(group))
          .forEach(p -> ages.put(p.id(), p.ageOn(given.plan().from())));
    }
    return ages;
  }

  /** A sheet has the distance of the oldest; where some are left out, that of any of the group. */
  private Set<Integer> feet(Drill drill) {
    List<Integer> ages = children().values().stream().sorted().toList();
    boolean some = !given.json().path("asked").path("players").isEmpty();
    Set<Integer> feet = new LinkedHashSet<>();
    ages.stream()
        .skip(some ? 0 : Math.max(0, ages.size() - 1))
        .forEach(age -> feet.add(drill.feet().getOrDefault(AgeBand.of(age), 0)));
    return feet;
  }

  /**
   * What to bring: the most that is in use at one time. Of another way the plan has no rotations,
   * so it is all its stations at most, and each thing at least once.
   */
  private void gear() {
    Map<String, Integer> least = new TreeMap<>();
    for (JsonNode rotation : practice.path("rotations")) {
      Map<String, Integer> now = new TreeMap<>();
      for (JsonNode post : rotation.path("posts")) {
        drill(post.path("drill").asText(""))
            .ifPresent(d -> DrillGear.add(now, DrillGear.of(d, place)));
      }
      DrillGear.most(least, now);
    }
    Map<String, Integer> most = new TreeMap<>(least);
    for (JsonNode way : practice.path("ways")) {
      Place there = way.path("place").asText().equals(Place.CAGE.id()) ? Place.CAGE : Place.FIELD;
      Map<String, Integer> all = new TreeMap<>();
      for (JsonNode station : way.path("stations")) {
        Map<String, Integer> here = new TreeMap<>();
        drills(station).forEach(d -> DrillGear.most(here, DrillGear.of(d, there)));
        DrillGear.most(least, here);
        DrillGear.add(all, here);
      }
      DrillGear.most(most, all);
    }
    Map<String, Integer> listed = DrillGear.listed(practice.path("gear"));
    Set<String> things = new TreeSet<>(listed.keySet());
    things.addAll(most.keySet());
    for (String thing : things) {
      int count = listed.getOrDefault(thing, 0);
      int fewest = least.getOrDefault(thing, 0);
      int dearest = most.getOrDefault(thing, 0);
      if (count < fewest || count > dearest) {
        given.fault(
            where,
            "the gear list has " + count + " of " + thing,
            "in use at one time are " + (fewest == dearest ? "" : fewest + " to ") + dearest);
      }
    }
  }

  /**
   * A log sheet for each drill that asks for a log, with all children of the group; toss lists too.
   */
  private void logs() {
    Set<String> wanted = new TreeSet<>();
    boolean tossed = false;
    for (JsonNode station : practice.path("stations")) {
      for (String id : posted(station)) {
        drill(id).filter(Drill::logged).ifPresent(d -> wanted.add(d.id()));
        tossed |= drill(id).filter(d -> BY_HAND.contains(d.feed())).isPresent();
      }
    }
    Set<String> children = new TreeSet<>(children().keySet());
    Set<String> found = new TreeSet<>();
    for (JsonNode log : practice.path("logs")) {
      found.add(log.path("drill").asText());
      same(
          where + ", log of " + log.path("drill").asText(),
          "hitters",
          children,
          new TreeSet<>(Given.words(log, "hitters")));
    }
    same(where, "log sheets of the drills", wanted, found);
    if (tossed != practice.path("toss_lists").asBoolean()) {
      given.fault(
          where,
          "toss_lists is " + practice.path("toss_lists"),
          "there are toss lists where a person tosses, and nowhere else");
    }
  }
}
