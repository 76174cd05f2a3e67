package org.belthigh.plan;

import java.util.Set;
import org.belthigh.model.Phrase;

/**
 * A line of safety and the gear that it speaks of. Who prints the line puts the gear on the list of
 * what is needed, so that no line asks for what no list has.
 *
 * @param gear ids of the curriculum
 */
record Caution(Phrase says, Set<String> gear) {
  Caution {
    gear = Set.copyOf(gear);
  }

  static Caution of(String key, String... gear) {
    return new Caution(Phrase.of(key), Set.of(gear));
  }
}
