package org.belthigh.handout.kit;

/** Conversions to points, the unit of the kit (72 to the inch). */
public final class Length {
  private Length() {}

  /** Millimetres to points. */
  public static double mm(double millimetres) {
    return millimetres * 72 / 25.4;
  }

  /** Inches to points. */
  public static double inches(double inches) {
    return inches * 72;
  }
}
