package org.belthigh.plan;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.belthigh.measure.Calls;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;

/**
 * Turns a mix towards what goes wrong for a hitter.
 *
 * <p>Where spots are called, an answer is weak when it was missed where it was right, and confused
 * when it was given where another was right; both count alike, so that of two spots taken for each
 * other both are tossed more. Elsewhere a spot is weak by what the drill is about: belt-high tosses
 * let go, or swings that did not hit it hard. The share of such errors is pulled to the hitter's
 * own mean by {@value #PULL} tosses and held against it: what goes twice as wrong as the mean is
 * tossed twice as often, never more, and what goes well at least half as often. Balls keep the
 * share that the drill gives them, for takes and swings at balls are read from it. The numbers are
 * ours, estimates.
 */
final class WeakSpots {
  private static final double PULL = 6;
  private static final double LEAST = 0.5;
  private static final double MOST = 2;

  private WeakSpots() {}

  /**
   * The shares to toss where spots are called.
   *
   * @param shares of the drill, by spot
   * @param grain at which the hitter works
   * @param calls of the hitter at that grain
   */
  static Map<Spot, Double> turned(Map<Spot, Double> shares, Grain grain, Calls calls) {
    double mean = wrong(calls.exact());
    return mean == 0 ? shares : weighed(shares, spot -> factor(grain.seen(spot), calls, mean));
  }

  /**
   * The shares to toss where a swing is judged.
   *
   * @param shares of the drill, by spot
   * @param good of the hitter, by spot; a spot of which nothing is known is neither weak nor strong
   */
  static Map<Spot, Double> turned(Map<Spot, Double> shares, Map<Spot, Share> good) {
    double mean = mean(good.values());
    return mean == 0 ? shares : weighed(shares, spot -> factor(good.get(spot), mean));
  }

  /**
   * How much more or less often than its turn {@code one} comes, 0.5 to 2.
   *
   * @param good of the hitter, by what is called
   */
  static <K> double weight(K one, Map<K, Share> good) {
    double mean = mean(good.values());
    return mean == 0 ? 1 : factor(good.get(one), mean);
  }

  private static double mean(Collection<Share> good) {
    return wrong(good.stream().reduce(Share.none(), Share::plus));
  }

  private static double wrong(Share good) {
    return good.isEmpty() ? 0 : (double) (good.seen() - good.made()) / good.seen();
  }

  private static Map<Spot, Double> weighed(
      Map<Spot, Double> shares, ToDoubleFunction<Spot> factor) {
    Map<Spot, Double> turned = new EnumMap<>(Spot.class);
    double before = 0;
    double after = 0;
    for (Map.Entry<Spot, Double> share : shares.entrySet()) {
      Spot spot = share.getKey();
      double weight = spot.strike() ? share.getValue() * factor.applyAsDouble(spot) : 0;
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
    return factor(missed + misused, right.seen() + misused, mean);
  }

  private static double factor(Share good, double mean) {
    return good == null ? 1 : factor(good.seen() - good.made(), good.seen(), mean);
  }

  private static double factor(int errors, int seen, double mean) {
    double pulled = (errors + PULL * mean) / (seen + PULL);
    return Math.min(MOST, Math.max(LEAST, pulled / mean));
  }
}
