package org.belthigh.measure;

/**
 * How many tosses of full weight weighed tosses are worth: (sum of w) squared over the sum of w
 * squared. Equal weights, however small, leave the plain number; the interval of a decayed share
 * must use this one. Source: Kish's effective sample size, from memory; 0.9 over ten sessions is
 * 9.17573.
 *
 * @param sum of the weights, 0 or more
 * @param squares sum of their squares
 */
public record EffectiveNumber(double sum, double squares) {
  public EffectiveNumber {
    if (!(sum >= 0) || !(squares >= 0) || sum > 0 != squares > 0) {
      throw new IllegalArgumentException(
          "weights of 0 or more cannot add up to " + sum + " and squared to " + squares);
    }
  }

  /** Nothing weighed yet. */
  public static EffectiveNumber none() {
    return new EffectiveNumber(0, 0);
  }

  /**
   * One more toss.
   *
   * @param weight 0 or more
   */
  public EffectiveNumber and(double weight) {
    if (!(weight >= 0)) {
      throw new IllegalArgumentException("weight must be 0 or more, but is " + weight);
    }
    return new EffectiveNumber(sum + weight, squares + weight * weight);
  }

  /** The number, 0 where nothing was weighed, at most the number of tosses. */
  public double value() {
    return squares == 0 ? 0 : sum * sum / squares;
  }
}
