package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.intake.Wellness;

/**
 * That a word which was to end a complaint ends nothing. Public only because the rules are built as
 * a model of their own.
 *
 * @param kind what goes on
 * @param by whose word it was, where that is the reason
 * @param date of the word
 */
public record ClearanceVerdict(
    String rule,
    String player,
    String name,
    Wellness.Kind kind,
    Optional<Wellness.Role> by,
    LocalDate date)
    implements Verdict {}
