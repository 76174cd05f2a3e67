package org.belthigh.model;

/** How well a swing met the ball. Only {@link #HARD} costs one in the countdown. */
public enum Hit implements Coded {
  HARD,
  SOFT,
  MISS,
  FOUL
}
