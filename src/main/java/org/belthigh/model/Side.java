package org.belthigh.model;

/** A side of the plate, or the hand that throws. */
public enum Side implements Coded {
  LEFT("L"),
  RIGHT("R");

  private final String letter;

  Side(String letter) {
    this.letter = letter;
  }

  @Override
  public String id() {
    return letter.toLowerCase(java.util.Locale.ROOT);
  }

  /** {@code L} or {@code R}, as in files. */
  public String letter() {
    return letter;
  }
}
