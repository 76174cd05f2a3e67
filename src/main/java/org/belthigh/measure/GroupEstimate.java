package org.belthigh.measure;

/**
 * A player's share, pulled a little towards those of the group.
 *
 * @param value 0 to 1
 * @param groupMean share of all tosses of the group, 0 to 1
 * @param groupTosses how many tosses the group is worth in it, at most the player's own
 * @param players of the group who have any
 */
public record GroupEstimate(double value, double groupMean, double groupTosses, int players) {
  public GroupEstimate {
    if (!(value >= 0 && value <= 1 && groupMean >= 0 && groupMean <= 1)) {
      throw new IllegalArgumentException("a share must be 0 to 1: " + value + ", " + groupMean);
    }
    if (!(groupTosses >= 0) || players < 1) {
      throw new IllegalArgumentException(
          groupTosses + " tosses of " + players + " players cannot be");
    }
  }
}
