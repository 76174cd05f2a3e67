package org.belthigh.plan.practice;

/**
 * How long to search for an arrangement. Less of it costs points of the {@link Objective}; limits
 * weigh more than all points, so that a tenth kept them all in what we tried, and no more is said.
 *
 * @param share of the usual steps, above 0 and at most 1
 */
public record Effort(double share) {
  /** What plans are made with; docs/planning.md shows the gap that it leaves. */
  public static final Effort USUAL = new Effort(1);

  public Effort {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("effort " + share + ": must be above 0 and at most 1");
    }
  }

  int of(int steps) {
    return Math.max(1, (int) (share * steps));
  }
}
