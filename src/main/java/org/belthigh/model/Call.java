package org.belthigh.model;

import java.util.Locale;
import java.util.Optional;

/** What the hitter called, aloud, by pointing or by hand sign. */
public sealed interface Call {
  /** One of the nine spots, or ball. */
  record AtSpot(Spot spot) implements Call {}

  /** A height only. */
  record InRow(Row row) implements Call {}

  /** A side only. */
  record InColumn(Column column) implements Call {}

  /** "Strike", no more. */
  record AnyStrike() implements Call {}

  /** No call was made, which in the zone-call drill is how a ball is answered. */
  record Silent() implements Call {}

  /**
   * The call that {@code text} names, as files write it: a spot as {@link Spot#parse} reads it, or
   * coarser {@code strike}, a row, a column; {@code none} or {@code -} for no call. Empty for
   * anything else. {@code middle} alone is the column, the row's word is {@code belt}.
   */
  static Optional<Call> parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    if (word.equals("none") || word.equals("-")) {
      return Optional.of(new Silent());
    }
    if (word.equals(Grain.STRIKE.id())) {
      return Optional.of(new AnyStrike());
    }
    return Spot.parse(word)
        .<Call>map(AtSpot::new)
        .or(() -> Coded.find(Row.class, word).map(InRow::new))
        .or(() -> Coded.find(Column.class, word).map(InColumn::new));
  }

  /** The call in the words of the files. */
  default String id() {
    if (this instanceof AtSpot at) {
      return at.spot().id();
    }
    if (this instanceof InRow in) {
      return in.row().id();
    }
    if (this instanceof InColumn in) {
      return in.column().id();
    }
    return this instanceof AnyStrike ? Grain.STRIKE.id() : "none";
  }

  /** The grain at which the call was made; a silent call answers at the finest. */
  default Grain grain() {
    if (this instanceof InRow) {
      return Grain.ROW;
    }
    if (this instanceof InColumn) {
      return Grain.COLUMN;
    }
    return this instanceof AnyStrike ? Grain.STRIKE : Grain.NINE;
  }

  /** The answer read at {@code grain}, or empty where the call was coarser than that. */
  default Optional<String> readAt(Grain grain) {
    if (this instanceof AtSpot at) {
      return Optional.of(grain.seen(at.spot()));
    }
    if (this instanceof Silent) {
      return Optional.of(Spot.BALL.id());
    }
    if (grain == Grain.STRIKE) {
      return Optional.of(Grain.STRIKE.id());
    }
    if (this instanceof InRow in && grain == Grain.ROW) {
      return Optional.of(in.row().id());
    }
    if (this instanceof InColumn in && grain == Grain.COLUMN) {
      return Optional.of(in.column().id());
    }
    return Optional.empty();
  }
}
