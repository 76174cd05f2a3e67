package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: may the player pitch and catch on that day? Public
 * only because the rules are built as a model of their own.
 */
public record AskedDay(String player, LocalDate day) {}
