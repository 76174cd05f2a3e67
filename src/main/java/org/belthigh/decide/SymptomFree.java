package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code hold}: the family said that the player feels well again.
 * Public only because the rules are built as a model of their own.
 */
public record SymptomFree(String player, String name, LocalDate date) {}
