package org.belthigh.plan.practice;

import java.util.Arrays;

/**
 * An arrangement that is being changed, and its score: only what a change touches is reckoned anew.
 *
 * <p>A change is any number of {@link #post} and {@link #move}; after its {@link #score} it is kept
 * or undone.
 */
final class Standing {
  private final Practice practice;
  private final Objective objective;
  private final int[] squadOf;
  private final int[][] posts;
  private final Objective.Squad[] squads;
  private final Objective.Ledger ledger;

  private final int[] squadOfKept;
  private final int[][] postsKept;
  private final Objective.Squad[] squadsKept;
  private final Objective.Ledger ledgerKept;

  private final Touched touchedSquads;
  private final Touched touchedStations;
  private final Touched touchedRotations;
  private boolean moved;

  /** Squads as given; nobody has a task yet. */
  Standing(Practice practice, Objective objective, int[] squadOf) {
    int stations = practice.stations();
    int rotations = practice.rotations();
    this.practice = practice;
    this.objective = objective;
    this.squadOf = squadOf.clone();
    this.squadOfKept = squadOf.clone();
    this.posts = new int[stations][rotations];
    this.postsKept = new int[stations][rotations];
    this.squads = new Objective.Squad[stations];
    for (int q = 0; q < stations; q++) {
      Arrays.fill(posts[q], Arrangement.FIELDS);
      Arrays.fill(postsKept[q], Arrangement.FIELDS);
      squads[q] = objective.squad(squadOf, q);
    }
    this.squadsKept = squads.clone();
    this.ledger = objective.new Ledger(squads, posts);
    this.ledgerKept = objective.new Ledger(squads, posts);
    this.touchedSquads = new Touched(stations);
    this.touchedStations = new Touched(stations);
    this.touchedRotations = new Touched(rotations);
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
    return posts[squad][rotation];
  }

  int squadOf(int hitter) {
    return squadOf[hitter];
  }

  int sizeOf(int squad) {
    return squads[squad].size;
  }

  /** Gives a squad a task in a rotation. */
  void post(int squad, int rotation, int task) {
    if (posts[squad][rotation] != task) {
      posts[squad][rotation] = task;
      touchedSquads.add(squad);
      touchedStations.add(practice.station(squad, rotation));
      touchedRotations.add(rotation);
    }
  }

  /** Puts a hitter into a squad. */
  void move(int hitter, int squad) {
    touchedSquads.add(squadOf[hitter]);
    touchedSquads.add(squad);
    squadOf[hitter] = squad;
    moved = true;
  }

  /** Whether anything was touched that is neither kept nor undone yet. */
  boolean isChanged() {
    return touchedSquads.count > 0;
  }

  /** The score of what stands now. */
  long score() {
    for (int i = 0; i < touchedSquads.count; i++) {
      int q = touchedSquads.which[i];
      if (moved) {
        squads[q] = objective.squad(squadOf, q);
      }
      ledger.squad(squads[q], q, posts[q]);
    }
    for (int i = 0; i < touchedStations.count; i++) {
      ledger.station(touchedStations.which[i], posts);
    }
    for (int i = 0; i < touchedRotations.count; i++) {
      ledger.rotation(touchedRotations.which[i], posts);
    }
    return ledger.score();
  }

  /** What was changed stays. */
  void keep() {
    settle(ledger, ledgerKept, squads, squadsKept, posts, postsKept, squadOf, squadOfKept);
  }

  /** All is as it was kept last. */
  void undo() {
    settle(ledgerKept, ledger, squadsKept, squads, postsKept, posts, squadOfKept, squadOf);
  }

  /** Copies what was touched. */
  private void settle(
      Objective.Ledger from,
      Objective.Ledger to,
      Objective.Squad[] squadsFrom,
      Objective.Squad[] squadsTo,
      int[][] postsFrom,
      int[][] postsTo,
      int[] squadOfFrom,
      int[] squadOfTo) {
    for (int i = 0; i < touchedSquads.count; i++) {
      int q = touchedSquads.which[i];
      to.squadAs(from, q);
      squadsTo[q] = squadsFrom[q];
      System.arraycopy(postsFrom[q], 0, postsTo[q], 0, postsTo[q].length);
    }
    for (int i = 0; i < touchedStations.count; i++) {
      to.stationAs(from, touchedStations.which[i]);
    }
    for (int i = 0; i < touchedRotations.count; i++) {
      to.rotationAs(from, touchedRotations.which[i]);
    }
    if (moved) {
      System.arraycopy(squadOfFrom, 0, squadOfTo, 0, squadOfTo.length);
      moved = false;
    }
    touchedSquads.clear();
    touchedStations.clear();
    touchedRotations.clear();
  }

  /** What stands now, apart from what is changed later. */
  Arrangement copy() {
    return new Arrangement(squadOf, posts).copy();
  }
}
