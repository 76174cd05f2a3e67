package org.belthigh.model;

/** When the bat came through, against the ball. */
public enum Timing implements Coded {
  EARLY,
  ON,
  LATE
}
