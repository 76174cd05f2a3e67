package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code arm}: the last twelve calendar months of a player's arm,
 * by what was reported. A month without a report is not known to be free, so the rules only warn,
 * and only of what was seen. Public only because the rules are built as a model of their own.
 *
 * @param book who says so, for people
 * @param months in which a throw was reported, or an inning caught; 0 to 12
 * @param mostMonths the book's limit
 * @param free the longest run of months without such a report; 0 to 12
 * @param leastFree the months off in a row that the book asks for
 */
public record ThrowingYear(
    String player, String name, String book, int months, int mostMonths, int free, int leastFree) {}
