package org.belthigh.handout.kit;

import java.util.Optional;

/**
 * A slice of a block that no page break divides.
 *
 * @param what for messages: the block it comes from
 * @param before least space above, in points; of two neighbours the larger space counts
 * @param after least space below, in points
 * @param height without the spaces, in points
 * @param glue how strongly it holds on to the next piece
 * @param breaksBefore not drawn, but what follows starts a page
 * @param repeat drawn again, as decoration, where a page starts with this piece
 * @param drawing puts it on a page
 */
record Piece(
    String what,
    double before,
    double after,
    double height,
    Glue glue,
    boolean breaksBefore,
    Optional<Piece> repeat,
    Drawing drawing) {

  /** How strongly a piece holds on to the next. */
  enum Glue {
    /** A page may end here. */
    LOOSE,
    /** One group: stays on one page if a page can hold the whole group. */
    GROUP,
    /** A heading and its text, a line too few alone: even where the group breaks. */
    TIGHT;

    Glue orStronger(Glue other) {
      return compareTo(other) >= 0 ? this : other;
    }
  }

  /** Draws a piece with its top left corner at a point. */
  interface Drawing {
    void draw(Canvas canvas, double x, double top);
  }

  static Piece of(String what, double height, Drawing drawing) {
    return new Piece(what, 0, 0, height, Glue.LOOSE, false, Optional.empty(), drawing);
  }

  /** Not drawn; what follows starts a page. */
  static Piece pageBreak() {
    return new Piece("page break", 0, 0, 0, Glue.LOOSE, true, Optional.empty(), (c, x, top) -> {});
  }

  Piece spaced(double spaceBefore, double spaceAfter) {
    return new Piece(what, spaceBefore, spaceAfter, height, glue, breaksBefore, repeat, drawing);
  }

  Piece glued(Glue atLeast) {
    return new Piece(
        what, before, after, height, glue.orStronger(atLeast), breaksBefore, repeat, drawing);
  }

  Piece repeating(Piece head) {
    return new Piece(what, before, after, height, glue, breaksBefore, Optional.of(head), drawing);
  }

  /** The same piece with another height and drawing, such as a frame around it. */
  Piece redrawn(double newHeight, Drawing newDrawing) {
    return new Piece(what, before, after, newHeight, glue, breaksBefore, repeat, newDrawing);
  }
}
