package org.belthigh.model;

/** The five fields that can be called, from the left-field line to the right-field line. */
public enum Field implements Coded {
  LEFT,
  LEFT_CENTER,
  CENTER,
  RIGHT_CENTER,
  RIGHT;

  /**
   * Whether a hitter who stands on {@code side} and called this field wants {@code spot}.
   *
   * <p>Belt row only: pull side wants in and middle (4, 5), opposite field middle and away (5, 6),
   * straight-away centre all three. Source: common practice, see {@code design} counting rules.
   */
  public boolean wants(Spot spot, Side side) {
    if (!spot.beltHigh()) {
      return false;
    }
    Column column = spot.column().orElseThrow();
    return switch (direction(side)) {
      case PULL -> column != Column.AWAY;
      case OPPOSITE -> column != Column.IN;
      case CENTER -> true;
    };
  }

  /** Where this field lies for a hitter who stands on {@code side}. */
  public Direction direction(Side side) {
    if (this == CENTER) {
      return Direction.CENTER;
    }
    boolean leftHalf = this == LEFT || this == LEFT_CENTER;
    return leftHalf == (side == Side.RIGHT) ? Direction.PULL : Direction.OPPOSITE;
  }

  /** A field as seen from the hitter. */
  public enum Direction implements Coded {
    PULL,
    CENTER,
    OPPOSITE
  }
}
