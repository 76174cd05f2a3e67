package org.belthigh.model;

import java.util.Optional;

/**
 * Where a toss crossed the plate, relative to the hitter, or {@link #BALL} outside all nine spots.
 *
 * <p>"In" is next to the hitter, so the picture is mirrored between a left-handed and a
 * right-handed hitter. Numbers run by row from the bottom, each from in to away: low 1-2-3, belt
 * 4-5-6, high 7-8-9.
 */
public enum Spot implements Coded {
  LOW_IN,
  LOW_MIDDLE,
  LOW_AWAY,
  BELT_IN,
  BELT_MIDDLE,
  BELT_AWAY,
  HIGH_IN,
  HIGH_MIDDLE,
  HIGH_AWAY,
  BALL;

  /** The spot numbered {@code number}, 1 to 9; empty for any other number. */
  public static Optional<Spot> numbered(int number) {
    return number >= 1 && number <= 9 ? Optional.of(values()[number - 1]) : Optional.empty();
  }

  /**
   * The spot that {@code text} names, as files write it: {@code 1} to {@code 9}, {@code ball}, or
   * height and width in either order, such as {@code low-in} or {@code away belt}. Empty for
   * anything else.
   */
  public static Optional<Spot> parse(String text) {
    String word = text.strip();
    if (word.length() == 1) {
      return numbered(word.charAt(0) - '0');
    }
    return Coded.find(Spot.class, word).or(() -> Coded.find(Spot.class, turned(word)));
  }

  private static String turned(String word) {
    String[] parts = word.split("[-_ ]+", -1);
    return parts.length == 2 ? parts[1] + "-" + parts[0] : word;
  }

  /** The spot in that row and column. */
  public static Spot at(Row row, Column column) {
    return values()[row.ordinal() * 3 + column.ordinal()];
  }

  /** The number in files, 1 to 9. @throws IllegalStateException for a ball, which has none */
  public int number() {
    if (this == BALL) {
      throw new IllegalStateException("A ball has no spot number");
    }
    return ordinal() + 1;
  }

  /** Whether this is one of the nine. */
  public boolean strike() {
    return this != BALL;
  }

  /** Whether this is one of the three belt-high spots. */
  public boolean beltHigh() {
    return row().filter(r -> r == Row.BELT).isPresent();
  }

  /** The height; empty for a ball. */
  public Optional<Row> row() {
    return strike() ? Optional.of(Row.values()[ordinal() / 3]) : Optional.empty();
  }

  /** The width; empty for a ball. */
  public Optional<Column> column() {
    return strike() ? Optional.of(Column.values()[ordinal() % 3]) : Optional.empty();
  }
}
