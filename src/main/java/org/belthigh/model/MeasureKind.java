package org.belthigh.model;

/** What a tally counts. */
public enum MeasureKind implements Coded {
  ZONE_RECOGNITION,
  MIDDLE_TAKE,
  BALL_SWING,
  /** The swings of a whole round. */
  COUNTDOWN,
  /** Swings that hit it hard, of all swings of a drill about that which is no countdown. */
  HARD_HIT,
  FIELD_CALL
}
