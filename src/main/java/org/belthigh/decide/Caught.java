package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: what was caught in one outing. Public only because
 * the rules are built as a model of their own.
 *
 * @param row tells rows apart that are alike
 * @param innings in which at least one pitch was caught, at least 1
 */
public record Caught(int row, String player, LocalDate date, int innings) {}
