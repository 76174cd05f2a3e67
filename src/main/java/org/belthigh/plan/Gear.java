package org.belthigh.plan;

import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;

/**
 * A thing that must be there, and how many of it.
 *
 * @param id as the curriculum names it
 * @param name as sheets name it
 * @param count how many are in use at one time, at least 1
 */
public record Gear(String id, LocalText name, int count) {
  public Gear {
    if (count < 1) {
      throw new IllegalArgumentException("Nobody needs " + count + " of " + id);
    }
  }

  /** Its name. */
  public Phrase says() {
    return Phrase.of("gear", "name", name);
  }
}
