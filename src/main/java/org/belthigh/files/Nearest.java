package org.belthigh.files;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one probably meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The candidate with the smallest edit distance to {@code word}, at most a third of its length
   * (at least 1); ties go to the first in alphabetical order. Empty where none is near.
   */
  public static Optional<String> to(String word, Collection<String> candidates) {
    String wanted = word.toLowerCase(Locale.ROOT);
    int reach = Math.max(1, wanted.length() / 3);
    return candidates.stream()
        .filter(c -> distance(wanted, c.toLowerCase(Locale.ROOT)) <= reach)
        .min(
            Comparator.<String>comparingInt(c -> distance(wanted, c.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Edits that turn {@code a} into {@code b}: one letter put in, out, exchanged or swapped. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 ? j : j == 0 ? i : step(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int[][] d, int i, int j) {
    int exchange = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(d[i - 1][j - 1] + exchange, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
