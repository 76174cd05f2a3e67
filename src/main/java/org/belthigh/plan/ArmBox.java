package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Phrase;

/**
 * When a player may throw and pitch again.
 *
 * @param lines plain sentences, without a cause
 * @param ends who can end a stop, for the family alone; empty where nothing is stopped
 * @param knownTo last day of which any outing was reported
 * @param source where the rule comes from, as a sentence
 */
public record ArmBox(
    List<Phrase> lines, List<Phrase> ends, Optional<LocalDate> knownTo, Phrase source) {
  public ArmBox {
    lines = List.copyOf(lines);
    ends = List.copyOf(ends);
  }

  /** This box for the eyes of others. */
  ArmBox inTheOpen() {
    return new ArmBox(lines, List.of(), knownTo, source);
  }
}
