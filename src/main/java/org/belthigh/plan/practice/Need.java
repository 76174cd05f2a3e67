package org.belthigh.plan.practice;

/**
 * How well a task serves a hitter, and what one visit to it is worth.
 *
 * <p>The points are ours, common practice: what the week is about counts several times as much as
 * anything else, and the more pressing of its two skills a little more than the other.
 */
public enum Need {
  /** The step that the hitter works on, in the more pressing skill of the week. */
  FIRST(60),
  /** The step that the hitter works on, in the other skill of the week. */
  SECOND(50),
  /** A skill of the week on a step that lies behind: it firms up, and teaches less. */
  EASIER(30),
  /** A skill that the week is not about. */
  OTHER(10),
  /** A step that lies ahead, so that something has to be in place before it: never asked for. */
  NOT_YET(0);

  private final int points;

  Need(int points) {
    this.points = points;
  }

  /** What one visit is worth to the hitter, in points. */
  int points() {
    return points;
  }
}
