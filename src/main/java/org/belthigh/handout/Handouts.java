package org.belthigh.handout;

import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** Turns plans into PDF. */
public final class Handouts {
  private final Words words;

  /** Prints in the languages of {@code words}. */
  public Handouts(Words words) {
    this.words = words;
  }

  /** Takes a finished print. */
  @FunctionalInterface
  public interface Tray {
    /**
     * One document.
     *
     * @param path where it belongs, relative to the output folder, with forward slashes
     */
    void take(String path, byte[] pdf);
  }

  /**
   * Prints everything in {@code plan}: per group the packet, the overview, the practice sheets, and
   * a card with home sheet for each player.
   */
  public void print(Plan plan, Tray tray) {
    if (words == null) {
      throw new IllegalStateException();
    }
  }
}
