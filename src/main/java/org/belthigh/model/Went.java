package org.belthigh.model;

import java.util.Optional;

/** Where a swung-at ball went. A foul or a pop-up does not count as sent to a field. */
public enum Went implements Coded {
  LEFT,
  LEFT_CENTER,
  CENTER,
  RIGHT_CENTER,
  RIGHT,
  FOUL,
  POP_UP,
  NONE;

  /** The field it went to, or empty. */
  public Optional<Field> field() {
    return ordinal() <= RIGHT.ordinal() ? Optional.of(Field.values()[ordinal()]) : Optional.empty();
  }
}
