package org.belthigh.model;

import java.util.Locale;
import java.util.Optional;

/** How a player bats. */
public enum Bats implements Coded {
  LEFT("L"),
  RIGHT("R"),
  SWITCH("S");

  private final String letter;

  Bats(String letter) {
    this.letter = letter;
  }

  @Override
  public String id() {
    return letter.toLowerCase(Locale.ROOT);
  }

  /** {@code L}, {@code R} or {@code S}, as in files. */
  public String letter() {
    return letter;
  }

  /** The one side of the plate; empty for a switch hitter. */
  public Optional<Side> side() {
    return switch (this) {
      case LEFT -> Optional.of(Side.LEFT);
      case RIGHT -> Optional.of(Side.RIGHT);
      case SWITCH -> Optional.empty();
    };
  }
}
