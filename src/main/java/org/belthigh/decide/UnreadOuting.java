package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: an outing that may be the player's and could not be
 * read. Public only because the rules are built as a model of their own.
 *
 * @param row tells rows apart that are alike
 * @param date the day asked about where the row has none that can be read
 */
public record UnreadOuting(int row, String player, LocalDate date) {}
