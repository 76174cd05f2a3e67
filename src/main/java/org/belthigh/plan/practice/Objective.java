package org.belthigh.plan.practice;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.belthigh.model.Bats;
import org.belthigh.model.Skill;

/**
 * What makes one arrangement better than another: the only definition, for the search, for the
 * proofs and for {@code docs/planning.md}.
 *
 * <p>Limits come first: an arrangement that breaks fewer is better, whatever it scores. Then points
 * decide. All weights are ours, common practice.
 */
public final class Objective {
  /** Each skill of the week that a hitter meets at all. */
  static final int MET = 80;

  /** Each swing that all hitters have, per hitter. */
  static final int SWING = 2;

  /** Each time that a hitter has had the task so far, up to {@link #MOST_HAD}, per visit. */
  static final int HAD = 3;

  static final int MOST_HAD = 4;

  /** A second visit to the same task, per hitter. */
  static final int AGAIN = 6;

  /** A visit without a ball or a bat to a station with a grown-up, per hitter. */
  static final int BARE = 15;

  /** Each task that a coach has to explain. */
  static final int EXPLAIN = 60;

  /** Each task that one station has to be set up for. */
  static final int SET_UP = 40;

  /** Each time that a station goes from one task straight to another. */
  static final int CHANGE = 15;

  /** Each hitter of the rarer side in a squad: plate, screen and tee are moved for them. */
  static final int SIDE = 8;

  /** Each further distance that tosses come from in a squad. */
  static final int DISTANCE = 25;

  /** More than any points: one broken limit outweighs all of them. */
  static final long FAULT = 1_000_000_000L;

  /**
   * A limit of safety, of gear or of reading, against a squad that does not bat: no bat without a
   * grown-up so that everybody bats.
   */
  private static final int NEVER = 100;

  private final Practice practice;
  private final int stations;
  private final int rotations;
  private final int[] swings;
  private final boolean[] adult;
  private final boolean[] bare;
  private final int[] skill;
  private final int[] stock;
  private final int[] takes;
  private final int[] commonSwings;
  private final int[][] visits;
  private final boolean[][] barred;

  /**
   * Which squad is where, and whether a grown-up is with it: asked for a million times a second.
   */
  private final int[][] squadAt;

  private final boolean[][] grownUpWith;

  /** Things that there is one of, at least, as a set. */
  private final int inStock;

  /** The objective of {@code practice}. */
  public Objective(Practice practice) {
    this.practice = practice;
    this.stations = practice.stations();
    this.rotations = practice.rotations();
    List<Task> tasks = practice.tasks();
    this.swings = tasks.stream().mapToInt(Task::swings).toArray();
    this.skill = tasks.stream().mapToInt(t -> t.skill().ordinal()).toArray();
    this.adult = new boolean[tasks.size()];
    this.bare = new boolean[tasks.size()];
    this.takes = new int[tasks.size()];
    List<String> gear =
        new TreeSet<>(practice.stock().keySet())
            .stream().filter(thing -> mayRunShort(practice, thing)).toList();
    this.stock = gear.stream().mapToInt(practice.stock()::get).toArray();
    for (int t = 0; t < adult.length; t++) {
      adult[t] = tasks.get(t).adult();
      bare[t] = tasks.get(t).bare();
      for (int g = 0; g < stock.length; g++) {
        takes[t] |= tasks.get(t).gear().contains(gear.get(g)) ? 1 << g : 0;
      }
    }
    int has = 0;
    for (int g = 0; g < stock.length; g++) {
      has |= stock[g] > 0 ? 1 << g : 0;
    }
    this.inStock = has;
    this.squadAt = new int[stations][rotations];
    this.grownUpWith = new boolean[stations][rotations];
    for (int s = 0; s < stations; s++) {
      for (int r = 0; r < rotations; r++) {
        squadAt[s][r] = practice.squad(s, r);
        grownUpWith[squadAt[s][r]][r] = practice.adultAt(s);
      }
    }
    int hitters = practice.hitters().size();
    this.visits = new int[hitters][adult.length];
    this.barred = new boolean[hitters][adult.length];
    for (int h = 0; h < hitters; h++) {
      Hitter hitter = practice.hitters().get(h);
      for (int t = 0; t < adult.length; t++) {
        visits[h][t] = visit(hitter, t);
        barred[h][t] = hitter.needs().get(t) == Need.NOT_YET;
      }
    }
    int most = rotations * Arrays.stream(swings).max().orElse(0);
    this.commonSwings = new int[most + 1];
    for (int n = 0; n <= most; n++) {
      for (Hitter hitter : practice.hitters()) {
        commonSwings[n] += Math.min(n, hitter.swingsLeft());
      }
    }
  }

  /** Whether more stations may ask for a thing than there are of it. */
  private static boolean mayRunShort(Practice practice, String thing) {
    return practice.stock().get(thing) < practice.stations()
        && practice.tasks().stream().anyMatch(task -> task.gear().contains(thing));
  }

  /** What depends on who is in a squad, and not on what it does. */
  static final class Squad {
    int size;
    int mixed;
    final int[] visit;
    final boolean[] barred;
    final int[] meets = new int[Skill.values().length];

    private Squad(int tasks) {
      visit = new int[tasks];
      barred = new boolean[tasks];
    }
  }

  /** Sums up squad {@code number} of {@code squadOf}. */
  Squad squad(int[] squadOf, int number) {
    Squad squad = new Squad(swings.length);
    int left = 0;
    int right = 0;
    long distances = 0;
    for (int h = 0; h < squadOf.length; h++) {
      if (squadOf[h] != number) {
        continue;
      }
      Hitter hitter = practice.hitters().get(h);
      squad.size++;
      left += hitter.bats() == Bats.LEFT ? 1 : 0;
      right += hitter.bats() == Bats.RIGHT ? 1 : 0;
      distances |= 1L << hitter.distances();
      for (Skill skill : hitter.week()) {
        squad.meets[skill.ordinal()] += MET;
      }
      for (int t = 0; t < swings.length; t++) {
        squad.visit[t] += visits[h][t];
        squad.barred[t] |= barred[h][t];
      }
    }
    squad.mixed =
        SIDE * Math.min(left, right) + DISTANCE * Math.max(0, Long.bitCount(distances) - 1);
    return squad;
  }

  /** What one visit to a task is worth to one hitter. */
  private int visit(Hitter hitter, int task) {
    return hitter.needs().get(task).points() - HAD * Math.min(MOST_HAD, hitter.had().get(task));
  }

  /**
   * What squads, stations and rotations add to a score: each by itself, so that who changes one
   * reckons that one anew.
   */
  final class Ledger {
    /** By squad: what it adds by what it does itself, limits that it breaks, its swings. */
    private final int[] points = new int[stations];

    private final int[] faults = new int[stations];
    private final int[] capacity = new int[stations];

    /** By station: points for setting up and changing, and its tasks as a set. */
    private final int[] costs = new int[stations];

    private final long[] here = new long[stations];

    /** By rotation: stations that would need a thing which others use. */
    private final int[] missing = new int[rotations];

    /** The entries of all. */
    Ledger(Squad[] squads, int[][] posts) {
      for (int q = 0; q < stations; q++) {
        squad(squads[q], q, posts[q]);
        station(q, posts);
      }
      for (int r = 0; r < rotations; r++) {
        rotation(r, posts);
      }
    }

    /** Enters squad {@code number} with the tasks {@code own}, rotation by rotation. */
    void squad(Squad squad, int number, int[] own) {
      int sum = -squad.mixed;
      int broken = 0;
      int skills = 0;
      int room = 0;
      // tasks visited, and visited again: a squad has two visits to one at most
      long once = 0;
      long twice = 0;
      for (int r = 0; r < rotations; r++) {
        int t = own[r];
        if (t < 0) {
          continue;
        }
        boolean grownUp = grownUpWith[number][r];
        long task = 1L << t;
        if ((once & task) != 0) {
          broken += (twice & task) != 0 ? NEVER : 0;
          sum -= AGAIN * squad.size;
          twice |= task;
        }
        once |= task;
        broken += squad.barred[t] ? NEVER : 0;
        broken += adult[t] && !grownUp ? NEVER : 0;
        sum += squad.visit[t];
        sum -= grownUp && bare[t] ? BARE * squad.size : 0;
        skills |= 1 << skill[t];
        room += swings[t];
      }
      for (int k = 0; k < squad.meets.length; k++) {
        sum += (skills & 1 << k) != 0 ? squad.meets[k] : 0;
      }
      points[number] = sum;
      faults[number] = broken + (room == 0 ? 1 : 0);
      capacity[number] = room;
    }

    /** Enters what it costs to set up station {@code number} and to change there. */
    void station(int number, int[][] posts) {
      int sum = 0;
      long tasks = 0;
      int last = -1;
      for (int r = 0; r < rotations; r++) {
        int t = posts[squadAt[number][r]][r];
        if (t >= 0) {
          tasks |= 1L << t;
          sum += last >= 0 && last != t ? CHANGE : 0;
        }
        last = t;
      }
      costs[number] = sum + SET_UP * Long.bitCount(tasks);
      here[number] = tasks;
    }

    /** Enters the stations that want for a thing in rotation {@code number}. */
    void rotation(int number, int[][] posts) {
      int used = 0;
      boolean enough = true;
      for (int[] own : posts) {
        int taken = own[number] < 0 ? 0 : takes[own[number]];
        enough &= (taken & (used | ~inStock)) == 0;
        used |= taken;
      }
      missing[number] = enough ? 0 : shortages(posts, number);
    }

    void squadAs(Ledger other, int number) {
      points[number] = other.points[number];
      faults[number] = other.faults[number];
      capacity[number] = other.capacity[number];
    }

    void stationAs(Ledger other, int number) {
      costs[number] = other.costs[number];
      here[number] = other.here[number];
    }

    void rotationAs(Ledger other, int number) {
      missing[number] = other.missing[number];
    }

    /** Points less broken limits; higher is better. */
    long score() {
      int sum = 0;
      int broken = 0;
      int common = commonSwings.length - 1;
      long taught = 0;
      long watched = 0;
      for (int i = 0; i < stations; i++) {
        sum += points[i] - costs[i];
        broken += faults[i];
        common = capacity[i] == 0 ? common : Math.min(common, capacity[i]);
        if (practice.adultAt(i)) {
          taught |= here[i];
        } else {
          watched |= here[i];
        }
      }
      sum += SWING * commonSwings[common] - EXPLAIN * Long.bitCount(taught | watched);
      int never =
          Math.max(0, Long.bitCount(taught) - practice.taughtMost())
              + Math.max(0, Long.bitCount(watched) - practice.watchedMost());
      for (int wanting : missing) {
        never += wanting;
      }
      return sum - FAULT * (broken + NEVER * never);
    }
  }

  private int shortages(int[][] posts, int rotation) {
    int missing = 0;
    for (int g = 0; g < stock.length; g++) {
      int used = 0;
      for (int[] own : posts) {
        used += own[rotation] >= 0 && (takes[own[rotation]] & 1 << g) != 0 ? 1 : 0;
      }
      missing += Math.max(0, used - stock[g]);
    }
    return missing;
  }

  /** The score of squads that are summed up. */
  long of(Squad[] squads, int[][] posts) {
    return new Ledger(squads, posts).score();
  }

  /** The score of a whole arrangement. */
  long of(Arrangement arrangement) {
    return of(squads(arrangement.squadOf()), arrangement.posts());
  }

  /** Sums up every squad of {@code squadOf}. */
  Squad[] squads(int[] squadOf) {
    Squad[] squads = new Squad[stations];
    Arrays.setAll(squads, q -> squad(squadOf, q));
    return squads;
  }

  /**
   * Swings that every hitter has who may: those of the squad with the fewest. A squad for which no
   * gear is left bats not at all, and takes no swing from the others.
   */
  public int common(Arrangement arrangement) {
    int common = commonSwings.length - 1;
    for (int[] own : arrangement.posts()) {
      int capacity = capacity(own);
      common = capacity == 0 ? common : Math.min(common, capacity);
    }
    return common;
  }

  private int capacity(int[] own) {
    int capacity = 0;
    for (int t : own) {
      capacity += t < 0 ? 0 : swings[t];
    }
    return capacity;
  }

  /** How many limits an arrangement with that score breaks. */
  static int faults(long score) {
    return (int) Math.max(0, Math.round(-score / (double) FAULT));
  }
}
