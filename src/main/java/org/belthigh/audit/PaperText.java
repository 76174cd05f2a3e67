package org.belthigh.audit;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * Words as they stand on paper, compared by letters and digits alone: line ends, hyphens, blanks,
 * marks and case do not count.
 */
final class PaperText {
  /** Fewest letters of a sentence's part, where a page ends within it. */
  private static final int LEAST = 3;

  private final String squeezed;

  /** For each letter of {@code squeezed}: whether a word or number begins there. */
  private final boolean[] begins;

  private PaperText(String squeezed, boolean[] begins) {
    this.squeezed = squeezed;
    this.begins = begins;
  }

  PaperText(String text) {
    String plain = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    StringBuilder letters = new StringBuilder();
    boolean[] starts = new boolean[plain.length() + 1];
    boolean gap = true;
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (Character.isLetterOrDigit(c) || Character.isSurrogate(c)) {
        starts[letters.length()] = gap;
        letters.append(c);
        gap = false;
      } else {
        gap = true;
      }
    }
    starts[letters.length()] = true;
    this.squeezed = letters.toString();
    this.begins = starts;
  }

  /** The letters from {@code from} to before {@code to}, both as {@link #find} counts them. */
  PaperText between(int from, int to) {
    boolean[] part = Arrays.copyOfRange(begins, from, to + 1);
    part[to - from] = true;
    return new PaperText(squeezed.substring(from, to), part);
  }

  static String squeeze(String text) {
    return new PaperText(text).squeezed;
  }

  String squeezed() {
    return squeezed;
  }

  boolean startsWith(String words) {
    return squeezed.startsWith(squeeze(words));
  }

  /** Whether {@code words} stand here, in their order and with nothing between. */
  boolean has(String words) {
    return squeezed.contains(squeeze(words));
  }

  /** Where {@code words} begin, as whole words, from {@code from} on; -1 where they do not. */
  int find(String words, int from) {
    String wanted = squeeze(words);
    int at = squeezed.indexOf(wanted, from);
    while (at >= 0 && !(begins[at] && begins[at + wanted.length()])) {
      at = squeezed.indexOf(wanted, at + 1);
    }
    return wanted.isEmpty() ? -1 : at;
  }

  /** How often {@code words} stand here as whole words. */
  int count(String words) {
    int count = 0;
    for (int at = find(words, 0); at >= 0; at = find(words, at + 1)) {
      count++;
    }
    return count;
  }

  /** Tells each place at which {@code words} begin, as whole words. */
  void each(String words, IntConsumer at) {
    for (int i = find(words, 0); i >= 0; i = find(words, i + 1)) {
      at.accept(i);
    }
  }

  /** The first number that stands after {@code at}; empty where there is none. */
  Optional<String> numberAfter(int at) {
    int from = at;
    while (from < squeezed.length() && !Character.isDigit(squeezed.charAt(from))) {
      from++;
    }
    int to = from;
    while (to < squeezed.length()
        && Character.isDigit(squeezed.charAt(to))
        && (to == from || !begins[to])) {
      to++;
    }
    return to > from ? Optional.of(squeezed.substring(from, to)) : Optional.empty();
  }

  boolean hasWords(String words) {
    return find(words, 0) >= 0;
  }

  /** Whether {@code words} stand on one of {@code pages}, or begin on one and end on the next. */
  static boolean have(List<PaperText> pages, String words) {
    String wanted = squeeze(words);
    for (int i = 0; i < pages.size(); i++) {
      if (pages.get(i).squeezed.contains(wanted)
          || (i > 0 && across(pages.get(i - 1).squeezed, pages.get(i).squeezed, wanted))) {
        return true;
      }
    }
    return false;
  }

  private static boolean across(String page, String next, String wanted) {
    for (int cut = LEAST; cut <= wanted.length() - LEAST; cut++) {
      if (page.contains(wanted.substring(0, cut)) && next.contains(wanted.substring(cut))) {
        return true;
      }
    }
    return false;
  }
}
