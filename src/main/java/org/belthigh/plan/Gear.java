package org.belthigh.plan;

import java.util.Set;
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
  static final String SCREEN = "screen";
  static final String HELMET = "helmet";
  static final String EYEWEAR = "eyewear";
  static final String NET = "net";
  static final String MACHINE = "machine";

  /** What sheets give a number of; of balls, cones and cards there are as many as there are. */
  private static final Set<String> NUMBERED =
      Set.of("tee", "bat", HELMET, EYEWEAR, SCREEN, NET, MACHINE, "target", "plate");

  public Gear {
    if (count < 1) {
      throw new IllegalArgumentException("Nobody needs " + count + " of " + id);
    }
  }

  /** The same thing, so many of it. */
  Gear times(int number) {
    return new Gear(id, name, number);
  }

  /** Its name, with the number where that is not plain. */
  public Phrase says() {
    return NUMBERED.contains(id)
        ? Phrase.of("gear.count", "name", name, "count", count)
        : Phrase.of("gear", "name", name);
  }
}
