package org.belthigh.flight;

import java.util.Optional;
import org.belthigh.model.Ball;

/**
 * A ball as the air sees it. It does not spin, so that nothing lifts it.
 *
 * @param massKg above 0
 * @param diameterM above 0, metres
 * @param drag coefficient of drag, above 0, no unit
 */
public record Projectile(double massKg, double diameterM, double drag) {
  /** Standard gravity, m/s². */
  static final double GRAVITY = 9.80665;

  /** Of air at 20 °C and sea level, kg/m³. */
  private static final double AIR = 1.204;

  public Projectile {
    if (!(massKg > 0 && diameterM > 0 && drag > 0)) {
      throw new IllegalArgumentException(
          "mass, diameter and drag are above 0, not "
              + massKg
              + " kg, "
              + diameterM
              + " m, "
              + drag);
    }
  }

  /**
   * The ball in hand; empty for no ball.
   *
   * <p>Sources: {@code lindsey-2025} for plastic with large holes all round, {@code mehta-2008} and
   * {@code cross-2013} for tennis, the rule books' sizes for baseball and softball. The drag of a
   * baseball at youth speed is an estimate, the 12-inch softball is from memory, and foam is common
   * practice: weigh the ball in use.
   */
  public static Optional<Projectile> of(Ball ball) {
    return switch (ball) {
      case PLASTIC -> Optional.of(new Projectile(0.0243, 0.0743, 0.45));
      case FOAM -> Optional.of(new Projectile(0.020, 0.070, 0.50));
      case TENNIS -> Optional.of(new Projectile(0.0577, 0.0670, 0.55));
      case BASEBALL -> Optional.of(new Projectile(0.1453, 0.0738, 0.40));
      case SOFTBALL -> Optional.of(new Projectile(0.188, 0.0970, 0.40));
      case NONE -> Optional.empty();
    };
  }

  /** Speed lost per metre, as a share of the speed: ρ·Cd·A / 2m, 1/m. */
  public double k() {
    return AIR * drag * Math.PI * diameterM * diameterM / (8 * massKg);
  }

  /** The speed that a fall ends in, m/s. */
  public double terminalSpeed() {
    return Math.sqrt(GRAVITY / k());
  }

  /** Share of its speed that the ball keeps over {@code metres}, 0 to 1. */
  public double kept(double metres) {
    return Math.exp(-k() * metres);
  }

  /** The level speed, m/s, with which the ball needs {@code seconds} for {@code metres}. */
  public double levelSpeed(double metres, double seconds) {
    return Math.expm1(k() * metres) / (k() * seconds);
  }
}
