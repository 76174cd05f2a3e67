package org.belthigh.measure;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.belthigh.model.Share;

/**
 * How well two sorts of tosses were told apart, whatever the habit of the hitter: one who swings at
 * everything and one who takes everything both score 0.
 *
 * <p>d-prime = z(hit share) - z(false-alarm share), z the quantile of the standard normal
 * distribution. So that a share of 0 or 1 has a quantile, half a trial is added to both outcomes of
 * both sorts, always, not at the ends alone (log-linear correction). Source: {@code hautus-1995},
 * from memory.
 *
 * @param hits "yes" given to tosses of the sort that is looked for
 * @param falseAlarms "yes" given to the others
 */
public record Detection(Share hits, Share falseAlarms) {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Nothing seen yet. */
  static Detection none() {
    return new Detection(Share.none(), Share.none());
  }

  /**
   * The distance of the two sorts in standard deviations: 0 is chance, 1 fair, 2 good, below 0 is
   * the wrong way round. Empty unless tosses of both sorts were seen.
   */
  public OptionalDouble dPrime() {
    return bothSeen()
        ? OptionalDouble.of(quantile(hits) - quantile(falseAlarms))
        : OptionalDouble.empty();
  }

  /**
   * The habit: how far the hitter leans towards "no", in standard deviations; below 0 towards
   * "yes". Empty unless tosses of both sorts were seen.
   */
  public OptionalDouble leaning() {
    return bothSeen()
        ? OptionalDouble.of(-(quantile(hits) + quantile(falseAlarms)) / 2)
        : OptionalDouble.empty();
  }

  private boolean bothSeen() {
    return !hits.isEmpty() && !falseAlarms.isEmpty();
  }

  private static double quantile(Share share) {
    return NORMAL.inverseCumulativeProbability((share.made() + 0.5) / (share.seen() + 1.0));
  }
}
