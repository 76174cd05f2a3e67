package org.belthigh.model;

/** How finely a spot is called; beginners tell strike from ball, then height, then side. */
public enum Grain implements Coded {
  STRIKE,
  ROW,
  COLUMN,
  NINE;

  /**
   * What {@code spot} looks like at this grain: {@code strike}, a row, a column, or the spot's own
   * word; {@code ball} at every grain.
   */
  public String seen(Spot spot) {
    if (!spot.strike()) {
      return Spot.BALL.id();
    }
    return switch (this) {
      case STRIKE -> STRIKE.id();
      case ROW -> spot.row().orElseThrow().id();
      case COLUMN -> spot.column().orElseThrow().id();
      case NINE -> spot.id();
    };
  }

  /** How many answers there are, the ball included: 2, 4, 4 or 10. */
  public int answers() {
    return switch (this) {
      case STRIKE -> 2;
      case ROW, COLUMN -> 4;
      case NINE -> 10;
    };
  }
}
