package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Club;
import org.belthigh.intake.Event;
import org.belthigh.model.Coded;
import org.belthigh.model.Place;
import org.belthigh.words.Words;

/**
 * Each practice is one of the calendar, with its minutes and grown-ups; its stations fit the place,
 * the gear and the children; and the work of the children is what its stations have, no more and no
 * less.
 */
final class PracticeCheck {
  private static final int ASSUMED_MINUTES = 90;
  private static final int ASSUMED_HITTING_MINUTES = 45;
  private static final int USUAL_STATIONS = 4;
  private static final int MOST_AGE = 18;

  /** What a station needs for itself, and the name under which a club counts it. */
  private static final Map<String, String> STOCK =
      Map.of("tee", "tees", "net", "nets", "screen", "screens", "machine", "machines");

  private final Given given;
  private final HeatLines heat;
  private final Map<String, List<Given.Child>> groups = new HashMap<>();

  PracticeCheck(Given given, Words words) {
    this.given = given;
    this.heat = new HeatLines(given, words);
    given
        .children()
        .forEach(c -> groups.computeIfAbsent(c.player().group(), g -> new ArrayList<>()).add(c));
  }

  void check() {
    Set<String> held = new HashSet<>();
    for (JsonNode practice : given.json().path("practices")) {
      String where = where(practice);
      if (!held.add(where)) {
        given.fault(where, "the practice stands twice", "each stands once");
      }
      Given.date(practice, "date").ifPresent(day -> practice(where, practice, day));
    }
    groups.forEach((group, children) -> missing(group, children, held));
    groups.values().forEach(children -> children.forEach(this::places));
  }

  /** Work away from home is where the calendar has the practice, in later weeks too. */
  private void places(Given.Child child) {
    Club.Group group = given.record().club().group(child.player().group());
    for (JsonNode said : child.said().path("days")) {
      Optional<LocalDate> day = Given.date(said, "date");
      if (day.isEmpty() || !away(said) || said.path("items").isEmpty()) {
        continue;
      }
      Place place = event(group, day.get()).map(this::place).orElse(Place.FIELD);
      if (!said.path("place").asText().equals(place.id())) {
        given.fault(
            Given.at(child, said),
            "the place is " + said.path("place").asText(),
            "by the calendar the practice is at the " + place.id());
      }
    }
  }

  private static String where(JsonNode practice) {
    return practice.path("group").asText() + " " + practice.path("date").asText();
  }

  /**
   * Work away from home in the first week belongs to a practice that the plan has; where the first
   * week has none, the plan has the next one.
   */
  private void missing(String group, List<Given.Child> children, Set<String> held) {
    LocalDate end = given.plan().from().plusDays(Week.DAYS);
    TreeMap<LocalDate, String> working = new TreeMap<>();
    for (Given.Child child : children) {
      for (JsonNode day : child.said().path("days")) {
        if (away(day) && !day.path("items").isEmpty()) {
          Given.date(day, "date").ifPresent(d -> working.putIfAbsent(d, child.id()));
        }
      }
    }
    boolean early = held.stream().anyMatch(p -> before(p, group, end));
    Map<LocalDate, String> owed =
        early || working.isEmpty() || working.firstKey().isBefore(end)
            ? working.headMap(end)
            : working.headMap(working.firstKey(), true);
    owed.forEach(
        (day, child) -> {
          if (!held.contains(group + " " + day)) {
            given.fault(
                group + " " + day,
                "the practice is missing, and " + child + " has work there",
                "the practices of the first week have their stations, or else the next one");
          }
        });
  }

  private static boolean before(String practice, String group, LocalDate end) {
    return practice.startsWith(group + " ")
        && practice.substring(group.length() + 1).compareTo(end.toString()) < 0;
  }

  private static boolean away(JsonNode day) {
    String place = day.path("place").asText();
    return place.equals("field") || place.equals("cage");
  }

  private void practice(String where, JsonNode practice, LocalDate day) {
    String id = practice.path("group").asText();
    Optional<Club.Group> group =
        given.record().club().groups().stream().filter(g -> g.id().equals(id)).findFirst();
    if (group.isEmpty()) {
      given.fault(where, "the group '" + id + "'", "the club has no such group");
      return;
    }
    if (day.isBefore(given.plan().from()) || day.isAfter(given.plan().last())) {
      given.fault(where, "the day is not planned", "practices are in the planned weeks");
    }
    Optional<Event> event = event(group.get(), day);
    if (event.isEmpty() && !assumed(id, day)) {
      given.fault(where, "the calendar has no such practice", "practices are as there");
    } else {
      calendar(where, practice, event, group.get());
    }
    Place place = event.map(this::place).orElse(Place.FIELD);
    said(where, practice, "place", place.id());
    List<Given.Child> there = there(id, day);
    stations(where, practice, event, there.size());
    drills(where, practice, place, there, day);
    gear(where, practice.path("stations"), place);
    new StationCheck(given, practice, place).check();
    heat.check(where, practice);
    ways(where, practice, place);
    for (JsonNode way : practice.path("ways")) {
      way(where + ", " + way.path("way").asText(), way, id, day);
    }
  }

  private Optional<Event> event(Club.Group group, LocalDate day) {
    List<Event> events = given.events(group.id(), day);
    boolean hits =
        events.stream()
            .allMatch(e -> e.kind() == Event.Kind.PRACTICE || e.kind() == Event.Kind.EVALUATION);
    return hits ? events.stream().findFirst() : Optional.empty();
  }

  private boolean assumed(String group, LocalDate day) {
    FinishedPlan.Person anybody =
        new FinishedPlan.Person(group, group, 0, List.of(), List.of(), List.of(), false);
    return new Sport(given.record(), given.plan()).assumed(anybody, day);
  }

  private void calendar(String where, JsonNode practice, Optional<Event> event, Club.Group group) {
    number(
        where,
        practice,
        "hitting_minutes",
        event.map(Event::hittingMinutes).orElse(ASSUMED_HITTING_MINUTES));
    number(
        where,
        practice,
        "adults",
        event.map(e -> e.adults().orElse(group.tossers())).orElse(group.tossers()));
    number(where, practice, "minutes", event.map(Event::minutes).orElse(ASSUMED_MINUTES));
    said(where, practice, "kind", Event.Kind.PRACTICE.id());
    said(
        where,
        practice,
        "start",
        event.flatMap(Event::start).map(LocalTime::toString).orElse(null));
    said(
        where,
        practice,
        "where",
        event.map(e -> venue(e).map(Club.Venue::name).orElse(e.place())).orElse(""));
  }

  private void said(String where, JsonNode practice, String key, String wanted) {
    String found = practice.path(key).asText(null);
    if (!Objects.equals(found, wanted)) {
      given.fault(
          where,
          key + " is " + practice.path(key),
          "by the calendar it is " + (wanted == null ? "not said" : "'" + wanted + "'"));
    }
  }

  /** With one adult where more are needed, and in the cage when it rains, where there is one. */
  private void ways(String where, JsonNode practice, Place place) {
    Set<String> wanted = new TreeSet<>();
    if (adults(practice) > 1) {
      wanted.add("one-adult");
    }
    boolean cage = given.record().club().places().stream().anyMatch(Club.Venue::cage);
    if (place == Place.FIELD && cage) {
      wanted.add("rain");
    }
    Set<String> found = new TreeSet<>();
    for (JsonNode way : practice.path("ways")) {
      String name = way.path("way").asText();
      boolean rain = name.equals("rain");
      found.add(name);
      number(where + ", " + name, way, "adults", rain ? practice.path("adults").asInt() : 1);
      said(where + ", " + name, way, "place", rain ? Place.CAGE.id() : place.id());
    }
    if (!found.equals(wanted)) {
      given.fault(where, "its other ways are " + found, "it needs " + wanted);
    }
  }

  private void number(String where, JsonNode practice, String key, int wanted) {
    if (practice.path(key).asInt(-1) != wanted) {
      given.fault(where, key + " is " + practice.path(key), "by the calendar it is " + wanted);
    }
  }

  private Place place(Event event) {
    boolean cage =
        venue(event)
            .map(Club.Venue::cage)
            .orElse(event.place().toLowerCase(Locale.ROOT).contains(Place.CAGE.id()));
    return cage ? Place.CAGE : Place.FIELD;
  }

  private Optional<Club.Venue> venue(Event event) {
    return given.record().club().places().stream()
        .filter(v -> v.id().equals(event.place()))
        .findFirst();
  }

  /** Who has work at that practice. */
  private List<Given.Child> there(String group, LocalDate day) {
    return groups.getOrDefault(group, List.of()).stream()
        .filter(c -> day(c, day).filter(d -> away(d) && !d.path("items").isEmpty()).isPresent())
        .toList();
  }

  private static Optional<JsonNode> day(Given.Child child, LocalDate date) {
    for (JsonNode day : child.said().path("days")) {
      if (day.path("date").asText().equals(date.toString())) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  private void stations(String where, JsonNode practice, Optional<Event> event, int hitters) {
    JsonNode stations = practice.path("stations");
    Set<Integer> numbers = new HashSet<>();
    int adults = adults(practice);
    for (JsonNode station : stations) {
      int number = station.path("station").asInt();
      if (!numbers.add(number)) {
        given.fault(where, "station " + number + " stands twice", "each station stands once");
      }
      if (number < 1 || number > stations.size()) {
        given.fault(where, "a station " + number, "they are 1 to " + stations.size());
      }
    }
    int room = event.flatMap(this::venue).map(Club.Venue::stations).orElse(USUAL_STATIONS);
    if (adults > Math.min(room, Math.max(0, practice.path("adults").asInt()))) {
      given.broken(
          where,
          adults + " stations with an adult",
          "the place has room for "
              + room
              + ", and there are "
              + practice.path("adults")
              + " adults");
    }
    if (given.json().path("asked").path("players").isEmpty()) {
      crowd(where, practice, room, hitters);
    }
  }

  /** A squad is small where room, grown-ups and minutes allow another station. */
  private void crowd(String where, JsonNode practice, int room, int hitters) {
    int youngest =
        given.plan().players().stream().mapToInt(FinishedPlan.Person::age).min().orElse(0);
    int least =
        given.limits().whole("station-minutes-least", youngest)
            + given.limits().whole("change-minutes", youngest);
    int stations = practice.path("stations").size();
    int rounds = practice.path("hitting_minutes").asInt() / least;
    int possible = Math.min(Math.min(room, practice.path("adults").asInt()), rounds);
    int squad = given.limits().whole("squad-most", MOST_AGE);
    if (stations == 0
        || (hitters > stations * squad && stations < possible)
        || stations > Math.max(hitters, 1)) {
      given.broken(
          where,
          stations + " stations for " + hitters + " children",
          "squads are of " + squad + " at most where there is room for another station");
    }
    int watched = stations - adults(practice);
    if (watched > Math.max(1, rounds - adults(practice))) {
      given.broken(
          where,
          watched + " stations to watch from",
          practice.path("hitting_minutes") + " minutes allow a round of " + rounds);
    }
  }

  private static int adults(JsonNode practice) {
    int adults = 0;
    for (JsonNode station : practice.path("stations")) {
      adults += station.path("adult").asBoolean() ? 1 : 0;
    }
    return adults;
  }

  private void drills(
      String where, JsonNode practice, Place place, List<Given.Child> there, LocalDate day) {
    Set<String> listed = new LinkedHashSet<>();
    for (JsonNode station : practice.path("stations")) {
      listed.addAll(Given.words(station, "drills"));
    }
    for (Given.Child child : there) {
      JsonNode said = day(child, day).orElseThrow();
      for (JsonNode item : said.path("items")) {
        String drill = item.path("drill").asText();
        if (!listed.contains(drill)) {
          given.fault(
              child.id() + " " + day + ", " + drill,
              "no station has it",
              "the stations of " + where + " have " + listed);
        }
      }
    }
    listed.forEach(d -> known(where, d, place));
  }

  private void known(String where, String id, Place place) {
    Optional<Drill> drill = drill(id);
    if (drill.isEmpty()) {
      given.fault(where + ", " + id, "the curriculum has no such drill", "drills come from it");
    } else if (!drill.get().at(place)) {
      given.broken(
          where + ", " + id,
          "done on the " + place.id(),
          "the curriculum allows it elsewhere only");
    }
  }

  private Optional<Drill> drill(String id) {
    return Optional.ofNullable(given.curriculum().drills().get(id));
  }

  /**
   * What a drill needs is the club's; how many are in use at one time, {@link RotationCheck} sees.
   */
  private void gear(String where, JsonNode stations, Place place) {
    Map<String, Integer> equipment = given.record().club().equipment();
    for (Map.Entry<String, String> thing : STOCK.entrySet()) {
      boolean machine = thing.getKey().equals("machine");
      if (equipment.isEmpty() && !machine) {
        continue;
      }
      int have = equipment.getOrDefault(thing.getValue(), 0);
      for (JsonNode station : stations) {
        List<Drill> drills =
            Given.words(station, "drills").stream().flatMap(d -> drill(d).stream()).toList();
        boolean any = drills.stream().anyMatch(d -> d.gear().contains(thing.getKey()));
        if (any && have == 0) {
          given.broken(
              where + ", station " + station.path("station").asText(),
              "a drill needs a " + thing.getKey(),
              "the club has no " + thing.getValue());
        }
        screen(where, station, drills, place);
      }
    }
  }

  /** A hard ball that is tossed needs its screen, and the sheet draws it. */
  private void screen(String where, JsonNode station, List<Drill> drills, Place place) {
    boolean needed = drills.stream().anyMatch(d -> d.at(place) && d.gear().contains("screen"));
    if (needed && !station.path("screen").asBoolean()) {
      given.broken(
          where + ", station " + station.path("station").asText(),
          "no screen is set up",
          "a drill there is tossed from behind one");
    }
  }

  private void way(String where, JsonNode way, String group, LocalDate day) {
    Coded.find(Place.class, way.path("place").asText())
        .ifPresent(place -> gear(where, way.path("stations"), place));
    way.path("swings")
        .properties()
        .forEach(
            e -> {
              if (e.getValue().asInt() > 0) {
                swinging(where, e.getKey(), group, day);
              }
            });
  }

  private void swinging(String where, String id, String group, LocalDate day) {
    Optional<FinishedPlan.Person> person =
        given.plan().players().stream().filter(p -> p.id().equals(id)).findFirst();
    boolean known = given.roster().containsKey(id);
    if (!known || !given.roster().get(id).group().equals(group)) {
      given.fault(where + ", " + id, "swings for a child of no such group", "its own children hit");
    }
    if (person.stream()
        .flatMap(p -> p.holds().stream())
        .anyMatch(h -> h.stops("swinging") && h.on(day))) {
      given.broken(where + ", " + id, "swings for a child who is held", "a held child has none");
    }
  }
}
