package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * One of several columns that stand side by side.
 *
 * @param x distance from the left edge of the whole, in points
 * @param pieces its content from the top
 */
record Lane(double x, List<Piece> pieces) {
  Lane {
    pieces = List.copyOf(pieces);
  }

  /**
   * Lanes as one piece; as several, only where the highest lane is higher than a page.
   *
   * @param room height of a page, in points
   */
  static List<Piece> sideBySide(String what, List<Lane> lanes, double room) {
    List<List<List<Piece>>> slices =
        lanes.stream().map(lane -> Stack.slices(lane.pieces(), room)).toList();
    int parts = slices.stream().mapToInt(List::size).max().orElse(0);
    List<Piece> pieces = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      if (part > 0) {
        pieces.add(Piece.pageBreak());
      }
      List<Lane> cut = new ArrayList<>();
      for (int i = 0; i < lanes.size(); i++) {
        List<List<Piece>> own = slices.get(i);
        cut.add(new Lane(lanes.get(i).x(), part < own.size() ? own.get(part) : List.of()));
      }
      pieces.add(piece(what, cut));
    }
    return pieces;
  }

  private static Piece piece(String what, List<Lane> lanes) {
    double height = lanes.stream().mapToDouble(lane -> Stack.height(lane.pieces())).max().orElse(0);
    return Piece.of(
        what,
        height,
        (canvas, x, top) ->
            lanes.forEach(lane -> Stack.draw(lane.pieces(), canvas, x + lane.x(), top)));
  }
}
