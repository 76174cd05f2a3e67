package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: one appearance as pitcher, two games or two turns
 * in one game alike. Public only because the rules are built as a model of their own.
 *
 * @param row tells rows apart that are alike
 * @param thirds thirds of an inning pitched; 0 where they were not written down
 * @param unwritten 1 where they were not
 */
public record Appearance(int row, String player, LocalDate date, int thirds, int unwritten) {}
