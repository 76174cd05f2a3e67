package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.belthigh.catalogue.Drill;

/**
 * Who is where at a practice, minute by minute: nobody twice, each at a station that has that
 * drill, with the minutes that the child's own day says; nobody swings who is held, and who is held
 * stands on the sheet.
 */
final class RotationCheck {
  private final Given given;
  private final Map<String, FinishedPlan.Person> people = new HashMap<>();

  RotationCheck(Given given) {
    this.given = given;
    given.plan().players().forEach(p -> people.putIfAbsent(p.id(), p));
  }

  void check() {
    for (JsonNode practice : given.json().path("practices")) {
      String where = practice.path("group").asText() + " " + practice.path("date").asText();
      Given.date(practice, "date").ifPresent(day -> practice(where, practice, day));
    }
  }

  private void practice(String where, JsonNode practice, LocalDate day) {
    Map<String, Map<String, Integer>> minutes = new HashMap<>();
    int end = 0;
    for (JsonNode rotation : practice.path("rotations")) {
      if (rotation.path("minute").asInt(-1) < end) {
        given.fault(
            where, "a stay begins at minute " + rotation.path("minute"), "the last ends at " + end);
      }
      end = rotation.path("minute").asInt() + rotation.path("minutes").asInt();
      rotation(where, practice, rotation, day, minutes);
    }
    if (end > practice.path("hitting_minutes").asInt()) {
      given.fault(
          where,
          "stays up to minute " + end,
          practice.path("hitting_minutes") + " are for hitting");
    }
    if (!practice.path("rotations").isEmpty()) {
      minutes.forEach((child, drills) -> own(child, day, drills));
      people.values().stream()
          .filter(p -> p.group().equals(practice.path("group").asText()))
          .filter(p -> works(p, day) && !minutes.containsKey(p.id()))
          .forEach(p -> given.fault(p.id() + " " + day, "no squad has the child", "each has one"));
    }
    listed(where, practice, day, "no_throwing", "throwing");
    listed(where, practice, day, "no_swinging", "swinging");
  }

  private static boolean works(FinishedPlan.Person person, LocalDate day) {
    return person.days().stream().anyMatch(d -> d.date().equals(day) && !d.atHome() && d.works());
  }

  private void rotation(
      String where,
      JsonNode practice,
      JsonNode rotation,
      LocalDate day,
      Map<String, Map<String, Integer>> minutes) {
    Set<String> placed = new HashSet<>();
    Map<String, Integer> things = new HashMap<>();
    for (JsonNode post : rotation.path("posts")) {
      String drill = post.path("drill").asText("");
      for (String child : Given.words(post, "players")) {
        if (!placed.add(child)) {
          given.fault(where + ", " + child, "in two places at once", "each is at one station");
        }
        minutes
            .computeIfAbsent(child, c -> new HashMap<>())
            .merge(drill, rotation.path("minutes").asInt(), Integer::sum);
        swings(where, child, drill, day);
      }
      at(where, practice, post, drill);
      drill(drill).ifPresent(d -> d.gear().forEach(g -> things.merge(g, 1, Integer::sum)));
    }
    stock(where, rotation, things);
  }

  private Optional<Drill> drill(String id) {
    return Optional.ofNullable(given.curriculum().drills().get(id));
  }

  private void swings(String where, String child, String drill, LocalDate day) {
    boolean held =
        Optional.ofNullable(people.get(child)).stream()
            .flatMap(p -> p.holds().stream())
            .anyMatch(h -> h.stops("swinging") && h.on(day));
    if (held && drill(drill).filter(Drill::swing).isPresent()) {
      given.broken(where + ", " + child, "at a station with a bat", "a hold stops swinging");
    }
    if (!given.roster().containsKey(child)) {
      given.fault(where + ", " + child, "no such child", "squads are of the roster");
    }
  }

  private void at(String where, JsonNode practice, JsonNode post, String drill) {
    if (drill.isEmpty() || !post.path("station").isInt()) {
      return;
    }
    for (JsonNode station : practice.path("stations")) {
      if (station.path("station").asInt() == post.path("station").asInt()) {
        if (!Given.words(station, "drills").contains(drill)) {
          given.fault(
              where + ", station " + post.path("station"), drill + " is done there", "it has none");
        }
        return;
      }
    }
    given.fault(where, "a squad at station " + post.path("station"), "there is no such station");
  }

  /** What stands at two stations at once must be there twice. */
  private void stock(String where, JsonNode rotation, Map<String, Integer> things) {
    Map<String, Integer> have = given.record().club().equipment();
    for (String thing : List.of("tee", "net", "screen", "machine")) {
      int owned = have.getOrDefault(thing + "s", 0);
      if (!have.isEmpty() && things.getOrDefault(thing, 0) > owned) {
        given.broken(
            where + ", minute " + rotation.path("minute"),
            things.get(thing) + " stations use a " + thing,
            "the club has " + owned);
      }
    }
  }

  /** The child's own day has the same drills for the same minutes. */
  private void own(String child, LocalDate day, Map<String, Integer> drills) {
    Optional.ofNullable(people.get(child)).stream()
        .flatMap(p -> p.days().stream())
        .filter(d -> d.date().equals(day))
        .flatMap(d -> d.items().stream())
        .filter(w -> drills.getOrDefault(w.drill(), 0) < w.minutes())
        .forEach(
            w ->
                given.fault(
                    child + " " + day + ", " + w.drill(),
                    w.minutes() + " minutes",
                    "the squad has " + drills.getOrDefault(w.drill(), 0) + " there"));
  }

  /** Who comes and may not throw or swing that day is on the sheet. */
  private void listed(String where, JsonNode practice, LocalDate day, String key, String stopped) {
    if (!practice.has(key)) {
      return;
    }
    Set<String> wanted = new TreeSet<>();
    people.values().stream()
        .filter(p -> p.group().equals(practice.path("group").asText()))
        .filter(p -> p.holds().stream().noneMatch(h -> h.stops(HoldCheck.EVERYTHING) && h.on(day)))
        .filter(p -> p.holds().stream().anyMatch(h -> h.stops(stopped) && h.on(day)))
        .forEach(p -> wanted.add(p.id()));
    List<String> found = Given.words(practice, key);
    wanted.stream()
        .filter(id -> !found.contains(id))
        .forEach(
            id ->
                given.broken(
                    where + ", " + id, "not listed under " + key, "a hold stops " + stopped));
    found.stream()
        .filter(id -> !given.roster().containsKey(id))
        .forEach(id -> given.fault(where + ", " + id, "listed under " + key, "no such child"));
  }
}
