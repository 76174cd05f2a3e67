package org.belthigh.handout.kit;

/** Where a line of text stands in its column. */
public enum Align {
  LEFT(0),
  CENTRE(0.5),
  RIGHT(1);

  private final double share;

  Align(double share) {
    this.share = share;
  }

  /** Distance from the left edge for something {@code width} wide in a column {@code room} wide. */
  double offset(double width, double room) {
    return (room - width) * share;
  }
}
