package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.belthigh.catalogue.Drill;
import org.belthigh.words.Words;

/**
 * Who is where at a practice, minute by minute: stays of one length, each squad at one station,
 * nobody twice and nobody left out, what each child's own day says and no more; nobody bats who is
 * held, and who is held stands on the sheet.
 */
final class RotationCheck {
  private static final String HITS = "hits";
  private static final String WATCHES = "watches";
  private static final String HELPS = "helps";
  private static final String PRACTICE = "day.practice";
  private static final Set<String> JOBS = Set.of(HITS, WATCHES, "fields", HELPS);

  private final Given given;
  private final Words words;
  private final Map<String, FinishedPlan.Person> people = new LinkedHashMap<>();

  RotationCheck(Given given, Words words) {
    this.given = given;
    this.words = words;
    given.plan().players().forEach(p -> people.putIfAbsent(p.id(), p));
  }

  void check() {
    for (JsonNode practice : given.json().path("practices")) {
      String group = practice.path("group").asText();
      // of an unknown group PracticeCheck tells
      if (given.record().club().groups().stream().anyMatch(g -> g.id().equals(group))) {
        String where = group + " " + practice.path("date").asText();
        Given.date(practice, "date").ifPresent(day -> practice(where, practice, day));
      }
    }
  }

  private void practice(String where, JsonNode practice, LocalDate day) {
    stays(where, practice);
    Map<String, List<SquadDay.Visit>> visits = new LinkedHashMap<>();
    for (JsonNode rotation : practice.path("rotations")) {
      rotation(where, practice, rotation, day, visits);
    }
    visits.forEach((child, done) -> own(where, child, day, done));
    of(practice, p -> works(p, day) && !visits.containsKey(p.id()))
        .forEach(id -> given.fault(where + ", " + id, "no squad has the child", "each has one"));
    listed(where, practice, day, "no_throwing", "throwing");
    listed(where, practice, day, "no_swinging", "swinging");
  }

  /** The children of the practice's group of whom that is so, by id. */
  private Set<String> of(JsonNode practice, Predicate<FinishedPlan.Person> so) {
    Set<String> ids = new TreeSet<>();
    people.values().stream()
        .filter(p -> p.group().equals(practice.path("group").asText()))
        .filter(so)
        .forEach(p -> ids.add(p.id()));
    return ids;
  }

  private static boolean works(FinishedPlan.Person person, LocalDate day) {
    return person.days().stream().anyMatch(d -> d.date().equals(day) && !d.atHome() && d.works());
  }

  /** The stays follow each other from minute 0 on, all as long and as far apart. */
  private void stays(String where, JsonNode practice) {
    JsonNode rotations = practice.path("rotations");
    if (rotations.isEmpty()) {
      given.fault(where, "there is no rotation", "it says who is at which station, stay by stay");
    }
    int minutes = rotations.path(0).path("minutes").asInt();
    int step = rotations.path(1).path("minute").asInt(minutes);
    int change = change(practice);
    boolean even = minutes > 0 && step >= minutes && step <= minutes + change;
    int end = 0;
    for (int i = 0; i < rotations.size(); i++) {
      JsonNode stay = rotations.get(i);
      even &= stay.path("minute").asInt(-1) == i * step && stay.path("minutes").asInt() == minutes;
      end = Math.max(end, stay.path("minute").asInt() + stay.path("minutes").asInt());
    }
    if (!rotations.isEmpty() && !even) {
      given.fault(
          where,
          "the rotations are not of one length, one after another",
          "from minute 0 on, with " + change + " minutes at most to change stations");
    }
    if (end > practice.path("hitting_minutes").asInt()) {
      given.fault(
          where,
          "rotations up to minute " + end,
          practice.path("hitting_minutes") + " minutes are for hitting");
    }
  }

  private int change(JsonNode practice) {
    return people.values().stream()
        .filter(p -> p.group().equals(practice.path("group").asText()))
        .mapToInt(p -> given.limits().whole("change-minutes", p.age()))
        .max()
        .orElse(0);
  }

  private void rotation(
      String where,
      JsonNode practice,
      JsonNode rotation,
      LocalDate day,
      Map<String, List<SquadDay.Visit>> visits) {
    String at = where + ", minute " + rotation.path("minute").asText();
    Set<String> placed = new TreeSet<>();
    Set<String> helpers = new TreeSet<>();
    List<Integer> stations = new ArrayList<>();
    Map<String, Integer> things = new HashMap<>();
    for (JsonNode post : rotation.path("posts")) {
      String drill = post.path("drill").asText("");
      boolean helps = post.path("job").asText().equals(HELPS);
      for (String child : Given.words(post, "players")) {
        if (!placed.add(child)) {
          given.fault(at + ", " + child, "in two places at once", "each is at one station");
        }
        child(at, child, practice, day, helps);
        if (helps) {
          helpers.add(child);
        } else {
          boolean bats = drill(drill).filter(Drill::swing).isPresent();
          visits
              .computeIfAbsent(child, c -> new ArrayList<>())
              .add(new SquadDay.Visit(drill, rotation.path("minutes").asInt(), bats));
        }
      }
      if (helps) {
        helped(at, practice, post);
      } else {
        stations.add(post.path("station").asInt());
        manned(at, post);
      }
      job(at, post, drill);
      drill(drill).ifPresent(d -> d.gear().forEach(g -> things.merge(g, 1, Integer::sum)));
    }
    everywhere(at, practice, stations);
    everybody(at, practice, placed, helpers);
    stock(at, things);
  }

  private Optional<Drill> drill(String id) {
    return Optional.ofNullable(given.curriculum().drills().get(id));
  }

  private void child(String at, String child, JsonNode practice, LocalDate day, boolean helps) {
    boolean held =
        Optional.ofNullable(people.get(child)).stream()
            .flatMap(p -> p.holds().stream())
            .anyMatch(h -> h.stops("swinging") && h.on(day));
    if (held && !helps) {
      given.broken(at + ", " + child, "in a squad that bats", "a hold stops swinging");
    }
    boolean here =
        Optional.ofNullable(given.roster().get(child))
            .filter(p -> p.group().equals(practice.path("group").asText()))
            .isPresent();
    if (!here) {
      given.fault(
          at + ", " + child, "no such child", "squads are of the roster, and of their own group");
    }
  }

  /** Who helps does so at a station of the practice. */
  private void helped(String at, JsonNode practice, JsonNode post) {
    int station = post.path("station").asInt();
    if (!stations(practice).contains(station)) {
      given.fault(
          at, "helpers are at the station " + station, "stations are those of the practice");
    }
  }

  private static List<Integer> stations(JsonNode practice) {
    List<Integer> stations = new ArrayList<>();
    practice.path("stations").forEach(s -> stations.add(s.path("station").asInt()));
    return stations;
  }

  /** Each squad is at a station of its own, and each station has its squad. */
  private void everywhere(String at, JsonNode practice, List<Integer> stations) {
    List<Integer> wanted = stations(practice);
    if (!stations.stream().sorted().toList().equals(wanted.stream().sorted().toList())) {
      given.fault(at, "squads are at the stations " + stations, "one is at each of " + wanted);
    }
  }

  private void manned(String at, JsonNode post) {
    if (post.path("players").isEmpty()) {
      given.fault(
          at, "nobody is at station " + post.path("station").asText(), "each squad has a child");
    }
  }

  /** The same children are there at each stay; who may not swing helps. */
  private void everybody(String at, JsonNode practice, Set<String> placed, Set<String> helpers) {
    Set<String> all = new TreeSet<>();
    practice
        .path("rotations")
        .forEach(r -> r.path("posts").forEach(p -> all.addAll(Given.words(p, "players"))));
    all.stream()
        .filter(id -> !placed.contains(id))
        .forEach(id -> given.fault(at + ", " + id, "at no station", "each child is at one"));
    Set<String> wanted = new TreeSet<>(Given.words(practice, "no_swinging"));
    if (!helpers.equals(wanted)) {
      given.fault(at, helpers + " help", "who may not swing helps: " + wanted);
    }
  }

  /** A bat hits, a drill without one is watched, and without a drill the squad fields. */
  private void job(String at, JsonNode post, String drill) {
    String job = post.path("job").asText();
    boolean bats = drill(drill).filter(Drill::swing).isPresent();
    boolean right =
        drill.isEmpty()
            ? !job.equals(HITS) && !job.equals(WATCHES)
            : job.equals(bats ? HITS : WATCHES);
    if (!right || !JOBS.contains(job)) {
      given.fault(
          at + ", station " + post.path("station").asText(),
          "its squad " + job + (drill.isEmpty() ? " without a drill" : " in " + drill),
          "the job is hits with a bat, watches without, fields where there is no drill");
    }
  }

  /** What stands at two stations at once must be there twice. */
  private void stock(String at, Map<String, Integer> things) {
    Map<String, Integer> have = given.record().club().equipment();
    for (String thing : List.of("tee", "net", "screen", "machine")) {
      int owned = have.getOrDefault(thing + "s", 0);
      if (!have.isEmpty() && things.getOrDefault(thing, 0) > owned) {
        given.broken(at, things.get(thing) + " stations use a " + thing, "the club has " + owned);
      }
    }
  }

  /** The child's own day has the same drills for the same minutes. */
  private void own(String where, String child, LocalDate day, List<SquadDay.Visit> visits) {
    FinishedPlan.Person person = people.get(child);
    if (person == null) {
      return;
    }
    List<FinishedPlan.Work> items =
        person.days().stream()
            .filter(d -> d.date().equals(day) && !d.atHome())
            .flatMap(d -> d.items().stream())
            .toList();
    Map<String, Integer> said = new LinkedHashMap<>();
    items.forEach(w -> said.merge(w.drill(), w.minutes(), Integer::sum));
    SquadDay squad = new SquadDay(visits);
    if (!squad.allows(said, fewer(child, day))) {
      given.fault(
          where + ", " + child,
          "its own day has these drills and minutes: " + said,
          "the rotations have " + squad.all());
    }
  }

  /** Whether the child's day is called more than a practice: one with fewer swings. */
  private boolean fewer(String child, LocalDate day) {
    return given.children().stream()
        .filter(c -> c.id().equals(child))
        .flatMap(c -> c.said().path("days").findParents("note").stream())
        .filter(d -> d.path("date").asText().equals(day.toString()))
        .map(d -> d.path("note").asText())
        .anyMatch(
            note -> Words.LANGUAGES.stream().noneMatch(l -> words.say(PRACTICE, l).equals(note)));
  }

  /** Who comes and may not throw or swing that day is on the sheet, and nobody else. */
  private void listed(String where, JsonNode practice, LocalDate day, String key, String stopped) {
    Set<String> wanted =
        of(
            practice,
            p ->
                p.holds().stream().noneMatch(h -> h.stops(HoldCheck.EVERYTHING) && h.on(day))
                    && p.holds().stream().anyMatch(h -> h.stops(stopped) && h.on(day)));
    List<String> found = Given.words(practice, key);
    wanted.stream()
        .filter(id -> !found.contains(id))
        .forEach(
            id ->
                given.broken(
                    where + ", " + id, "not listed under " + key, "a hold stops " + stopped));
    // where some children alone were asked for, the plan does not say the holds of the others
    boolean all = given.json().path("asked").path("players").isEmpty();
    found.stream()
        .filter(id -> !wanted.contains(id))
        .filter(id -> all || people.containsKey(id) || !given.roster().containsKey(id))
        .forEach(
            id ->
                given.fault(
                    where + ", " + id,
                    "listed under " + key,
                    given.roster().containsKey(id)
                        ? "no hold of the plan stops " + stopped + " that day"
                        : "no such child"));
  }
}
