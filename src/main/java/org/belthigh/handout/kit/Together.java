package org.belthigh.handout.kit;

import java.util.List;

/** Blocks that stay on one page if a page can hold them. */
record Together(Flow content) implements Block {
  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    return Stack.glued(content.pieces(parent, width, setting), Piece.Glue.GROUP);
  }

  @Override
  public Extent extent(Setting setting) {
    return content.extent(setting);
  }
}
