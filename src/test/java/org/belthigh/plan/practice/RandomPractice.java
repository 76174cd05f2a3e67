package org.belthigh.plan.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.model.Bats;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/** Practices made up from a seed, with the drills of the curriculum and invented hitters. */
final class RandomPractice {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Curriculum CURRICULUM = CATALOGUE.curricula().get("belthigh-2027");

  private final SplittableRandom random;

  private RandomPractice(long seed) {
    random = new SplittableRandom(seed);
  }

  /** So small that every arrangement can be looked at: up to 6 hitters, 2 stations, 7 drills. */
  static Practice tiny(long seed) {
    RandomPractice r = new RandomPractice(seed);
    int adults = r.between(1, 2);
    return r.practice(r.between(4, 6), 2, adults, adults == 1 ? 2 : r.between(2, 3), 7);
  }

  /** 4 to 9 hitters, 2 or 3 stations, 2 or 3 rotations, 6 to 10 drills. */
  static Practice small(long seed) {
    RandomPractice r = new RandomPractice(seed);
    int stations = r.between(2, 3);
    int adults = r.between(1, stations);
    int rotations = adults < stations ? stations : r.between(2, 3);
    return r.practice(r.between(2 * stations, 9), stations, adults, rotations, r.between(6, 10));
  }

  /** 30 to 60 hitters, 6 stations, 8 rotations, as many drills as the field allows. */
  static Practice large(long seed) {
    RandomPractice r = new RandomPractice(seed);
    return r.practice(r.between(30, 60), 6, r.between(4, 6), 8, 50);
  }

  /** A team's ordinary practice: 14 hitters, 3 stations, 4 rotations. */
  static Practice ordinary(long seed) {
    return new RandomPractice(seed).practice(14, 3, 3, 4, 40);
  }

  private int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  private Practice practice(int hitters, int stations, int adults, int rotations, int drills) {
    int stay = between(6, 9);
    int largest = (hitters + stations - 1) / stations;
    int youngest = between(1, 3);
    List<int[]> rungs =
        IntStream.range(0, hitters)
            .mapToObj(h -> random.ints(4, youngest, Math.min(6, youngest + 3)).toArray())
            .toList();
    List<Drill> chosen = drills(rungs, drills);
    List<Task> tasks = chosen.stream().map(d -> task(d, stay, largest)).toList();
    List<Hitter> players = new ArrayList<>();
    for (int h = 0; h < hitters; h++) {
      players.add(hitter(h, rungs.get(h), chosen));
    }
    Map<String, Integer> stock =
        Map.of("tee", between(1, adults), "screen", between(1, adults), "net", between(1, 2));
    return new Practice(players, tasks, stations, adults, rotations, adults > 3 ? 4 : 3, 1, stock);
  }

  /** A tee for everybody, one thing to watch, and others drawn from what anybody may do. */
  private List<Drill> drills(List<int[]> rungs, int most) {
    List<Drill> open =
        new ArrayList<>(
            CURRICULUM.drills().values().stream()
                .filter(d -> d.at(Place.FIELD) && d.helpers() == 0)
                .filter(d -> rungs.stream().anyMatch(r -> r[d.skill().ordinal()] >= easiest(d)))
                .sorted(Comparator.comparing(Drill::id))
                .toList());
    Set<Drill> chosen = new HashSet<>();
    chosen.add(CURRICULUM.drill("swing-and-stand"));
    chosen.add(CURRICULUM.drill("watch-behind-net"));
    while (chosen.size() < most && !open.isEmpty()) {
      chosen.add(open.remove(random.nextInt(open.size())));
    }
    return chosen.stream().sorted(Comparator.comparing(Drill::id)).toList();
  }

  private static int easiest(Drill drill) {
    return CURRICULUM.ladders().get(drill.skill()).steps().stream()
        .filter(s -> s.drills().contains(drill.id()))
        .mapToInt(Step::rung)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private static Task task(Drill drill, int stay, int largest) {
    int tosses = Math.max(1, Math.min(drill.reps(), (int) (stay * drill.perMinute() / largest)));
    Set<String> gear = new HashSet<>(drill.gear());
    gear.retainAll(Set.of("tee", "screen", "net"));
    boolean idle = !drill.swing() || drill.id().equals("swing-and-stand");
    return new Task(
        drill.id(),
        drill.skill(),
        drill.adults() > 0,
        drill.swing() ? Math.max(1, tosses * drill.swings() / drill.reps()) : 0,
        drill.adults() == 0 || (drill.skill() != Skill.SEE && idle),
        gear);
  }

  private Hitter hitter(int number, int[] rungs, List<Drill> drills) {
    Skill first = Skill.values()[random.nextInt(4)];
    Skill second = Skill.values()[(first.ordinal() + between(1, 3)) % 4];
    List<Need> needs = new ArrayList<>();
    List<Integer> had = new ArrayList<>();
    for (Drill drill : drills) {
      int rung = rungs[drill.skill().ordinal()];
      Step step = CURRICULUM.ladders().get(drill.skill()).steps().get(rung - 1);
      had.add(random.nextInt(5));
      if (!step.drills().contains(drill.id()) && rung < easiest(drill)) {
        needs.add(Need.NOT_YET);
      } else if (drill.skill() != first && drill.skill() != second) {
        needs.add(Need.OTHER);
      } else if (!step.drills().contains(drill.id())) {
        needs.add(Need.EASIER);
      } else {
        needs.add(drill.skill() == first ? Need.FIRST : Need.SECOND);
      }
    }
    return new Hitter(
        "h%02d".formatted(number),
        "%d.%d %d.%d"
            .formatted(
                first.ordinal(), rungs[first.ordinal()], second.ordinal(), rungs[second.ordinal()]),
        random.nextInt(10) < 7 ? Bats.RIGHT : random.nextInt(4) == 0 ? Bats.SWITCH : Bats.LEFT,
        random.nextInt(8) == 0 ? 1 : 0,
        random.nextInt(8) == 0 ? between(6, 20) : 60,
        Set.of(first, second),
        needs,
        had);
  }
}
