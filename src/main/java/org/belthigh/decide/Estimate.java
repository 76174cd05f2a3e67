package org.belthigh.decide;

/**
 * A share that leans on recent tosses, with the interval that its effective number allows.
 *
 * <p>Decay and interval share one effective number, (Σw)²/Σw²; the interval is Wilson's with that
 * number. Source: {@code wilson-1927}; Kish's effective number, from memory.
 *
 * @param value share, 0 to 1; 0 where nothing was seen
 * @param effective effective number of tosses, 0 or more
 * @param low lower end of the 95 % interval; 0 where nothing was seen
 * @param high upper end; 1 where nothing was seen
 */
public record Estimate(double value, double effective, double low, double high) {
  private static final double Z = 1.959963984540054;

  /** From the weighted successes, the sum of weights and the sum of their squares. */
  static Estimate of(double made, double total, double squares) {
    if (total <= 0) {
      return new Estimate(0, 0, 0, 1);
    }
    double p = made / total;
    double n = total * total / squares;
    double z2 = Z * Z;
    double centre = (p + z2 / (2 * n)) / (1 + z2 / n);
    double half = Z / (1 + z2 / n) * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    return new Estimate(p, n, Math.max(0, centre - half), Math.min(1, centre + half));
  }
}
