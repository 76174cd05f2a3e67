package org.belthigh.handout.kit;

/**
 * What a block must know to lay itself out.
 *
 * @param style the type sizes
 * @param room height of a whole page's body, in points
 */
record Setting(Style style, double room) {
  Setting within(double lost) {
    return new Setting(style, room - lost);
  }
}
