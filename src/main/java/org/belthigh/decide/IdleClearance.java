package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: somebody wrote down an end to a complaint, and it
 * ends nothing. Public only because the rules are built as a model of their own.
 *
 * @param kind what was to be ended, and goes on
 * @param why what keeps it from ending
 * @param by who said so; empty for a row that names nobody
 */
public record IdleClearance(
    String player,
    Wellness.Kind kind,
    Why why,
    Optional<Wellness.Role> by,
    LocalDate date,
    String name) {
  /** Why it ends nothing. */
  public enum Why {
    /** That role may not end it. */
    ROLE,
    /** To be free of symptoms does not end it. */
    SYMPTOM_FREE,
    /** The complaint is of the same day, and nobody knows which came first. */
    SAME_DAY
  }
}
