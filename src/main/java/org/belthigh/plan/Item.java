package org.belthigh.plan;

import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Skill;

/**
 * One drill on one day.
 *
 * @param feet toss distance; 0 for a tee or no toss
 * @param reps tosses seen
 * @param swings full swings, at most {@code reps}
 * @param minutes of hitting work
 */
public record Item(
    String drill,
    Skill skill,
    String step,
    Ball ball,
    Feed feed,
    int feet,
    int reps,
    int swings,
    int minutes) {
  public Item {
    if (swings < 0 || swings > reps || minutes < 1 || feet < 0) {
      throw new IllegalArgumentException(
          "Item " + drill + " has swings " + swings + ", reps " + reps + ", minutes " + minutes);
    }
  }
}
