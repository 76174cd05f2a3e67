package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CountdownWalkTest {
  private static final int START = 12;

  private static List<Boolean> hits(String letters) {
    return letters.chars().mapToObj(c -> c == 'h').toList();
  }

  @ParameterizedTest
  @CsvSource({
    "hhhhhhhhhhhh, 12, 12, true, 0", // all hard
    "oooooo, 6, 0, true, 0", // none hard
    "hhhhhhhhhhho, 12, 11, true, 0", // at 1 left a miss ends it, below zero
    "oooooohh, 6, 0, true, 2", // two free swings
    "hhhhhhhhhhh, 11, 11, false, 0", // 1 left
    "ooooo, 5, 0, false, 0", // 2 left
    "'', 0, 0, false, 0"
  })
  void ends_at_or_below_nought(String swings, int used, int hard, boolean complete, int free) {
    assertThat(CountdownWalk.of(START, hits(swings)))
        .isEqualTo(new CountdownWalk(used, hard, complete, free));
  }

  @Test
  void another_start_count_is_walked_down_too() {
    assertThat(CountdownWalk.of(3, hits("oo"))).isEqualTo(new CountdownWalk(2, 0, true, 0));
  }

  /** Every string of swings that ends a countdown from 12: 377, a Fibonacci number. */
  @Test
  void there_are_377_ways_of_which_233_end_exactly_at_nought() {
    List<CountdownWalk> all = allEnds();

    assertThat(all).hasSize(377);
    assertThat(all).filteredOn(w -> 2 * w.swings() - w.hard() == START).hasSize(233);
    assertThat(all).allMatch(w -> w.swings() >= 6 && w.swings() <= 12);
  }

  /** At one half: 1/64, 27/128, 105/256, 35/128, 81/1024, 21/2048 and 1/2048 for 6 to 12 swings. */
  @ParameterizedTest
  @CsvSource({
    "6, 1, 64",
    "7, 27, 128",
    "8, 105, 256",
    "9, 35, 128",
    "10, 81, 1024",
    "11, 21, 2048",
    "12, 1, 2048"
  })
  void scores_of_a_hitter_who_hits_half_of_them_hard(int score, int parts, int of) {
    double enumerated =
        allEnds().stream()
            .filter(w -> w.swings() == score)
            .mapToDouble(w -> probability(w, 0.5))
            .sum();

    assertThat(enumerated).isEqualTo((double) parts / of);
    assertThat(CountdownScore.probability(START, score, 0.5)).isEqualTo((double) parts / of);
  }

  /** E[N] = (13 - (1 + q^13) / (1 + q)) / (1 + q), with q the share not hit hard. */
  @ParameterizedTest
  @ValueSource(doubles = {0.0, 0.25, 0.5, 0.75, 0.9, 1.0})
  void mean_score_follows_the_formula(double hard) {
    double q = 1 - hard;
    double formula = (13 - (1 + Math.pow(q, 13)) / (1 + q)) / (1 + q);

    double enumerated =
        allEnds().stream().mapToDouble(w -> w.swings() * probability(w, hard)).sum();

    assertThat(enumerated).isCloseTo(formula, within(1e-12));
  }

  /** The share of hard hits of one round is too low on average: it stops on what happens. */
  @ParameterizedTest
  @CsvSource({
    "0.25, 6082418511, 25836912640",
    "0.5, 27295853, 56770560",
    "0.75, 18991089351, 25836912640",
    "0.9, 274930792769529, 308000000000000"
  })
  void expected_share_of_hard_hits_in_one_round(double hard, long numerator, long denominator) {
    double enumerated =
        allEnds().stream()
            .mapToDouble(w -> (double) w.hard() / w.swings() * probability(w, hard))
            .sum();

    assertThat(enumerated).isCloseTo((double) numerator / denominator, within(1e-12));
    assertThat(enumerated).isLessThan(hard);
  }

  private static double probability(CountdownWalk walk, double hard) {
    return Math.pow(hard, walk.hard()) * Math.pow(1 - hard, walk.swings() - walk.hard());
  }

  private static List<CountdownWalk> allEnds() {
    List<CountdownWalk> ends = new ArrayList<>();
    extend(List.of(), ends);
    return Collections.unmodifiableList(ends);
  }

  private static void extend(List<Boolean> swings, List<CountdownWalk> ends) {
    CountdownWalk walk = CountdownWalk.of(START, swings);
    if (walk.complete()) {
      ends.add(walk);
      return;
    }
    for (boolean hard : new boolean[] {true, false}) {
      List<Boolean> longer = new ArrayList<>(swings);
      longer.add(hard);
      extend(longer, ends);
    }
  }
}
