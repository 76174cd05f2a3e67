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
  private final int tasks;
  private final int squads;
  private final int rotations;

  private Arrangement now;
  private Objective.Squad[] sums;
  private Objective.Part[] parts;
  private long score;
  private final int[][] before;
  private final Objective.Part[] partsBefore;
  private final boolean squadsStay;

  private Search(Practice practice, boolean squadsStay) {
    this.squadsStay = squadsStay;
    this.practice = practice;
    this.objective = new Objective(practice);
    this.tasks = practice.tasks().size();
    this.squads = practice.stations();
    this.rotations = practice.rotations();
    this.before = new int[squads][rotations];
    this.partsBefore = new Objective.Part[squads];
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
      begin(squadOf.clone());
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
    int hitters = practice.hitters().size();
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
    int[][] posts = new int[squads][rotations];
    for (int[] own : posts) {
      Arrays.fill(own, Arrangement.FIELDS);
    }
    now = new Arrangement(squadOf, posts);
    sums = new Objective.Squad[squads];
    parts = new Objective.Part[squads];
    for (int q = 0; q < squads; q++) {
      sums[q] = objective.squad(squadOf, q);
      parts[q] = objective.part(sums[q], q, posts[q]);
    }
    score = objective.of(parts, posts);
    for (int r = 0; r < rotations; r++) {
      for (int q = 0; q < squads; q++) {
        fill(q, r);
      }
    }
  }

  /** The best task for one post as the others stand. */
  private void fill(int squad, int rotation) {
    int[] own = now.posts()[squad];
    int best = own[rotation];
    for (int t = Arrangement.FIELDS; t < tasks; t++) {
      own[rotation] = t;
      parts[squad] = objective.part(sums[squad], squad, own);
      long tried = objective.of(parts, now.posts());
      if (tried > score) {
        score = tried;
        best = t;
      }
    }
    own[rotation] = best;
    parts[squad] = objective.part(sums[squad], squad, own);
  }

  private Arrangement improve(int steps) {
    Arrangement best = now.copy();
    long bestScore = score;
    for (int step = 0; step < steps; step++) {
      long least = score - WIDEST * (steps - step) / steps;
      boolean exchanges = draws.nextInt(4) == 0 && !squadsStay;
      boolean kept = exchanges ? exchange(least) : replan(least);
      if (kept && score > bestScore) {
        best = now.copy();
        bestScore = score;
      }
    }
    return best;
  }

  /** Two hitters change squads, or one moves over where squads stay within one of each other. */
  private boolean exchange(long least) {
    int[] squadOf = now.squadOf();
    int one = draws.nextInt(squadOf.length);
    int from = squadOf[one];
    int to = draws.nextInt(squads);
    if (from == to) {
      return false;
    }
    int other = draws.nextInt(squadOf.length);
    boolean moves = sums[from].size > sums[to].size && draws.nextInt(3) == 0;
    if (!moves && squadOf[other] != to) {
      return false;
    }
    Objective.Squad fromBefore = sums[from];
    Objective.Squad toBefore = sums[to];
    System.arraycopy(parts, 0, partsBefore, 0, squads);
    squadOf[one] = to;
    if (!moves) {
      squadOf[other] = from;
    }
    sums[from] = objective.squad(squadOf, from);
    sums[to] = objective.squad(squadOf, to);
    parts[from] = objective.part(sums[from], from, now.posts()[from]);
    parts[to] = objective.part(sums[to], to, now.posts()[to]);
    long tried = objective.of(parts, now.posts());
    if (tried >= least) {
      score = tried;
      return true;
    }
    squadOf[one] = from;
    if (!moves) {
      squadOf[other] = to;
    }
    sums[from] = fromBefore;
    sums[to] = toBefore;
    System.arraycopy(partsBefore, 0, parts, 0, squads);
    return false;
  }

  /** Other tasks for a post, for two posts, for a whole station, or for all posts of a task. */
  private boolean replan(long least) {
    int[][] posts = now.posts();
    for (int q = 0; q < squads; q++) {
      System.arraycopy(posts[q], 0, before[q], 0, rotations);
    }
    System.arraycopy(parts, 0, partsBefore, 0, squads);
    int q = draws.nextInt(squads);
    int r = draws.nextInt(rotations);
    switch (draws.nextInt(8)) {
      case 0, 1 -> posts[q][r] = anyTask();
      case 2 -> posts[q][r] = usedTask();
      case 3, 4 -> replace(posts, usedTask(), anyTask());
      case 5 -> swap(posts, q, r, q, draws.nextInt(rotations));
      case 6 -> swap(posts, q, r, draws.nextInt(squads), r);
      default -> keep(posts, practice.station(q, r), draws.nextBoolean() ? usedTask() : anyTask());
    }
    boolean changed = false;
    for (int i = 0; i < squads; i++) {
      if (!Arrays.equals(before[i], posts[i])) {
        parts[i] = objective.part(sums[i], i, posts[i]);
        changed = true;
      }
    }
    if (!changed) {
      return true;
    }
    long tried = objective.of(parts, posts);
    if (tried >= least) {
      score = tried;
      return true;
    }
    for (int i = 0; i < squads; i++) {
      System.arraycopy(before[i], 0, posts[i], 0, rotations);
    }
    System.arraycopy(partsBefore, 0, parts, 0, squads);
    return false;
  }

  private int anyTask() {
    return draws.nextInt(tasks + 1) - 1;
  }

  private int usedTask() {
    return now.posts()[draws.nextInt(squads)][draws.nextInt(rotations)];
  }

  private static void replace(int[][] posts, int old, int task) {
    for (int[] own : posts) {
      for (int r = 0; r < own.length; r++) {
        own[r] = own[r] == old ? task : own[r];
      }
    }
  }

  private static void swap(int[][] posts, int q, int r, int otherSquad, int otherRotation) {
    int task = posts[q][r];
    posts[q][r] = posts[otherSquad][otherRotation];
    posts[otherSquad][otherRotation] = task;
  }

  /** One station keeps one task all practice long. */
  private void keep(int[][] posts, int station, int task) {
    for (int r = 0; r < rotations; r++) {
      posts[practice.squad(station, r)][r] = task;
    }
  }
}
