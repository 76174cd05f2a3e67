package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.belthigh.model.Share;
import org.junit.jupiter.api.Test;

/** Against the batting shares of 1970, 45 at bats each: Efron and Morris 1975 and 1977. */
class ShrinkageTest {
  private static final int[] HITS = {
    18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7
  };
  private static final double[] REST = {
    .346, .298, .276, .222, .273, .270, .263, .210, .269, .230, .264, .256, .303, .264, .226, .285,
    .316, .200
  };
  private static final List<Share> BATTERS =
      IntStream.of(HITS).mapToObj(hits -> new Share(hits, 45)).toList();

  /** Published 0.212; recomputed to six places. */
  @Test
  void kept_part_of_the_1970_batting_shares() {
    assertThat(Shrinkage.of(BATTERS).kept()).isCloseTo(0.211653, within(5e-7));
  }

  @Test
  void shrunk_shares_foretell_the_rest_of_the_season_better() {
    Shrinkage shrinkage = Shrinkage.of(BATTERS);
    double plain = 0;
    double shrunk = 0;
    for (int i = 0; i < HITS.length; i++) {
      plain += Math.pow(BATTERS.get(i).value() - REST[i], 2);
      shrunk += Math.pow(shrinkage.jamesStein(BATTERS.get(i)) - REST[i], 2);
    }

    assertThat(plain).isCloseTo(0.075317, within(5e-7));
    assertThat(shrunk).isCloseTo(0.021307, within(5e-7));
    assertThat(shrinkage.jamesStein(BATTERS.get(0))).isCloseTo(0.2939, within(5e-5));
    assertThat(shrinkage.jamesStein(BATTERS.get(17))).isCloseTo(0.2422, within(5e-5));
  }

  /** The version of 1975, on the scale of sqrt(n) asin(2y - 1), where the variance is 1. */
  @Test
  void the_data_give_the_published_spread_on_the_arcsine_scale_too() {
    double[] scaled =
        BATTERS.stream().mapToDouble(s -> Math.sqrt(45) * Math.asin(2 * s.value() - 1)).toArray();
    double mean = IntStream.range(0, 18).mapToDouble(i -> scaled[i]).average().orElseThrow();
    double spread = IntStream.range(0, 18).mapToDouble(i -> Math.pow(scaled[i] - mean, 2)).sum();

    assertThat(spread).isCloseTo(18.9627, within(5e-5));
    assertThat(1 - 15 / spread).isCloseTo(Shrinkage.of(BATTERS).kept(), within(0.003));
  }

  @Test
  void a_team_of_eighteen_pulls_no_more_than_four_tosses_do() {
    GroupEstimate best = Shrinkage.of(BATTERS).estimate(BATTERS.get(0)).orElseThrow();

    assertThat(best.groupTosses()).isEqualTo(4);
    assertThat(best.groupMean()).isCloseTo(0.265432, within(5e-7));
    assertThat(best.value()).isCloseTo((18 + 4 * 0.265432) / 49, within(1e-6));
    assertThat(best.players()).isEqualTo(18);
  }

  @Test
  void from_thirty_players_the_group_says_how_strong_its_pull_is() {
    List<Share> thirtySix = new ArrayList<>(BATTERS);
    for (Share share : BATTERS) {
      thirtySix.add(new Share(2 * share.made(), 45)); // a second half, farther apart
    }
    Shrinkage shrinkage = Shrinkage.of(thirtySix);
    double kept = shrinkage.kept();

    GroupEstimate estimate = shrinkage.estimate(new Share(36, 45)).orElseThrow();

    assertThat(estimate.groupTosses()).isCloseTo(45 * (1 - kept) / kept, within(1e-9));
    assertThat(estimate.value()).isCloseTo(shrinkage.jamesStein(new Share(36, 45)), within(1e-9));
  }

  @Test
  void a_newcomer_is_never_judged_by_the_group_alone() {
    Shrinkage alike = Shrinkage.of(Collections.nCopies(40, new Share(30, 60)));

    assertThat(alike.estimate(Share.none())).isEmpty();
    assertThat(alike.kept()).isZero();
    // all alike, so James and Stein would keep nothing of the newcomer's own: half is kept
    assertThat(alike.estimate(new Share(2, 2)).orElseThrow().value()).isEqualTo(0.75);
  }

  @Test
  void three_players_are_too_few_to_learn_a_pull_from() {
    assertThat(Shrinkage.of(List.of(new Share(1, 9), new Share(2, 9), new Share(3, 9))).kept())
        .isEqualTo(1);
  }
}
