package org.belthigh.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.numbers.combinatorics.BinomialCoefficientDouble;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.belthigh.model.Share;

/**
 * What countdowns say about the share of swings that hit the ball hard.
 *
 * <p>Swings written down one by one say p for each hard one and q = 1 - p for each other, whatever
 * ended the round, so that an unfinished round and the free swings count too. A finished score of n
 * swings from a start of s leaves one thing open: it ended exactly at zero, with 2n - s hard hits
 * in any order, or below, with 2n - s - 1 and the last ball not hit hard:
 *
 * <pre>P(n) = C(n, s-n) p^(2n-s) q^(s-n) + C(n-1, s-n) p^(2n-s-1) q^(s-n+1)</pre>
 *
 * Several rounds multiply. With a flat prior the posterior is therefore a finite mixture of beta
 * distributions, one for each number of rounds that may have ended below zero; no grid is needed.
 * Source: own derivation, checked by enumeration of all strings and against a grid.
 *
 * @param single swings known one by one, hard of all
 * @param scores finished rounds of which only the score is known
 */
public record HardHits(Share single, List<Score> scores) {
  private static final int HALVINGS = 60;

  public HardHits {
    scores = List.copyOf(scores);
  }

  /**
   * A finished round, written down as its score alone.
   *
   * @param start the count it starts at, at least 1
   * @param swings used, from half the start, rounded up, to the start
   */
  public record Score(int start, int swings) {
    public Score {
      if (start < 1 || swings < (start + 1) / 2 || swings > start) {
        throw new IllegalArgumentException(
            "a countdown from " + start + " cannot end after " + swings + " swings");
      }
    }

    /** Hard hits where it ended exactly at zero; one fewer where it ended below. */
    private int hard() {
      return 2 * swings - start;
    }

    /** Orders in which it can end exactly at zero. */
    private double exactly() {
      return BinomialCoefficientDouble.value(swings, start - swings);
    }

    /** Orders in which it can end below zero; none where that would need fewer than no hits. */
    private double below() {
      return hard() == 0 ? 0 : BinomialCoefficientDouble.value(swings - 1, start - swings);
    }

    /** The chance that it ended below zero, given its score. */
    private double chanceBelow(double p) {
      double below = below() * (1 - p);
      return below == 0 ? 0 : below / (below + exactly() * p);
    }

    private double logLikelihood(double p) {
      return Math.log(CountdownScore.probability(start, swings, p));
    }
  }

  /**
   * The share that is likely, from a flat prior.
   *
   * @param mean posterior mean, 0 to 1
   * @param low lower end of the 90 % credible interval with equal tails
   * @param high its upper end
   */
  public record Likely(double mean, double low, double high) {}

  /** Whether nothing was seen. */
  public boolean isEmpty() {
    return swings() == 0;
  }

  /** Swings behind it, known one by one or from scores. */
  public int swings() {
    return single.seen() + scores.stream().mapToInt(Score::swings).sum();
  }

  /**
   * The logarithm of the likelihood, up to a constant.
   *
   * @param p the share, 0 to 1
   */
  public double logLikelihood(double p) {
    double log = times(single.made(), Math.log(p));
    log += times(single.seen() - single.made(), Math.log1p(-p));
    for (Score score : scores) {
      log += score.logLikelihood(p);
    }
    return log;
  }

  private static double times(int count, double log) {
    return count == 0 ? 0 : count * log;
  }

  /**
   * The share under which what was seen is most likely, 0 to 1; empty where nothing was seen.
   *
   * <p>There the expected number of hard hits, given the scores, is p times the swings. Their
   * difference falls as p grows, so that halving finds the only root.
   */
  public OptionalDouble mostLikely() {
    if (isEmpty()) {
      return OptionalDouble.empty();
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (expectedHard(middle) > middle * swings()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of((low + high) / 2);
  }

  private double expectedHard(double p) {
    return single.made() + scores.stream().mapToDouble(s -> s.hard() - s.chanceBelow(p)).sum();
  }

  /** The posterior from a flat prior, which alone it is where nothing was seen. */
  public Likely likely() {
    List<Part> parts = parts();
    double mean = parts.stream().mapToDouble(part -> part.weight() * part.beta().getMean()).sum();
    return new Likely(mean, quantile(parts, 0.05), quantile(parts, 0.95));
  }

  private record Part(double weight, BetaDistribution beta) {}

  /** The mixture, its weights adding up to 1. */
  private List<Part> parts() {
    double[] orders = {1};
    int hard = single.made();
    for (Score score : scores) {
      orders = orders(orders, score);
      hard += score.hard();
    }
    double alpha = hard + 1.0;
    double beta = swings() - hard + 1.0;
    double[] logs = new double[orders.length];
    double most = Double.NEGATIVE_INFINITY;
    double logBeta = 0; // of B(alpha - j, beta + j) against B(alpha, beta)
    for (int j = 0; j < orders.length && alpha > j; j++) {
      logs[j] = Math.log(orders[j]) + logBeta;
      most = Math.max(most, logs[j]);
      logBeta += Math.log((beta + j) / (alpha - j - 1));
    }
    double sum = 0;
    for (int j = 0; j < orders.length; j++) {
      sum += orders[j] == 0 ? 0 : Math.exp(logs[j] - most);
    }
    List<Part> parts = new ArrayList<>();
    for (int j = 0; j < orders.length; j++) {
      if (orders[j] > 0) {
        parts.add(
            new Part(Math.exp(logs[j] - most) / sum, BetaDistribution.of(alpha - j, beta + j)));
      }
    }
    return parts;
  }

  /** One more round: {@code [j]} orders with j rounds below zero, the greatest scaled to 1. */
  private static double[] orders(double[] before, Score score) {
    double[] after = new double[before.length + 1];
    double most = 0;
    for (int j = 0; j < after.length; j++) {
      double exactly = j < before.length ? before[j] * score.exactly() : 0;
      double below = j > 0 ? before[j - 1] * score.below() : 0;
      after[j] = exactly + below;
      most = Math.max(most, after[j]);
    }
    for (int j = 0; j < after.length; j++) {
      after[j] /= most;
    }
    return after;
  }

  private static double quantile(List<Part> parts, double probability) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double x = (low + high) / 2;
      double below =
          parts.stream().mapToDouble(p -> p.weight() * p.beta().cumulativeProbability(x)).sum();
      if (below < probability) {
        low = x;
      } else {
        high = x;
      }
    }
    return (low + high) / 2;
  }
}
