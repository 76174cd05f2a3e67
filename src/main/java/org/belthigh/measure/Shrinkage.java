package org.belthigh.measure;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Share;

/**
 * Shares of a group, pulled towards the group: a child of whom little was seen is judged a little
 * by what children of the group do.
 *
 * <p>While few players are logged the pull is weak and fixed, for how strong it should be is hardly
 * known from a team (18 players of the 1970 batting data allow 370 tosses as well as 790). From
 * about thirty it is what James and Stein found, as Efron and Morris wrote it for batting shares
 * ({@code efron-1975}, {@code efron-1977}). It never outweighs the player's own tosses, and who has
 * none gets nothing: a newcomer is not judged by the group alone.
 */
final class Shrinkage {
  /** Tosses that the group is worth while few are logged. Ours, common practice. */
  private static final double WEAK_PRIOR = 4;

  /** Players from which the group itself says how strong its pull should be. Ours. */
  private static final int ENOUGH_PLAYERS = 30;

  /** Fewer cannot be shrunk by this rule, which loses three: the mean and two. */
  private static final int FEWEST = 4;

  private final List<Share> shares;
  private final Share pooled;

  private Shrinkage(List<Share> shares) {
    this.shares = shares;
    this.pooled = shares.stream().reduce(Share.none(), Share::plus);
  }

  /** Of those of {@code shares} that are not empty, one per player. */
  static Shrinkage of(Collection<Share> shares) {
    return new Shrinkage(shares.stream().filter(s -> !s.isEmpty()).toList());
  }

  /**
   * The part of a player's distance from the mean that is kept, 0 to 1: 1 - (k-3) / V, with V the
   * sum over k players of that distance squared, each over its binomial variance at the mean. 1
   * with fewer than four players.
   */
  double kept() {
    double mean = pooled.value();
    double variance = mean * (1 - mean);
    if (shares.size() < FEWEST) {
      return 1;
    }
    double spread =
        shares.stream().mapToDouble(s -> s.seen() * (s.value() - mean) * (s.value() - mean)).sum();
    return spread == 0 ? 0 : Math.max(0, 1 - (shares.size() - 3) * variance / spread);
  }

  /** {@code share} at that distance from the mean. */
  double jamesStein(Share share) {
    return pooled.value() + kept() * (share.value() - pooled.value());
  }

  /** What the group makes of {@code share}; empty where it has no tosses. */
  Optional<GroupEstimate> estimate(Share share) {
    if (share.isEmpty()) {
      return Optional.empty();
    }
    double tosses = Math.min(share.seen(), prior());
    double mean = pooled.value();
    return Optional.of(
        new GroupEstimate(
            (share.made() + tosses * mean) / (share.seen() + tosses), mean, tosses, shares.size()));
  }

  /** Tosses that the group is worth: those that keep that part of a share of average length. */
  private double prior() {
    if (shares.size() < ENOUGH_PLAYERS) {
      return WEAK_PRIOR;
    }
    double kept = kept();
    double each = (double) pooled.seen() / shares.size();
    return kept == 0 ? Double.POSITIVE_INFINITY : each * (1 - kept) / kept;
  }
}
