package org.belthigh.flight;

import java.util.Optional;

/**
 * Where to stand and how to toss underhand, so that the ball takes a wanted time to the plate.
 *
 * @param feet from who tosses to where the ball is met, whole feet
 */
public record Delivery(int feet, Toss toss) {
  /** One foot in metres, by definition. */
  private static final double FOOT = 0.3048;

  /** Height of the hand of an adult who tosses underhand, metres; ours, an estimate. */
  public static final double HAND = 0.9;

  /**
   * Harder than this, in miles per hour, few parents toss underhand with aim; ours, an estimate.
   */
  public static final double HARDEST_MPH = 30;

  /**
   * The nearest place from which the toss is no steep lob; where there is none, the nearest of all.
   *
   * @param nearest no nearer than this, feet
   * @param farthest as far as the room goes, feet, at least {@code nearest}
   * @param seconds from the hand to the plate
   * @param target height over the plate, metres
   * @return empty where even from the nearest place no arm tosses that quickly
   */
  public static Optional<Delivery> of(
      Projectile ball, int nearest, int farthest, double seconds, double target) {
    Optional<Delivery> first = from(nearest, ball, seconds, target);
    Optional<Delivery> here = first;
    for (int feet = nearest; here.isPresent() && feet <= farthest; feet++) {
      here = from(feet, ball, seconds, target);
      if (here.filter(delivery -> !delivery.toss().steep()).isPresent()) {
        return here;
      }
    }
    return first;
  }

  private static Optional<Delivery> from(int feet, Projectile ball, double seconds, double target) {
    return Toss.timed(ball, feet * FOOT, HAND, target, seconds)
        .filter(toss -> toss.launch().mph() <= HARDEST_MPH)
        .map(toss -> new Delivery(feet, toss));
  }
}
