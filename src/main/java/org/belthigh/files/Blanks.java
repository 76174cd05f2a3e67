package org.belthigh.files;

/** Characters that nobody sees: blanks around a cell, and those that have no business in one. */
public final class Blanks {
  private Blanks() {}

  /**
   * {@code cell} without blanks around it, those that web pages and spreadsheets leave behind
   * (no-break and zero-width) among them.
   */
  public static String strip(String cell) {
    int from = 0;
    int to = cell.length();
    while (from < to && blank(cell.charAt(from))) {
      from++;
    }
    while (to > from && blank(cell.charAt(to - 1))) {
      to--;
    }
    return cell.substring(from, to);
  }

  private static boolean blank(char c) {
    return c <= ' '
        ? Character.isWhitespace(c)
        : c > '~' && (Character.isSpaceChar(c) || zeroWidth(c));
  }

  private static boolean zeroWidth(char c) {
    return c == '\u200B' || c == '\u2060' || c == '\uFEFF';
  }

  /**
   * The first character of {@code text} that could hide what is really there: a control character
   * other than tab and line end, a mark that turns the writing direction, a zero-width blank, or
   * half of a pair. -1 where there is none.
   */
  public static int hidden(String text) {
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if ((c < ' ' && c != '\t' && c != '\n' && c != '\r') || (c > '~' && hides(text, at))) {
        return text.codePointAt(at);
      }
    }
    return -1;
  }

  private static boolean hides(String text, int at) {
    char c = text.charAt(at);
    if (Character.isHighSurrogate(c)) {
      return at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return at == 0 || !Character.isHighSurrogate(text.charAt(at - 1));
    }
    boolean turns =
        (c >= '\u202A' && c <= '\u202E')
            || (c >= '\u2066' && c <= '\u2069')
            || c == '\u200E'
            || c == '\u200F'
            || c == '\u061C';
    return turns || zeroWidth(c) || Character.isISOControl(c) || c >= '\uFFFE';
  }
}
