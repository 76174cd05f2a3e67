package org.belthigh.handout.kit;

import com.google.errorprone.annotations.Immutable;

/**
 * The type sizes of a print, and the one spacing scale that all prints share.
 *
 * <p>{@link #READER} is for players and parents (body 11 pt), {@link #CLIPBOARD} for coaches and
 * the coordinator (body 10 pt). Headings, body and small print are the only sizes there are.
 */
public enum Style {
  READER(new Size(11, 14), new Size(21, 25), new Size(14, 18), new Size(12, 15)),
  /** As {@link #READER}, set closer for a sheet that would just run over its page. */
  READER_SNUG(new Size(11, 12.8), new Size(17, 20), new Size(12.5, 15), new Size(11.5, 13.5)),
  CLIPBOARD(new Size(10, 13), new Size(17, 21), new Size(12.5, 16), new Size(11, 14)),
  /** As {@link #CLIPBOARD}, set closer for a sheet that would just run over its pages. */
  CLIPBOARD_SNUG(new Size(10, 11.7), new Size(15, 18), new Size(11.5, 14), new Size(10.5, 12.5));

  /**
   * Type size and the distance from line to line, both in points.
   *
   * @param type size of the type, at least 8
   * @param line line height, at least the type size
   */
  @Immutable
  public record Size(double type, double line) {
    public Size {
      if (type < 8 || line < type) {
        throw new IllegalArgumentException(
            "size " + type + "/" + line + ": type must be 8 or more and the line no lower.");
      }
    }

    /** Distance from the top of the line to its baseline: the type is centred in its line. */
    double baseline() {
      return (line - type) / 2 + 0.83 * type;
    }
  }

  /** The spacing scale. */
  static final double HAIR_SPACE = 2;

  static final double NARROW = 4;
  static final double SPACE = 8;
  static final double WIDE = 14;

  /** Rules: between rows, around boxes, under heads. */
  static final double THIN = 0.5;

  static final double MEDIUM = 0.9;
  static final double THICK = 1.6;

  /** Side of a check box: 4.6 mm. */
  public static final double CHECK_BOX = Length.mm(4.6);

  /** Distance between two writing lines: 8.2 mm. */
  public static final double WRITING_LINE = Length.mm(8.2);

  private static final Size SMALL = new Size(8.5, 11);

  private final Size body;
  private final Size h1;
  private final Size h2;
  private final Size h3;

  Style(Size body, Size h1, Size h2, Size h3) {
    this.body = body;
    this.h1 = h1;
    this.h2 = h2;
    this.h3 = h3;
  }

  /** Running text, lists, tables, labels in pictures. */
  public Size body() {
    return body;
  }

  /** Footers and sources; never anything that has to be acted on. */
  public Size small() {
    return SMALL;
  }

  /** Headings; level 3 and deeper share a size. */
  public Size heading(int level) {
    return switch (level) {
      case 1 -> h1;
      case 2 -> h2;
      default -> h3;
    };
  }
}
