package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: somebody cleared a player who cannot clear that.
 * Public only because the rules are built as a model of their own.
 *
 * @param kind what was to be ended, and goes on
 * @param by who said so
 */
public record IdleClearance(
    String player, Wellness.Kind kind, Wellness.Role by, LocalDate date, String name) {}
