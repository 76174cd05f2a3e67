package org.belthigh.flight;

/**
 * How a ball leaves the hand.
 *
 * @param speed m/s, above 0
 * @param degrees above the level, -90 to 90
 * @param height of the hand above the ground, metres
 */
public record Launch(double speed, double degrees, double height) {
  /** One mile per hour in m/s, by definition. */
  private static final double MPH = 0.44704;

  public Launch {
    if (!(speed > 0 && height >= 0 && Math.abs(degrees) <= 90)) {
      throw new IllegalArgumentException(
          "no launch at " + speed + " m/s, " + degrees + " degrees, " + height + " m");
    }
  }

  /** A launch whose speed is given in miles per hour. */
  public static Launch mph(double mph, double degrees, double height) {
    return new Launch(mph * MPH, degrees, height);
  }

  /** The launch whose speed has these parts, m/s. */
  static Launch of(double level, double up, double height) {
    return new Launch(Math.hypot(level, up), Math.toDegrees(Math.atan2(up, level)), height);
  }

  /** Speed in miles per hour. */
  public double mph() {
    return speed / MPH;
  }

  double level() {
    return speed * Math.cos(Math.toRadians(degrees));
  }

  double up() {
    return speed * Math.sin(Math.toRadians(degrees));
  }
}
