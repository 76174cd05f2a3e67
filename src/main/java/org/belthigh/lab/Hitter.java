package org.belthigh.lab;

import org.belthigh.model.Coded;

/**
 * A kind of hitter, by the true chance of success week by week.
 *
 * <p>0 is the floor of the step, 1 its mark; above 1 lies better than the mark.
 */
public enum Hitter implements Coded {
  /** At the floor all season: any move up is false. */
  AT_FLOOR,
  /** At the mark all season: any firm-up is false. */
  AT_MARK,
  /** Half way between. */
  BETWEEN,
  /** From the floor in the first week past the mark in the sixth, then better still. */
  LEARNING,
  /** At the mark, but for two weeks at the floor. */
  SLUMPING;

  private static final int CROSSING = 5;
  private static final int SLUMP_FROM = 4;
  private static final int SLUMP_TO = 5;

  /** The level in week {@code week}, 0 for the first. */
  double level(int week) {
    return switch (this) {
      case AT_FLOOR -> 0;
      case AT_MARK -> 1;
      case BETWEEN -> 0.5;
      case LEARNING -> Math.min(1.25, (double) week / CROSSING);
      case SLUMPING -> week >= SLUMP_FROM && week <= SLUMP_TO ? 0 : 1;
    };
  }

  /** The chance in week {@code week} for a step with that floor and mark; kept within 1 to 99 %. */
  double chance(int week, double floor, double mark) {
    return Math.min(0.99, Math.max(0.01, floor + level(week) * (mark - floor)));
  }
}
