package org.belthigh.flight;

import java.util.Optional;

/**
 * A ball from the hand to the plate: quadratic drag and gravity, no spin.
 *
 * <p>Classical Runge-Kutta steps of 5 ms, the last one so long that it ends at the plate; checked
 * against an adaptive integrator of order 8 and against ten worked cases.
 *
 * @param seconds from the hand to the plate
 * @param height above the ground at the plate, metres
 * @param speed at the plate, m/s
 * @param descent how steeply it falls there, degrees below the level; negative while it rises
 * @param top highest point of the arc, metres above the ground
 */
public record Flight(double seconds, double height, double speed, double descent, double top) {
  private static final double STEP = 0.005;

  /** Drag changes the speed by a hundredth of itself in a step: two rounds leave nothing. */
  private static final int ROUNDS = 2;

  /** No toss is in the air for longer. */
  private static final double LONGEST = 4;

  /** Where the ball is and how fast, in the upright plane of its flight. */
  private record State(double x, double y, double level, double up) {
    State plus(double h, State slope) {
      return new State(
          x + h * slope.x, y + h * slope.y, level + h * slope.level, up + h * slope.up);
    }

    State slope(double k) {
      // no speed here is near the ends of what a double holds, where hypot would be worth its time
      double v = Math.sqrt(level * level + up * up);
      return new State(level, up, -k * v * level, -k * v * up - Projectile.GRAVITY);
    }

    State next(double k, double h) {
      State a = slope(k);
      State b = plus(h / 2, a).slope(k);
      State c = plus(h / 2, b).slope(k);
      State d = plus(h, c).slope(k);
      return plus(h / 6, a).plus(h / 3, b).plus(h / 3, c).plus(h / 6, d);
    }
  }

  private static State start(Launch launch) {
    return new State(0, launch.height(), launch.level(), launch.up());
  }

  /**
   * The flight of {@code ball} over {@code metres}.
   *
   * @return empty where it comes to the ground, or to a stop, before that
   */
  public static Optional<Flight> of(Projectile ball, Launch launch, double metres) {
    double k = ball.k();
    State here = start(launch);
    double top = here.y();
    for (double t = 0; t < LONGEST && here.y() >= 0; t += STEP) {
      State next = here.next(k, STEP);
      if (next.x() >= metres) {
        double left = untilPlate(here, k, metres);
        State end = here.next(k, left);
        return Optional.of(
            new Flight(
                t + left,
                end.y(),
                Math.hypot(end.level(), end.up()),
                Math.toDegrees(Math.atan2(-end.up(), end.level())),
                Math.max(top, end.y())));
      }
      here = next;
      top = Math.max(top, here.y());
    }
    return Optional.empty();
  }

  /** The length of the step from {@code here} that ends at the plate, by Newton's method, s. */
  private static double untilPlate(State here, double k, double metres) {
    double h = (metres - here.x()) / here.level();
    for (int round = 0; round < ROUNDS; round++) {
      State there = here.next(k, h);
      h += (metres - there.x()) / there.level();
    }
    return h;
  }

  /** How far and how high the ball is after {@code seconds}, metres; below the ground too. */
  static double[] after(Projectile ball, Launch launch, double seconds) {
    int steps = (int) Math.ceil(seconds / STEP);
    State here = start(launch);
    for (int i = 0; i < steps; i++) {
      here = here.next(ball.k(), seconds / steps);
    }
    return new double[] {here.x(), here.y()};
  }
}
