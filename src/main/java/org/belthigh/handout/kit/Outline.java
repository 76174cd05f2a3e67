package org.belthigh.handout.kit;

/** The level of the heading last set; levels may not be skipped on the way down. */
final class Outline {
  private int level;

  /** The outline of blocks inside others: their headings do not count for what follows outside. */
  Outline inside() {
    Outline inside = new Outline();
    inside.level = level;
    return inside;
  }

  void enter(int next, String heading) {
    if (next > level + 1) {
      throw new IllegalArgumentException(
          "heading \"%s\": level %s follows level %s; levels must not be skipped."
              .formatted(heading, next, level));
    }
    level = next;
  }

  /** One below the heading last set: the level of a box's title. */
  int below() {
    return Math.min(level + 1, 6);
  }
}
