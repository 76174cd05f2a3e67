package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: pitches of one day against the book's limit. Public
 * only because the rules are built as a model of their own.
 */
public record PitchedDay(
    String player, String name, String book, LocalDate date, int pitches, int dailyMax) {}
