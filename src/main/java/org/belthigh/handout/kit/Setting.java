package org.belthigh.handout.kit;

/**
 * What a block must know to lay itself out.
 *
 * @param style the type sizes
 * @param room height of a whole page's body, in points
 * @param scale how much larger than usual the print is, 1 or more: drawings may shrink by as much
 */
record Setting(Style style, double room, double scale) {
  Setting within(double lost) {
    return new Setting(style, room - lost, scale);
  }
}
