package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.belthigh.measure.HardHits.Score;
import org.belthigh.model.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HardHitsTest {
  private static final int START = 12;

  private static HardHits score(int swings) {
    return new HardHits(Share.none(), List.of(new Score(START, swings)));
  }

  /** Exact fractions of our own derivation, from all 377 strings. */
  @ParameterizedTest
  @CsvSource({
    "6, 0, 1, 8",
    "7, 0.21218, 11, 39",
    "8, 0.45293, 6, 13",
    "9, 0.63598, 87, 143",
    "10, 0.78174, 19, 26",
    "11, 0.90082, 141, 169",
    "12, 1, 12, 13"
  })
  void one_bare_score_says(int swings, double mostLikely, int numerator, int denominator) {
    assertThat(score(swings).mostLikely().orElseThrow()).isCloseTo(mostLikely, within(5e-6));
    assertThat(score(swings).likely().mean())
        .isCloseTo((double) numerator / denominator, within(1e-12));
  }

  /** With the string known the posterior is Beta(1 + hard, 1 + others), whatever ended it. */
  @ParameterizedTest
  @CsvSource({"0, 1", "1, 1", "8, 10", "17, 20", "250, 533"})
  void swings_known_one_by_one_agree_with_the_beta_distribution_of_a_library(int hard, int of) {
    HardHits hits = new HardHits(new Share(hard, of), List.of());
    BetaDistribution beta = new BetaDistribution(null, 1 + hard, 1 + of - hard);

    assertThat(hits.likely().mean()).isCloseTo(beta.getNumericalMean(), within(1e-12));
    assertThat(hits.likely().low())
        .isCloseTo(beta.inverseCumulativeProbability(0.05), within(1e-7));
    assertThat(hits.likely().high())
        .isCloseTo(beta.inverseCumulativeProbability(0.95), within(1e-7));
    assertThat(hits.mostLikely().orElseThrow()).isCloseTo((double) hard / of, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void strings_and_scores_together_agree_with_a_grid(long seed) {
    Random random = new Random(seed);
    int seen = random.nextInt(15);
    HardHits hits =
        new HardHits(
            new Share(random.nextInt(seen + 1), seen),
            IntStream.range(0, 1 + random.nextInt(6))
                .mapToObj(i -> random.nextBoolean() ? score(random, 12) : score(random, 7))
                .toList());

    int cells = 40_000;
    DoubleUnaryOperator density = p -> Math.exp(hits.logLikelihood(p) + 30);
    double total = 0;
    double first = 0;
    double best = 0;
    for (int i = 0; i < cells; i++) {
      double p = (i + 0.5) / cells;
      total += density.applyAsDouble(p);
      first += p * density.applyAsDouble(p);
      best = density.applyAsDouble(p) > density.applyAsDouble(best) ? p : best;
    }
    HardHits.Likely likely = hits.likely();
    double below = 0;
    for (int i = 0; i < cells; i++) {
      double p = (i + 0.5) / cells;
      below += p < likely.low() ? density.applyAsDouble(p) : 0;
    }

    assertThat(likely.mean()).isCloseTo(first / total, within(1e-6));
    assertThat(below / total).isCloseTo(0.05, within(1e-3));
    assertThat(hits.mostLikely().orElseThrow()).isCloseTo(best, within(1e-4));
  }

  private static Score score(Random random, int start) {
    int fewest = (start + 1) / 2;
    return new Score(start, fewest + random.nextInt(start - fewest + 1));
  }

  @Test
  void a_string_says_more_than_its_score() {
    HardHits.Likely bare = score(8).likely();
    HardHits.Likely whole = new HardHits(new Share(4, 8), List.of()).likely();

    assertThat(whole.high() - whole.low()).isLessThan(bare.high() - bare.low());
  }

  @Test
  void many_rounds_neither_overflow_nor_vanish() {
    HardHits hits =
        new HardHits(
            Share.none(), IntStream.range(0, 400).mapToObj(i -> new Score(12, 9)).toList());

    assertThat(hits.likely().mean()).isCloseTo(0.63598, within(1e-3));
    assertThat(hits.likely().low()).isGreaterThan(0.61).isLessThan(hits.likely().mean());
  }

  @Test
  void nothing_seen_leaves_the_flat_prior_and_no_most_likely_share() {
    HardHits none = new HardHits(Share.none(), List.of());

    assertThat(none.isEmpty()).isTrue();
    assertThat(none.mostLikely()).isEmpty();
    assertThat(none.likely().mean()).isEqualTo(0.5);
    assertThat(none.likely().low()).isCloseTo(0.05, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"12, 5", "12, 13", "7, 3", "0, 0"})
  void a_score_that_cannot_be_is_refused(int start, int swings) {
    assertThatThrownBy(() -> new Score(start, swings))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cannot end after " + swings);
  }
}
