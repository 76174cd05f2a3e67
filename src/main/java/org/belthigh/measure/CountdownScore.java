package org.belthigh.measure;

/**
 * How likely a countdown's score is for a hitter whose share of hard-hit balls is known.
 *
 * <p>A swing that hits it hard costs 1, any other 2; the round ends at zero or below. With r left
 * after n swings, f(r, n) = p f(r-1, n-1) + q f(max(0, r-2), n-1). Source: own derivation, checked
 * by enumeration of all strings.
 */
public final class CountdownScore {
  private CountdownScore() {}

  /**
   * The probability that the round ends after exactly {@code swings} swings.
   *
   * @param start the count it starts at, at least 1
   * @param swings 1 or more
   * @param hard the share of swings that hit it hard, 0 to 1
   */
  public static double probability(int start, int swings, double hard) {
    double[] left = new double[start + 1];
    left[start] = 1.0;
    double ended = 0.0;
    for (int n = 0; n < swings; n++) {
      double[] after = new double[start + 1];
      for (int r = 1; r <= start; r++) {
        after[r - 1] += hard * left[r];
        after[Math.max(0, r - 2)] += (1 - hard) * left[r];
      }
      ended = after[0];
      after[0] = 0.0;
      left = after;
    }
    return ended;
  }
}
