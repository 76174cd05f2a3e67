package org.belthigh.plan.practice;

import java.util.Arrays;

/**
 * An arrangement that is being changed, and its score: only what a change touches is reckoned anew.
 *
 * <p>A change is any number of {@link #post} and {@link #move}; it is kept or undone.
 */
final class Draft {
  private final Practice practice;
  private final Objective objective;
  private final State now;
  private final State kept;
  private final Touched squads;
  private final Touched stations;
  private final Touched rotations;
  private boolean moved;
  private boolean reckoned = true;

  /** Squads as given; nobody has a task yet. */
  Draft(Practice practice, Objective objective, int[] squadOf) {
    this.practice = practice;
    this.objective = objective;
    this.now = new State(practice, objective, squadOf);
    this.kept = new State(practice, objective, squadOf);
    this.squads = new Touched(practice.stations());
    this.stations = new Touched(practice.stations());
    this.rotations = new Touched(practice.rotations());
  }

  /** An arrangement with all that its score is made of. */
  private static final class State {
    private final int[] squadOf;
    private final int[][] posts;
    private final Objective.Squad[] squads;
    private final Objective.Ledger ledger;

    State(Practice practice, Objective objective, int[] squadOf) {
      this.squadOf = squadOf.clone();
      this.posts = new int[practice.stations()][practice.rotations()];
      for (int[] own : posts) {
        Arrays.fill(own, Arrangement.FIELDS);
      }
      this.squads = objective.squads(squadOf);
      this.ledger = objective.new Ledger(squads, posts);
    }
  }

  /** Places that a change touches, each once. */
  private static final class Touched {
    private final boolean[] is;
    private final int[] which;
    private int count;

    Touched(int places) {
      is = new boolean[places];
      which = new int[places];
    }

    void add(int place) {
      if (!is[place]) {
        is[place] = true;
        which[count++] = place;
      }
    }

    void clear() {
      for (int i = 0; i < count; i++) {
        is[which[i]] = false;
      }
      count = 0;
    }
  }

  int task(int squad, int rotation) {
    return now.posts[squad][rotation];
  }

  int squadOf(int hitter) {
    return now.squadOf[hitter];
  }

  int sizeOf(int squad) {
    return now.squads[squad].size;
  }

  /** Gives a squad a task in a rotation. */
  void post(int squad, int rotation, int task) {
    if (now.posts[squad][rotation] != task) {
      now.posts[squad][rotation] = task;
      squads.add(squad);
      stations.add(practice.station(squad, rotation));
      rotations.add(rotation);
      reckoned = false;
    }
  }

  /** Puts a hitter into a squad. */
  void move(int hitter, int squad) {
    squads.add(now.squadOf[hitter]);
    squads.add(squad);
    now.squadOf[hitter] = squad;
    moved = true;
    reckoned = false;
  }

  /** Whether anything was touched that is neither kept nor undone yet. */
  boolean isChanged() {
    return squads.count > 0;
  }

  /** The score of what stands now. */
  long score() {
    reckon();
    return now.ledger.score();
  }

  private void reckon() {
    if (reckoned) {
      return;
    }
    for (int i = 0; i < squads.count; i++) {
      int q = squads.which[i];
      if (moved) {
        now.squads[q] = objective.squad(now.squadOf, q);
      }
      now.ledger.squad(now.squads[q], q, now.posts[q]);
    }
    for (int i = 0; i < stations.count; i++) {
      now.ledger.station(stations.which[i], now.posts);
    }
    for (int i = 0; i < rotations.count; i++) {
      now.ledger.rotation(rotations.which[i], now.posts);
    }
    reckoned = true;
  }

  /** What was changed stays. */
  void keep() {
    reckon();
    settle(now, kept);
  }

  /** All is as it was kept last. */
  void undo() {
    settle(kept, now);
  }

  /** Copies what was touched. */
  private void settle(State from, State to) {
    for (int i = 0; i < squads.count; i++) {
      int q = squads.which[i];
      to.ledger.squadAs(from.ledger, q);
      to.squads[q] = from.squads[q];
      System.arraycopy(from.posts[q], 0, to.posts[q], 0, to.posts[q].length);
    }
    for (int i = 0; i < stations.count; i++) {
      to.ledger.stationAs(from.ledger, stations.which[i]);
    }
    for (int i = 0; i < rotations.count; i++) {
      to.ledger.rotationAs(from.ledger, rotations.which[i]);
    }
    if (moved) {
      System.arraycopy(from.squadOf, 0, to.squadOf, 0, to.squadOf.length);
      moved = false;
    }
    squads.clear();
    stations.clear();
    rotations.clear();
    reckoned = true;
  }

  /** What stands now, apart from what is changed later. */
  Arrangement copy() {
    return new Arrangement(now.squadOf, now.posts).copy();
  }
}
