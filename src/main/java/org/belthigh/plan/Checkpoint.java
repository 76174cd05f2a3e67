package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Objects;
import org.belthigh.model.Phrase;

/**
 * The day from which on a player's weeks are provisional.
 *
 * @param day of the next plan
 * @param what a sentence: on what the weeks from then on depend
 */
public record Checkpoint(LocalDate day, Phrase what) {
  public Checkpoint {
    Objects.requireNonNull(day);
    Objects.requireNonNull(what);
  }

  /** From when on the weeks are provisional, and on what they depend. */
  public Phrase both() {
    return Phrase.of("depends", "date", day, "what", what);
  }

  /** From when on the weeks are provisional, for a whole group. */
  public Phrase since() {
    return Phrase.of("depends.since", "date", day);
  }
}
