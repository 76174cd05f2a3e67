package org.belthigh.plan;

import java.util.EnumMap;
import java.util.Map;
import org.belthigh.measure.Calls;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;

/**
 * Turns a mix towards what a hitter calls wrong.
 *
 * <p>An answer is weak when it was missed where it was right, and confused when it was given where
 * another was right; both count alike, so that of two spots taken for each other both are tossed
 * more. The share of such errors is pulled to the hitter's own mean by {@value #PULL} tosses and
 * held against it: what goes twice as wrong as the mean is tossed twice as often, never more, and
 * what goes well at least half as often. Balls keep the share that the drill gives them, for takes
 * and swings at balls are read from it. The numbers are ours, estimates.
 */
final class WeakSpots {
  private static final double PULL = 6;
  private static final double LEAST = 0.5;
  private static final double MOST = 2;

  private WeakSpots() {}

  /**
   * The shares to toss.
   *
   * @param shares of the drill, by spot
   * @param grain at which the hitter works
   * @param calls of the hitter at that grain
   */
  static Map<Spot, Double> turned(Map<Spot, Double> shares, Grain grain, Calls calls) {
    int seen = calls.exact().seen();
    int wrong = seen - calls.exact().made();
    if (wrong == 0) {
      return shares;
    }
    double mean = (double) wrong / seen;
    Map<Spot, Double> turned = new EnumMap<>(Spot.class);
    double before = 0;
    double after = 0;
    for (Map.Entry<Spot, Double> share : shares.entrySet()) {
      Spot spot = share.getKey();
      double weight = spot.strike() ? share.getValue() * factor(grain.seen(spot), calls, mean) : 0;
      turned.put(spot, weight);
      before += spot.strike() ? share.getValue() : 0;
      after += weight;
    }
    double scale = after > 0 ? before / after : 1;
    turned.replaceAll((spot, weight) -> spot.strike() ? weight * scale : shares.get(spot));
    return turned;
  }

  private static double factor(String answer, Calls calls, double mean) {
    Share right = calls.recall().getOrDefault(answer, Share.none());
    Share given = calls.precision().getOrDefault(answer, Share.none());
    int missed = right.seen() - right.made();
    int misused = given.seen() - given.made();
    double errors = (missed + misused + PULL * mean) / (right.seen() + misused + PULL);
    return Math.min(MOST, Math.max(LEAST, errors / mean));
  }
}
