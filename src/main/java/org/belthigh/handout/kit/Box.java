package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/** A frame around blocks; with a hatched edge where it must not be missed. */
record Box(Flow content, boolean hatched) implements Block {
  private static final double PADDING = 7;
  private static final double HATCHED_EDGE = 9;
  private static final double HATCH_PITCH = 4;

  @Override
  public List<Piece> pieces(Tag parent, double width, Setting setting) {
    List<Piece> inner =
        content.pieces(parent.child("Sect"), width - left() - PADDING, setting.within(2 * PADDING));
    List<Piece> framed = new ArrayList<>();
    for (int i = 0; i < inner.size(); i++) {
      double above = i == 0 ? PADDING : Stack.gap(inner.get(i - 1), inner.get(i));
      framed.add(framed(inner.get(i), above, i == 0, i == inner.size() - 1, width));
    }
    return Stack.glued(framed, Piece.Glue.GROUP);
  }

  /** A piece with its stretch of the frame: the sides, and the top or the bottom at an end. */
  private Piece framed(Piece piece, double above, boolean first, boolean last, double width) {
    double height = above + piece.height() + (last ? PADDING : 0);
    Piece framed =
        piece
            .redrawn(
                height,
                (canvas, x, top) -> {
                  canvas.decorate(ink -> edges(ink, x, top, width, height, first, last));
                  piece.drawing().draw(canvas, x + left(), top + above);
                })
            .spaced(first ? Style.SPACE : 0, last ? Style.SPACE : 0);
    return piece
        .repeat()
        .map(head -> framed.repeating(framed(head, PADDING, false, false, width)))
        .orElse(framed);
  }

  private void edges(
      Ink ink, double x, double top, double width, double height, boolean first, boolean last) {
    double weight = hatched ? Style.MEDIUM : Style.THIN;
    double bottom = top + height;
    if (hatched) {
      ink.hatch(x, top, HATCHED_EDGE, height, HATCH_PITCH);
      ink.rule(x + HATCHED_EDGE, top, x + HATCHED_EDGE, bottom, Style.THIN);
    }
    ink.rule(x, top, x, bottom, weight);
    ink.rule(x + width, top, x + width, bottom, weight);
    double corner = weight / 2;
    if (first) {
      ink.rule(x - corner, top, x + width + corner, top, weight);
    }
    if (last) {
      ink.rule(x - corner, bottom, x + width + corner, bottom, weight);
    }
  }

  private double left() {
    return PADDING + (hatched ? HATCHED_EDGE : 0);
  }

  @Override
  public Extent extent(Setting setting) {
    return content.extent(setting).plus(left() + PADDING);
  }
}
