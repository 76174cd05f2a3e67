package org.belthigh.handout.kit;

import java.util.List;

/** Empty space, gone at the top of a page; or the start of a new page. */
record Gap(double height, boolean newPage) implements Block {
  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    return List.of(
        newPage
            ? Piece.pageBreak()
            : Piece.of("space", 0, (canvas, x, top) -> {}).spaced(height, 0));
  }

  @Override
  public Extent extent(Setting setting) {
    return Extent.NONE;
  }
}
