package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Phrase;

/**
 * When a player may throw and pitch again.
 *
 * @param lines plain sentences for the family
 * @param knownTo last day of which any outing was reported
 * @param source where the rule comes from, as a sentence
 */
public record ArmBox(List<Phrase> lines, Optional<LocalDate> knownTo, Phrase source) {
  public ArmBox {
    lines = List.copyOf(lines);
  }
}
