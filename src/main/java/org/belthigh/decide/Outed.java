package org.belthigh.decide;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * A fact for the rules of the pack {@code arm}: an outing whose pitches count. Public only because
 * the rules are built as a model of their own.
 *
 * @param row tells rows apart that are alike
 * @param pitches all that were thrown, at least 1
 * @param beforeLastBatter those before the last batter; empty where not reported
 */
public record Outed(
    int row, String player, LocalDate date, int pitches, OptionalInt beforeLastBatter) {}
