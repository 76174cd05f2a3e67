package org.belthigh.handout.kit;

import java.util.List;

/** A part of a print that knows its height for a width. Immutable; may be laid out many times. */
interface Block {
  /**
   * Lays the block out in a column, as new children of a structure element.
   *
   * @param width of the column, in points
   */
  List<Piece> pieces(Tag parent, double width, Setting setting);

  /** The widths it can live with. */
  Extent extent(Setting setting);

  /**
   * Widths of a block.
   *
   * @param least narrower than this, words break or drawings do not fit, in points
   * @param preferred wider than this brings nothing, in points; at least {@code least}
   */
  record Extent(double least, double preferred) {
    static final Extent NONE = new Extent(0, 0);

    Extent over(Extent other) {
      return new Extent(Math.max(least, other.least), Math.max(preferred, other.preferred));
    }

    Extent plus(double width) {
      return new Extent(least + width, preferred + width);
    }
  }
}
