package org.belthigh.model;

/**
 * A share kept as its two counts, with its 95 % Wilson score interval.
 *
 * <p>Unit: share, 0 to 1 (14 of 20 is 0.70). Divided last, never stored as a ratio. Source of the
 * interval: {@code wilson-1927}, checked against {@code newcombe-1998}.
 *
 * @param made successes, 0 to {@code seen}
 * @param seen trials, 0 or more
 */
public record Share(int made, int seen) {
  /** Two-sided 95 % quantile of the standard normal distribution. */
  static final double Z95 = 1.959963984540054;

  public Share {
    if (seen < 0 || made < 0 || made > seen) {
      throw new IllegalArgumentException(
          "made must be 0 to seen, but made is " + made + " and seen is " + seen);
    }
  }

  /** Nothing seen yet. */
  public static Share none() {
    return new Share(0, 0);
  }

  /** Both counts added. */
  public Share plus(Share other) {
    return new Share(made + other.made, seen + other.seen);
  }

  /** One more trial. */
  public Share and(boolean success) {
    return new Share(made + (success ? 1 : 0), seen + 1);
  }

  /** Whether nothing was seen, so that there is no value. */
  public boolean isEmpty() {
    return seen == 0;
  }

  /** The plain ratio. @throws IllegalStateException where nothing was seen */
  public double value() {
    requireSeen();
    return (double) made / seen;
  }

  /** Lower end of the 95 % Wilson score interval. @throws IllegalStateException as above */
  public double low() {
    requireSeen();
    return made == 0 ? 0.0 : Math.max(0.0, centre() - half());
  }

  /** Upper end of the 95 % Wilson score interval. @throws IllegalStateException as above */
  public double high() {
    requireSeen();
    return made == seen ? 1.0 : Math.min(1.0, centre() + half());
  }

  private double centre() {
    double z2 = Z95 * Z95;
    return (made + z2 / 2) / (seen + z2);
  }

  private double half() {
    double n = seen;
    double p = value();
    double z2 = Z95 * Z95;
    return Z95 / (1 + z2 / n) * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
  }

  private void requireSeen() {
    if (seen == 0) {
      throw new IllegalStateException("A share of nothing seen has no value");
    }
  }
}
