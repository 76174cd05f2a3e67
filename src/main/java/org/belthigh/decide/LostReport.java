package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code hold}: a health report that may be about a player could
 * not be read. Public only because the rules are built as a model of their own.
 *
 * @param date its day, or the day asked about where that could not be read either
 */
public record LostReport(String player, String name, LocalDate date) {}
