package org.belthigh.measure;

import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.intake.Toss;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;

/** Shares by the spot where the ball went; spots without a toss are left out. */
public final class BySpot {
  private BySpot() {}

  /**
   * The shares of {@code tosses}.
   *
   * @param made what counts as a success
   */
  public static Map<Spot, Share> of(Stream<Toss> tosses, Predicate<Toss> made) {
    return tosses.collect(
        Collectors.toMap(Toss::zone, toss -> Share.none().and(made.test(toss)), Share::plus));
  }
}
