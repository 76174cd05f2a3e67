package org.belthigh.intake;

import java.util.Optional;

/**
 * A number as people type it: digits, perhaps a sign, perhaps decimals after a point or a comma.
 *
 * @param text with a point
 * @param comma whether a comma stood for the point
 * @param value the number itself
 */
record Numeral(String text, boolean comma, double value) {
  private static final int MOST_DIGITS = 9;
  private static final int THOUSANDS = 3;

  /**
   * The number in {@code cell}. Empty for anything else, and where a comma may set thousands apart.
   */
  static Optional<Numeral> parse(String cell) {
    int at = cell.startsWith("+") || cell.startsWith("-") ? 1 : 0;
    int whole = digits(cell, at);
    int mark = at + whole;
    if (whole == 0 || whole > MOST_DIGITS) {
      return Optional.empty();
    }
    if (mark == cell.length()) {
      return Optional.of(new Numeral(cell, false, Integer.parseInt(cell)));
    }
    boolean comma = cell.charAt(mark) == ',';
    int decimals = digits(cell, mark + 1);
    boolean sound =
        (comma || cell.charAt(mark) == '.')
            && decimals > 0
            && decimals <= MOST_DIGITS
            && mark + 1 + decimals == cell.length()
            && !(comma && decimals == THOUSANDS);
    if (!sound) {
      return Optional.empty();
    }
    String text = comma ? cell.replace(',', '.') : cell;
    return Optional.of(new Numeral(text, comma, Double.parseDouble(text)));
  }

  private static int digits(String cell, int from) {
    int at = from;
    while (at < cell.length() && cell.charAt(at) >= '0' && cell.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }

  /** Whether nothing but zeros stands behind the point. */
  boolean whole() {
    return value == Math.rint(value);
  }
}
