package org.belthigh.lab;

/**
 * Wald's sequential probability ratio test of two shares: its expected sample number. Overshoot is
 * left out, as Wald does. Source: {@code wald-1945}.
 *
 * @param p0 the lower share
 * @param p1 the higher share
 * @param alpha chance of choosing p1 when p0 is true
 * @param beta chance of choosing p0 when p1 is true
 */
public record Wald(double p0, double p1, double alpha, double beta) {
  public Wald {
    if (!(p0 > 0 && p0 < p1 && p1 < 1)) {
      throw new IllegalArgumentException("0 < p0 < p1 < 1 is needed, not " + p0 + ", " + p1);
    }
  }

  private double success() {
    return Math.log(p1 / p0);
  }

  private double failure() {
    return Math.log((1 - p1) / (1 - p0));
  }

  private double upper() {
    return Math.log((1 - beta) / alpha);
  }

  private double lower() {
    return Math.log(beta / (1 - alpha));
  }

  /** Expected tosses when the true share is p1. */
  public double tossesAtP1() {
    return ((1 - beta) * upper() + beta * lower()) / (p1 * success() + (1 - p1) * failure());
  }

  /** Expected tosses when the true share is p0. */
  public double tossesAtP0() {
    return (alpha * upper() + (1 - alpha) * lower()) / (p0 * success() + (1 - p0) * failure());
  }
}
