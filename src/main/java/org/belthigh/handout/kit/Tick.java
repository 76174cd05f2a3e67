package org.belthigh.handout.kit;

/**
 * A box to tick, with a short label after it.
 *
 * @param label drawn after the box; may be empty
 * @param alternate what a tick here says, for a screen reader; never blank
 */
public record Tick(String label, String alternate) {
  public Tick {
    if (alternate.isBlank()) {
      throw new IllegalArgumentException("a box to tick must say what a tick in it means.");
    }
  }

  /** A box whose label says it all. */
  public static Tick of(String label) {
    return new Tick(label, label);
  }

  /** A box without a drawn label, such as one in a grid. */
  public static Tick bare(String alternate) {
    return new Tick("", alternate);
  }
}
