package org.belthigh.plan;

import java.util.HashMap;
import java.util.Map;
import org.belthigh.model.Grain;
import org.belthigh.model.Spot;

/**
 * The best guesser there can be: knows the law by which lists are drawn, sees every toss so far in
 * full, and each time says the answer that is most likely now. Computed exactly, backwards over
 * everything that the past can say ({@link TossLaw.Past}).
 */
final class BestGuesser {
  private static final Spot[] SPOTS = Spot.values();
  private static final int GUESSES = 1 + SPOTS.length;

  private final TossLaw law;
  private final Map<TossLaw.Past, double[]> known = new HashMap<>();

  BestGuesser(TossLaw law) {
    this.law = law;
  }

  /** Expected share of right guesses at {@code grain}, 0 to 1. */
  double share(Grain grain) {
    double[] all = of(law.start());
    return all[GUESSES + grain.ordinal()] / all[0] / law.tosses();
  }

  /** Share of tosses that go to {@code spot} in the lists that are kept, 0 to 1. */
  double tossed(Spot spot) {
    double[] all = of(law.start());
    return all[1 + spot.ordinal()] / all[0] / law.tosses();
  }

  /** The mix's own floor: right answers of one who always says its likeliest answer, 0 to 1. */
  double floor(Grain grain) {
    Map<String, Double> shares = new HashMap<>();
    for (Spot spot : Spot.values()) {
      shares.merge(grain.seen(spot), tossed(spot), Double::sum);
    }
    return shares.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  /** How likely a list drawn toss by toss is kept, 0 to 1. */
  double kept() {
    return of(law.start())[0];
  }

  /**
   * Chance that a list which began so is kept; then, times that chance, by spot the tosses that go
   * there and by grain the right guesses still to come.
   */
  private double[] of(TossLaw.Past past) {
    double[] have = known.get(past);
    if (have == null) {
      have = past.tossed() == law.tosses() ? end() : compute(past);
      known.put(past, have);
    }
    return have;
  }

  private static double[] end() {
    double[] end = new double[GUESSES + Grain.values().length];
    end[0] = 1;
    return end;
  }

  private double[] compute(TossLaw.Past past) {
    double[] sum = new double[GUESSES + Grain.values().length];
    double[] next = new double[SPOTS.length];
    for (Spot spot : SPOTS) {
      law.after(past, spot)
          .map(this::of)
          .ifPresent(
              future -> {
                double chance = law.share(spot) * future[0];
                next[spot.ordinal()] = chance;
                sum[1 + spot.ordinal()] += chance;
                for (int i = 0; i < sum.length; i++) {
                  sum[i] += law.share(spot) * future[i];
                }
              });
    }
    for (Grain grain : Grain.values()) {
      sum[GUESSES + grain.ordinal()] += likeliest(grain, next);
    }
    return sum;
  }

  private static double likeliest(Grain grain, double[] next) {
    Map<String, Double> chances = new HashMap<>();
    for (Spot spot : SPOTS) {
      chances.merge(grain.seen(spot), next[spot.ordinal()], Double::sum);
    }
    return chances.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }
}
