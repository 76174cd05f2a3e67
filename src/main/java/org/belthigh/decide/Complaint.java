package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: something was reported about a player and is not
 * over. Public only because the rules are built as a model of their own.
 *
 * @param kind what was reported; never a clearance
 * @param first day of the first report
 * @param last day of the latest report of the same kind
 * @param until that day, where only the day of the report itself is meant; else empty: a person
 *     ends it
 * @param name first name, for the sentence
 */
public record Complaint(
    String player,
    Wellness.Kind kind,
    LocalDate first,
    LocalDate last,
    Optional<LocalDate> until,
    String name) {
  /** Whether only the day of the report is meant. */
  public boolean dayAlone() {
    return until.isPresent();
  }
}
