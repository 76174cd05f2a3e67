package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: a stop on throwing. Public only because the rules
 * are built as a model of their own.
 *
 * @param from first day
 * @param to last day; far off where only a person ends it
 */
public record Stopped(String player, LocalDate from, LocalDate to) {}
