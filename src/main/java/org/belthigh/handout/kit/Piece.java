package org.belthigh.handout.kit;

import java.util.Optional;

/**
 * A slice of a block that no page break divides.
 *
 * @param what for messages: the block it comes from
 * @param before least space above, in points; of two neighbours the larger space counts
 * @param after least space below, in points
 * @param height without the spaces, in points
 * @param glued stays on one page with the next piece, if a page can hold all that is so glued
 * @param breaksBefore starts a page
 * @param repeat drawn again, as decoration, where a page starts with this piece
 * @param drawing puts it on a page
 */
record Piece(
    String what,
    double before,
    double after,
    double height,
    boolean glued,
    boolean breaksBefore,
    Optional<Piece> repeat,
    Drawing drawing) {

  /** Draws a piece with its top left corner at a point. */
  interface Drawing {
    void draw(Canvas canvas, double x, double top);
  }

  static Piece of(String what, double height, Drawing drawing) {
    return new Piece(what, 0, 0, height, false, false, Optional.empty(), drawing);
  }

  Piece spaced(double spaceBefore, double spaceAfter) {
    return new Piece(
        what, spaceBefore, spaceAfter, height, glued, breaksBefore, repeat, drawing);
  }

  Piece gluedIf(boolean condition) {
    return new Piece(
        what, before, after, height, glued || condition, breaksBefore, repeat, drawing);
  }

  Piece repeating(Piece head) {
    return new Piece(
        what, before, after, height, glued, breaksBefore, Optional.of(head), drawing);
  }

  Piece breaking() {
    return new Piece(what, before, after, height, glued, true, repeat, drawing);
  }

  /** The same piece with another height and drawing, such as a frame around it. */
  Piece redrawn(double newHeight, Drawing newDrawing) {
    return new Piece(
        what, before, after, newHeight, glued, breaksBefore, repeat, newDrawing);
  }
}
