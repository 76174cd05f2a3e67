package org.belthigh.flight;

import java.util.Optional;

/**
 * A toss that comes to a given height over the plate.
 *
 * @param metres from the hand to the front of the plate
 */
public record Toss(double metres, Launch launch, Flight flight) {
  /** Steeper than this nobody tosses flat. */
  private static final double FLAT = 35;

  private static final double LOWEST = -45;
  private static final double SCAN = 0.5;
  private static final double FINE = 1e-7;
  private static final int ROUNDS = 30;
  private static final double NUDGE = 1e-4;

  /** Depth of the plate, metres: 17 inches. By the playing rules, from memory. */
  private static final double PLATE_DEPTH = 0.4318;

  /**
   * Steeper than this a ball falls a quarter of a metre while it is over the plate, which is more
   * than a whole row of the tallest hitter: it is low, belt-high and high in turn. Ours, an
   * estimate from the worked row heights.
   */
  public static final double STEEP_DEGREES = 30;

  /**
   * The flatter of the tosses at {@code speed} that come to {@code target}.
   *
   * @param from height of the hand, metres
   * @param target height over the plate, metres
   * @param speed m/s
   * @return empty where none does that leaves the hand at 35 degrees or less: it cannot reach
   */
  public static Optional<Toss> flat(
      Projectile ball, double metres, double from, double target, double speed) {
    for (double low = LOWEST; low < FLAT; low += SCAN) {
      double high = Math.min(FLAT, low + SCAN);
      if (miss(ball, metres, from, target, speed, low) < 0
          && miss(ball, metres, from, target, speed, high) >= 0) {
        return bisect(ball, metres, from, target, speed, low, high);
      }
    }
    return Optional.empty();
  }

  private static Optional<Toss> bisect(
      Projectile ball,
      double metres,
      double from,
      double target,
      double speed,
      double low,
      double high) {
    double under = low;
    double over = high;
    while (over - under > FINE) {
      double middle = (under + over) / 2;
      if (miss(ball, metres, from, target, speed, middle) < 0) {
        under = middle;
      } else {
        over = middle;
      }
    }
    Launch launch = new Launch(speed, over, from);
    return Flight.of(ball, launch, metres).map(flight -> new Toss(metres, launch, flight));
  }

  /** How far over the target the ball comes; what falls short misses by all of it. */
  private static double miss(
      Projectile ball, double metres, double from, double target, double speed, double degrees) {
    return Flight.of(ball, new Launch(speed, degrees, from), metres)
        .map(flight -> flight.height() - target)
        .orElse(-target);
  }

  /**
   * The one toss that takes {@code seconds} to the plate and comes to {@code target} there.
   *
   * <p>Newton's method on the two parts of the launch speed, from the flight without a drop in
   * speed sideways.
   *
   * @param from height of the hand, metres
   * @param target height over the plate, metres
   * @return empty where no launch does that, which is when it would have to go up and come down
   *     faster than the air lets the ball fall
   */
  public static Optional<Toss> timed(
      Projectile ball, double metres, double from, double target, double seconds) {
    double level = ball.levelSpeed(metres, seconds);
    double up = (target - from) / seconds + Projectile.GRAVITY * seconds / 2;
    for (int round = 0; round < ROUNDS; round++) {
      double[] end = end(ball, level, up, from, seconds);
      double overshoot = end[0] - metres;
      double over = end[1] - target;
      if (Math.hypot(overshoot, over) < FINE) {
        Launch launch = Launch.of(level, up, from);
        return Flight.of(ball, launch, metres).map(flight -> new Toss(metres, launch, flight));
      }
      double[] faster = end(ball, level + NUDGE, up, from, seconds);
      double[] higher = end(ball, level, up + NUDGE, from, seconds);
      double a = (faster[0] - end[0]) / NUDGE;
      double b = (higher[0] - end[0]) / NUDGE;
      double c = (faster[1] - end[1]) / NUDGE;
      double d = (higher[1] - end[1]) / NUDGE;
      double area = a * d - b * c;
      level -= (d * overshoot - b * over) / area;
      up -= (a * over - c * overshoot) / area;
      if (!(level > 0) || !Double.isFinite(up)) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static double[] end(
      Projectile ball, double level, double up, double from, double seconds) {
    return Flight.after(ball, Launch.of(level, up, from), seconds);
  }

  /** Whether it falls through more than a row while it is over the plate: no test of height. */
  public boolean steep() {
    return flight.descent() > STEEP_DEGREES;
  }

  /** How far it falls while it is over the plate, metres. */
  public double dropOverPlate() {
    return PLATE_DEPTH * Math.tan(Math.toRadians(flight.descent()));
  }
}
