package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: somebody said that a complaint is over. Public
 * only because the rules are built as a model of their own.
 *
 * @param kind what was to be ended
 * @param by who said so; empty for a row that names nobody
 */
public record Clearance(
    String player, String name, Wellness.Kind kind, Optional<Wellness.Role> by, LocalDate date) {}
