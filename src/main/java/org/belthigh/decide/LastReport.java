package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: how long nothing has been heard of a pitcher.
 * Public only because the rules are built as a model of their own.
 *
 * @param ever whether there is any report
 * @param date day of the last report; the day asked about where there is none
 * @param daysAgo from then to the day asked about
 * @param askAfter parameter {@code ask-after-days}
 * @param lost whether a report that may be about the player could not be read and may still hold
 */
public record LastReport(
    String player,
    String name,
    boolean pitcher,
    boolean ever,
    LocalDate date,
    int daysAgo,
    int askAfter,
    boolean lost) {}
