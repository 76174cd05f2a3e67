package org.belthigh.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.belthigh.catalogue.Drill;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Player;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/**
 * One practice as a circuit: squads go round the stations, so that everybody has the same number of
 * visits and swings, every swing has a grown-up beside it, and no line is longer than two.
 *
 * <p>A coach explains few drills well: of the drills that serve a step, one that the station is
 * already set up for comes first, then one that another station has taught that day.
 *
 * <p>Squads are made of players who need the same skill on a like step, so that a station is set up
 * once. At a station with a grown-up a squad does what most of it needs; at a station without one
 * it watches and calls. Ties are broken by id: the order of the roster does not matter.
 */
final class Circuit {
  /** Share of the hitting time that stays fill; the rest is for setting up. */
  private static final double NEARLY_FULL = 0.8;

  private final DrillChoice choice;
  private final Doses doses;

  Circuit(DrillChoice choice, Doses doses) {
    this.choice = choice;
    this.doses = doses;
  }

  /**
   * Who takes part, and what they need.
   *
   * @param focus the two skills of the week, the more pressing one first
   * @param all the decisions of all skills
   * @param used how often the player has had each drill so far
   * @param swingsLeft most swings the load allows on that day
   */
  record Entrant(
      Player player,
      int age,
      List<SkillDecision> focus,
      List<SkillDecision> all,
      Map<String, Integer> used,
      int swingsLeft) {
    Entrant {
      focus = List.copyOf(focus);
      all = List.copyOf(all);
    }

    /** The rung that the player works on. */
    int rung(Skill skill) {
      return all.stream().filter(d -> d.skill() == skill).findFirst().orElseThrow().workOn().rung();
    }

    /** Whether the week is about that skill. */
    boolean works(Skill skill) {
      return focus.stream().anyMatch(d -> d.skill() == skill);
    }
  }

  /**
   * Who is where, when, doing what.
   *
   * @param station 1 and up; stations up to {@code adults} have a grown-up
   * @param drill empty where the squad watches, fields and writes
   */
  record Post(
      int rotation,
      int station,
      List<Entrant> squad,
      Optional<Drill> drill,
      Optional<Skill> skill,
      int reps,
      int swings) {}

  /**
   * A practice that is laid out.
   *
   * @param stations how many there are
   * @param adultStations how many of them have a grown-up; they come first
   * @param rotationMinutes how long each stay is
   * @param change minutes between two stays
   */
  record Layout(
      int stations,
      int adultStations,
      int rotations,
      int rotationMinutes,
      int change,
      List<Post> posts) {}

  /**
   * Lays out a practice.
   *
   * @param entrants players who may swing
   * @param adults grown-ups who toss, at least 1
   * @param venueStations how many stations the place can hold
   * @param minutes hitting minutes
   */
  Layout lay(List<Entrant> entrants, Place place, int adults, int venueStations, int minutes) {
    List<Entrant> sorted =
        entrants.stream()
            .sorted(
                Comparator.<Entrant, Skill>comparing(e -> e.focus().get(0).skill())
                    .thenComparing(e -> e.focus().get(0).workOn().rung())
                    .thenComparing(e -> e.focus().get(1).skill())
                    .thenComparing(e -> e.player().id()))
            .toList();
    int youngest = entrants.stream().mapToInt(Entrant::age).min().orElse(10);
    int tossed = Math.max(1, Math.min(adults, Math.min(venueStations, sorted.size())));
    int stations = stations(sorted.size(), tossed, youngest);
    int change = stations > 1 ? doses.changeMinutes(youngest) : 0;
    int rotations = rotations(minutes, stations, tossed, change, youngest);
    int stay = Math.min(doses.stationMinutes(youngest), minutes / rotations - change);
    List<List<Entrant>> squads = squads(sorted, stations);
    List<Post> posts = posts(squads, place, tossed, rotations, Math.max(1, stay));
    return new Layout(stations, tossed, rotations, Math.max(1, stay), change, posts);
  }

  /** One more station than grown-ups, to watch from, where squads would grow too large. */
  private int stations(int players, int tossed, int age) {
    return players > tossed * doses.squadMost(age) ? tossed + 1 : tossed;
  }

  /**
   * How often the squads move on: as seldom as stays of the age's length nearly fill the time,
   * since every move costs walking. With a station to watch from it is a whole number of rounds, so
   * that everybody bats equally often.
   */
  private int rotations(int minutes, int stations, int tossed, int change, int age) {
    int step = stations > tossed ? stations : 1;
    int longest = doses.stationMinutes(age) + change;
    int most = Math.max(1, minutes / doses.stationMinutesLeast(age));
    for (int r = step; r <= most; r += step) {
      if (r * longest >= NEARLY_FULL * minutes) {
        return r;
      }
    }
    return Math.max(1, most / step * step);
  }

  /** Neighbours in need stay together; sizes differ by one at the most. */
  private static List<List<Entrant>> squads(List<Entrant> sorted, int stations) {
    List<List<Entrant>> squads = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < stations; i++) {
      int size = (sorted.size() - from) / (stations - i);
      squads.add(sorted.subList(from, from + size));
      from += size;
    }
    return squads;
  }

  private List<Post> posts(
      List<List<Entrant>> squads, Place place, int tossed, int rotations, int stay) {
    int stations = squads.size();
    int largest = squads.stream().mapToInt(List::size).max().orElse(1);
    List<Map<String, Integer>> used = new ArrayList<>();
    List<Integer> visits = new ArrayList<>();
    for (List<Entrant> squad : squads) {
      used.add(together(squad));
      visits.add(0);
    }
    List<Post> posts = new ArrayList<>();
    List<Set<String>> setUp = new ArrayList<>();
    for (int s = 0; s < stations; s++) {
      setUp.add(new HashSet<>());
    }
    for (int r = 0; r < rotations; r++) {
      for (int s = 0; s < stations; s++) {
        int q = Math.floorMod(s - r, stations);
        boolean adult = s < tossed;
        List<Entrant> squad = squads.get(q);
        if (squad.isEmpty()) {
          continue;
        }
        int visit = visits.get(q);
        Comparator<Drill> order =
            familiarFirst(
                    setUp.get(s),
                    adult ? setUp.subList(0, tossed) : setUp.subList(tossed, stations))
                .thenComparing(DrillChoice.leastUsed(used.get(q), place));
        Set<String> taught =
            taught(adult ? setUp.subList(0, tossed) : setUp.subList(tossed, stations));
        Optional<Found> found = find(squad, place, adult, visit, order);
        if (found.filter(f -> !taught.contains(f.drill().id())).isPresent()
            && taught.size() >= doses.drillsPerPractice(adult)) {
          found =
              known(squad, place, adult, taught, used.get(q))
                  .or(() -> find(squad, place, adult, visit, order));
        }
        if (adult && found.isPresent()) {
          visits.set(q, visit + 1);
        }
        Set<String> here = setUp.get(s);
        found.ifPresent(f -> here.add(f.drill().id()));
        posts.add(post(r + 1, s + 1, squad, found, stay, largest, rotations));
      }
    }
    return posts;
  }

  /** Drills that a station is set up for, then those of its like that day, then all others. */
  private static Comparator<Drill> familiarFirst(Set<String> here, List<Set<String>> like) {
    return Comparator.comparingInt(
        d -> here.contains(d.id()) ? 0 : like.stream().anyMatch(s -> s.contains(d.id())) ? 1 : 2);
  }

  private static Set<String> taught(List<Set<String>> setUp) {
    Set<String> all = new TreeSet<>();
    setUp.forEach(all::addAll);
    return all;
  }

  /**
   * A drill that was taught already and that nobody of the squad is too new for: of a skill that
   * the week is about where there is one. A coach explains few drills well.
   */
  private Optional<Found> known(
      List<Entrant> squad,
      Place place,
      boolean adult,
      Set<String> taught,
      Map<String, Integer> used) {
    return taught.stream()
        .map(choice::drill)
        .filter(d -> choice.fits(d, place, adult) && (adult || !d.swing()))
        .filter(d -> squad.stream().allMatch(e -> e.rung(d.skill()) >= choice.easiestRung(d)))
        .min(
            Comparator.<Drill>comparingLong(
                    d -> -squad.stream().filter(e -> e.works(d.skill())).count())
                .thenComparing(DrillChoice.leastUsed(used, place))
                .thenComparing(Drill::id))
        .map(d -> new Found(d, d.skill()));
  }

  private static Map<String, Integer> together(List<Entrant> squad) {
    Map<String, Integer> used = new HashMap<>();
    squad.forEach(e -> e.used().forEach((drill, n) -> used.merge(drill, n, Integer::sum)));
    return used;
  }

  private record Found(Drill drill, Skill skill) {}

  /** What most of the squad needs, on the easiest step that any of those are on. */
  private Optional<Found> find(
      List<Entrant> squad, Place place, boolean adult, int visit, Comparator<Drill> order) {
    Map<Skill, List<SkillDecision>> needs = new LinkedHashMap<>();
    for (int turn : new int[] {visit % 2, 1 - visit % 2}) {
      squad.forEach(
          e ->
              needs
                  .computeIfAbsent(e.focus().get(turn).skill(), k -> new ArrayList<>())
                  .add(e.focus().get(turn)));
    }
    Map<Skill, Long> wanted = new HashMap<>();
    squad.forEach(e -> wanted.merge(e.focus().get(visit % 2).skill(), 1L, Long::sum));
    return needs.entrySet().stream()
        .sorted(
            Comparator.<Map.Entry<Skill, List<SkillDecision>>>comparingLong(
                    n -> -wanted.getOrDefault(n.getKey(), 0L))
                .thenComparing(n -> n.getKey()))
        .flatMap(
            n ->
                choice
                    .of(
                        easiest(n.getValue()).workOn(),
                        place,
                        adult,
                        adult ? DrillChoice.Swings.WANTED : DrillChoice.Swings.BARRED,
                        order)
                    .map(d -> new Found(d, n.getKey()))
                    .stream())
        .findFirst();
  }

  private static SkillDecision easiest(List<SkillDecision> decisions) {
    return decisions.stream().min(Comparator.comparingInt(d -> d.workOn().rung())).orElseThrow();
  }

  private static Post post(
      int rotation,
      int station,
      List<Entrant> squad,
      Optional<Found> found,
      int stay,
      int largest,
      int rotations) {
    if (found.isEmpty()) {
      return new Post(rotation, station, squad, Optional.empty(), Optional.empty(), 0, 0);
    }
    Drill drill = found.get().drill();
    // the largest squad sets the pace for all, so that swings come out equal
    boolean together = drill.adults() == 0;
    int reps = (int) (stay * drill.perMinute() / (together ? 1 : largest));
    reps = Math.max(1, Math.min(reps, drill.reps()));
    int swings = drill.swings() * reps / drill.reps();
    int least = squad.stream().mapToInt(Entrant::swingsLeft).min().orElse(0) / rotations;
    if (drill.swing() && swings > least) {
      if (least == 0) {
        return new Post(rotation, station, squad, Optional.empty(), Optional.empty(), 0, 0);
      }
      swings = least;
      reps = Math.max(swings, swings * drill.reps() / Math.max(1, drill.swings()));
    }
    return new Post(
        rotation,
        station,
        squad,
        Optional.of(drill),
        Optional.of(found.get().skill()),
        reps,
        swings);
  }
}
