package org.belthigh.handout.kit;

/**
 * A table's column: how wide, and where its text stands.
 *
 * @param kind what {@code measure} means
 * @param measure share of the free width, or width in points; 0 for a column as wide as its content
 */
public record Col(Kind kind, double measure, Align align) {
  /** How the width of a column is found. */
  public enum Kind {
    CONTENT,
    SHARE,
    FIXED
  }

  public Col {
    if (kind != Kind.CONTENT && !(measure > 0)) {
      throw new IllegalArgumentException("column " + kind + " " + measure + ": must be above 0.");
    }
  }

  /** As wide as its widest content, if there is room. */
  public static Col content() {
    return new Col(Kind.CONTENT, 0, Align.LEFT);
  }

  /** A share of the width that the others leave, never narrower than its longest word. */
  public static Col share(double share) {
    return new Col(Kind.SHARE, share, Align.LEFT);
  }

  /** A width in millimetres without padding, or its longest word if that is wider. */
  public static Col mm(double millimetres) {
    return new Col(Kind.FIXED, Length.mm(millimetres), Align.LEFT);
  }

  public Col centred() {
    return new Col(kind, measure, Align.CENTRE);
  }

  /** For numbers. */
  public Col right() {
    return new Col(kind, measure, Align.RIGHT);
  }
}
