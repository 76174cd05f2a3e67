package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.belthigh.model.Grain;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;

/**
 * Source: section h of the hitting-science reference, counts of sequences. The counter is checked
 * against them, and then counts the lists that a {@link TossLaw} allows.
 */
class SequenceCountsTest {
  /** Words over {@code letters} letters, of that length, that {@code allowed} lets through. */
  private static List<int[]> words(int letters, int length, Predicate<int[]> allowed) {
    List<int[]> words = new ArrayList<>();
    long all = Math.round(Math.pow(letters, length));
    for (long code = 0; code < all; code++) {
      int[] word = new int[length];
      long rest = code;
      for (int i = 0; i < length; i++) {
        word[i] = (int) (rest % letters);
        rest /= letters;
      }
      if (allowed.test(word)) {
        words.add(word);
      }
    }
    return words;
  }

  private static Predicate<int[]> counts(int each) {
    return word -> {
      int[] counts = new int[word.length / each];
      Arrays.stream(word).forEach(letter -> counts[letter]++);
      return Arrays.stream(counts).allMatch(n -> n == each);
    };
  }

  private static Predicate<int[]> runsUpTo(int most) {
    return word -> {
      int run = 1;
      for (int i = 1; i < word.length; i++) {
        run = word[i] == word[i - 1] ? run + 1 : 1;
        if (run > most) {
          return false;
        }
      }
      return true;
    };
  }

  @Test
  void orders_without_equal_neighbours() {
    assertThat(words(3, 6, counts(2).and(runsUpTo(1)))).hasSize(30);
    assertThat(words(3, 9, counts(3).and(runsUpTo(1)))).hasSize(174);
  }

  @Test
  void two_way_series_with_runs_up_to_three() {
    assertThat(words(2, 10, runsUpTo(3))).hasSize(548);
    assertThat(words(2, 10, runsUpTo(3).and(counts(5)))).hasSize(194);
  }

  @Test
  void rings_in_which_every_neighbourhood_comes_once() {
    assertThat(rings(2, 3)).isEqualTo(2);
    assertThat(rings(3, 2)).isEqualTo(24);
  }

  private static long rings(int letters, int window) {
    int length = (int) Math.round(Math.pow(letters, window));
    // each ring is counted once for every place where it can be cut
    return words(letters, length, word -> distinctWindows(word, window) == length).size() / length;
  }

  private static long distinctWindows(int[] ring, int window) {
    return java.util.stream.IntStream.range(0, ring.length)
        .mapToObj(
            at ->
                java.util.stream.IntStream.range(at, at + window)
                    .mapToObj(i -> ring[i % ring.length])
                    .toList())
        .distinct()
        .count();
  }

  @Test
  void latin_squares() {
    assertThat(latin(new int[3][3], 0)).isEqualTo(12);
    assertThat(latin(new int[4][4], 0)).isEqualTo(576);
  }

  private static int latin(int[][] square, int cell) {
    int n = square.length;
    if (cell == n * n) {
      return 1;
    }
    int found = 0;
    for (int letter = 1; letter <= n; letter++) {
      boolean free = true;
      for (int i = 0; i < n; i++) {
        free &= square[cell / n][i] != letter && square[i][cell % n] != letter;
      }
      if (free) {
        square[cell / n][cell % n] = letter;
        found += latin(square, cell + 1);
        square[cell / n][cell % n] = 0;
      }
    }
    return found;
  }

  @Test
  void a_law_allows_just_the_lists_that_brute_force_counts() {
    // one low spot and balls, half and half: balls at most five running, three to ten of twelve,
    // and the low spot, a row by itself, at most five running
    Map<Spot, Double> shares = new EnumMap<>(Map.of(Spot.LOW_IN, 1.0, Spot.BALL, 1.0));
    int expected =
        words(
                2,
                12,
                runsUpTo(5)
                    .and(word -> Arrays.stream(word).sum() >= 3 && Arrays.stream(word).sum() <= 10))
            .size();

    TossLaw law = new TossLaw(shares, 12, Grain.ROW);

    assertThat(lists(law, law.start())).isEqualTo(expected).isPositive();
    assertThat(new BestGuesser(law).kept() * 4096)
        .isCloseTo(expected, org.assertj.core.api.Assertions.within(1e-9));
  }

  private static int lists(TossLaw law, TossLaw.Past past) {
    if (past.tossed() == law.tosses()) {
      return 1;
    }
    int sum = 0;
    for (Spot spot : Spot.values()) {
      sum += law.after(past, spot).map(next -> lists(law, next)).orElse(0);
    }
    return sum;
  }
}
