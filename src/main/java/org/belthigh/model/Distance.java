package org.belthigh.model;

/** Distances in the words of people: feet, with metres for those who think in them. */
public final class Distance {
  private static final double FEET_PER_METRE = 3.280839895;

  private Distance() {}

  /** So many feet, as every sentence says them. */
  public static Phrase feet(int feet) {
    return Phrase.of("distance", "feet", feet, "metres", feet / FEET_PER_METRE);
  }
}
