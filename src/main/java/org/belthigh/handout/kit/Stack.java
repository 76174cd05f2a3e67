package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/** Pieces one below the other in a column that no page break divides. */
final class Stack {
  private Stack() {}

  /** Space between two neighbours: the larger of what each asks for. */
  static double gap(Piece upper, Piece lower) {
    return Math.max(upper.after(), lower.before());
  }

  /** Height from the first piece's top to the last one's bottom. */
  static double height(List<Piece> pieces) {
    double height = 0;
    for (int i = 0; i < pieces.size(); i++) {
      height += (i == 0 ? 0 : gap(pieces.get(i - 1), pieces.get(i))) + pieces.get(i).height();
    }
    return height;
  }

  static void draw(List<Piece> pieces, Canvas canvas, double x, double top) {
    double y = top;
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      y += i == 0 ? 0 : gap(pieces.get(i - 1), piece);
      piece.drawing().draw(canvas, x, y);
      y += piece.height();
    }
  }

  /** Cuts a stack into stacks no higher than {@code room}; a single higher piece stays alone. */
  static List<List<Piece>> slices(List<Piece> pieces, double room) {
    List<List<Piece>> slices = new ArrayList<>();
    List<Piece> slice = new ArrayList<>();
    for (Piece piece : pieces) {
      slice.add(piece);
      if (slice.size() > 1 && height(slice) > room) {
        slice.remove(slice.size() - 1);
        slices.add(List.copyOf(slice));
        slice.clear();
        slice.add(piece);
      }
    }
    if (!slice.isEmpty()) {
      slices.add(List.copyOf(slice));
    }
    return slices;
  }

  /** All pieces but the last hold on to the next one. */
  static List<Piece> glued(List<Piece> pieces, Piece.Glue glue) {
    List<Piece> glued = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      glued.add(i + 1 < pieces.size() ? pieces.get(i).glued(glue) : pieces.get(i));
    }
    return glued;
  }
}
