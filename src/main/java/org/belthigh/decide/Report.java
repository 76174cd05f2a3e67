package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: something was reported about a player's health.
 * Public only because the rules are built as a model of their own.
 *
 * @param name first name, for the sentence
 * @param kind what was reported; never a clearance
 */
public record Report(String player, String name, Wellness.Kind kind, LocalDate date) {}
