package org.belthigh.model;

/** What a tally counts. */
public enum MeasureKind implements Coded {
  ZONE_RECOGNITION,
  MIDDLE_TAKE,
  BALL_SWING,
  COUNTDOWN,
  FIELD_CALL
}
