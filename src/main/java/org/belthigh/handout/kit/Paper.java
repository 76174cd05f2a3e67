package org.belthigh.handout.kit;

/** A sheet of paper, standing or lying, or the half of a lying one, which stands. */
public enum Paper {
  LETTER(612, 792),
  LETTER_LYING(792, 612),
  A4(595.28, 841.89),
  A4_LYING(841.89, 595.28),
  LETTER_HALF(396, 612),
  A4_HALF(420.945, 595.28);

  /** White edge on all four sides: 14 mm, more than the 12.7 mm that home printers ask for. */
  public static final double MARGIN = Length.mm(14);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Width of the sheet, in points. */
  public double width() {
    return width;
  }

  /** Height of the sheet, in points. */
  public double height() {
    return height;
  }

  /** Width between the margins, in points. */
  public double textWidth() {
    return width - 2 * MARGIN;
  }

  /** The same sheet, lying; of a half, the sheet that it is the half of. */
  public Paper lying() {
    return switch (this) {
      case LETTER, LETTER_LYING, LETTER_HALF -> LETTER_LYING;
      case A4, A4_LYING, A4_HALF -> A4_LYING;
    };
  }

  /** Half of the same sheet, lying. */
  public Paper half() {
    return lying() == LETTER_LYING ? LETTER_HALF : A4_HALF;
  }

  /**
   * Standing paper by the name used in {@code club.yaml}.
   *
   * @throws IllegalArgumentException if the name is neither {@code letter} nor {@code a4}
   */
  public static Paper parse(String name) {
    return switch (name) {
      case "letter" -> LETTER;
      case "a4" -> A4;
      default ->
          throw new IllegalArgumentException(
              "paper: '" + name + "' is not known; paper must be letter or a4.");
    };
  }
}
