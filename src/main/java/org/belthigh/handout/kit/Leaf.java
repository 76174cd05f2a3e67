package org.belthigh.handout.kit;

import java.util.List;

/**
 * One page of a print, laid out.
 *
 * @param section the print
 * @param placed what stands on the page
 * @param number from 1
 * @param count of the print's pages
 */
record Leaf(Section section, List<Galley.Placed> placed, int number, int count) {
  Leaf {
    placed = List.copyOf(placed);
  }

  boolean first() {
    return number == 1;
  }

  void draw(Canvas canvas) {
    section.draw(canvas, placed, count);
  }
}
