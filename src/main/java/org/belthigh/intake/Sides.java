package org.belthigh.intake;

import java.util.Locale;
import java.util.Optional;
import org.belthigh.model.Bats;
import org.belthigh.model.Side;

/** Sides as people type them: {@code L}, {@code left}, {@code S}, {@code switch}. */
final class Sides {
  private Sides() {}

  /** One side of the plate, or a hand. */
  static Optional<Side> parse(String text) {
    return parseBats(text).flatMap(Bats::side);
  }

  /** How a player bats, in Spanish too: {@code zurdo}, {@code D}. */
  static Optional<Bats> understood(String text) {
    return parseBats(text).or(() -> Vocabulary.word("bats", text).flatMap(Sides::parseBats));
  }

  /** How a player bats. */
  static Optional<Bats> parseBats(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "l", "left" -> Optional.of(Bats.LEFT);
      case "r", "right" -> Optional.of(Bats.RIGHT);
      case "s", "switch", "both" -> Optional.of(Bats.SWITCH);
      default -> Optional.empty();
    };
  }
}
