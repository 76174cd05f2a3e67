package org.belthigh.plan.practice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Finds a good arrangement: hitters of like need side by side, tasks filled in greedily, then small
 * changes, of which a loss is accepted too as long as it is below a threshold that sinks to
 * nothing.
 *
 * <p>Bounded by steps, never by the clock; whole numbers throughout; the draws come from a fixed
 * seed, and hitters are sorted by id. So the same practice has the same answer everywhere.
 */
public final class Search {
  private static final long SEED = 20270405L;

  /** Where the threshold begins, in points. */
  private static final long WIDEST = 150;

  /** Fewest steps, some milliseconds: enough for a team of 14. */
  private static final int LEAST_STEPS = 30_000;

  /** Steps for each hitter and for each post; docs/planning.md shows the gap that they leave. */
  private static final int STEPS_EACH = 960;

  /** Fresh starts of a practice with steps to spare; a larger one needs them all in one. */
  private static final int STARTS = 4;

  private final Practice practice;
  private final Objective objective;
  private final SplittableRandom draws = new SplittableRandom(SEED);
  private final int hitters;
  private final int tasks;
  private final int squads;
  private final int rotations;

  private final boolean squadsStay;
  private Draft now;
  private long score;

  private Search(Practice practice, boolean squadsStay) {
    this.squadsStay = squadsStay;
    this.practice = practice;
    this.objective = new Objective(practice);
    this.hitters = practice.hitters().size();
    this.tasks = practice.tasks().size();
    this.squads = practice.stations();
    this.rotations = practice.rotations();
  }

  /** Steps that leave a small gap: more for a larger practice. */
  static int steps(Practice practice) {
    int posts = practice.stations() * practice.rotations();
    return Math.max(LEAST_STEPS, STEPS_EACH * (posts + practice.hitters().size()));
  }

  /** A good arrangement of {@code practice}, found in a bounded number of steps. */
  public static Arrangement best(Practice practice) {
    return best(practice, Effort.USUAL);
  }

  /** The same with less effort. */
  public static Arrangement best(Practice practice, Effort effort) {
    Search search = new Search(practice, false);
    return search.best(search.neighbours(), effort);
  }

  /**
   * A good arrangement of {@code practice} for squads that are made already.
   *
   * @param squadOf the squad of each hitter, in the order of the practice's hitters
   */
  public static Arrangement best(Practice practice, int[] squadOf, Effort effort) {
    return new Search(practice, true).best(squadOf, effort);
  }

  private Arrangement best(int[] squadOf, Effort effort) {
    int usual = steps(practice);
    int steps = effort.of(usual);
    int starts = usual > LEAST_STEPS ? 1 : STARTS;
    Arrangement best = null;
    long bestScore = Long.MIN_VALUE;
    for (int start = 0; start < starts; start++) {
      begin(squadOf);
      Arrangement found = improve(steps / starts);
      long reached = objective.of(found);
      if (reached > bestScore) {
        best = found;
        bestScore = reached;
      }
    }
    return best;
  }

  /** Squads of neighbours in need, whose sizes differ by one at the most. */
  private int[] neighbours() {
    Integer[] order = IntStream.range(0, hitters).boxed().toArray(Integer[]::new);
    Arrays.sort(order, Comparator.comparing(h -> practice.hitters().get(h).alike()));
    int[] squadOf = new int[hitters];
    int from = 0;
    for (int q = 0; q < squads; q++) {
      int to = from + (hitters - from) / (squads - q);
      for (int i = from; i < to; i++) {
        squadOf[order[i]] = q;
      }
      from = to;
    }
    return squadOf;
  }

  /** Tasks one by one. */
  private void begin(int[] squadOf) {
    now = new Draft(practice, objective, squadOf);
    score = now.score();
    for (int r = 0; r < rotations; r++) {
      for (int q = 0; q < squads; q++) {
        fill(q, r);
      }
    }
  }

  /** The best task for one post as the others stand. */
  private void fill(int squad, int rotation) {
    int best = Arrangement.FIELDS;
    for (int t = 0; t < tasks; t++) {
      now.post(squad, rotation, t);
      long tried = now.score();
      if (tried > score) {
        score = tried;
        best = t;
      }
    }
    now.post(squad, rotation, best);
    now.keep();
  }

  private Arrangement improve(int steps) {
    Arrangement best = now.copy();
    long bestScore = score;
    for (int step = 0; step < steps; step++) {
      long least = score - WIDEST * (steps - step) / steps;
      boolean exchanges = draws.nextInt(4) == 0 && !squadsStay;
      if (exchanges) {
        exchange();
      } else {
        replan();
      }
      if (now.isChanged() && settle(least) && score > bestScore) {
        best = now.copy();
        bestScore = score;
      }
    }
    return best;
  }

  /** Keeps what was changed where it scores {@code least} or more. */
  private boolean settle(long least) {
    long tried = now.score();
    if (tried < least) {
      now.undo();
      return false;
    }
    now.keep();
    score = tried;
    return true;
  }

  /** Two hitters change squads, or one moves over where squads stay within one of each other. */
  private void exchange() {
    int one = draws.nextInt(hitters);
    int from = now.squadOf(one);
    int to = draws.nextInt(squads);
    if (from == to) {
      return;
    }
    int other = draws.nextInt(hitters);
    if (now.sizeOf(from) > now.sizeOf(to) && draws.nextInt(3) == 0) {
      now.move(one, to);
    } else if (now.squadOf(other) == to) {
      now.move(one, to);
      now.move(other, from);
    }
  }

  /** Other tasks for a post, for two posts, for a whole station, or for all posts of a task. */
  private void replan() {
    int q = draws.nextInt(squads);
    int r = draws.nextInt(rotations);
    switch (draws.nextInt(8)) {
      case 0, 1 -> now.post(q, r, anyTask());
      case 2 -> now.post(q, r, usedTask());
      case 3, 4 -> replace(usedTask(), anyTask());
      case 5 -> swap(q, r, q, draws.nextInt(rotations));
      case 6 -> swap(q, r, draws.nextInt(squads), r);
      default -> keep(practice.station(q, r), draws.nextBoolean() ? usedTask() : anyTask());
    }
  }

  private int anyTask() {
    return draws.nextInt(tasks + 1) - 1;
  }

  private int usedTask() {
    return now.task(draws.nextInt(squads), draws.nextInt(rotations));
  }

  private void replace(int old, int task) {
    for (int q = 0; q < squads; q++) {
      for (int r = 0; r < rotations; r++) {
        if (now.task(q, r) == old) {
          now.post(q, r, task);
        }
      }
    }
  }

  private void swap(int q, int r, int otherSquad, int otherRotation) {
    int task = now.task(q, r);
    now.post(q, r, now.task(otherSquad, otherRotation));
    now.post(otherSquad, otherRotation, task);
  }

  /** One station keeps one task all practice long. */
  private void keep(int station, int task) {
    for (int r = 0; r < rotations; r++) {
      now.post(practice.squad(station, r), r, task);
    }
  }
}
