package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code arm}: a report that may be about the player, and may
 * still hold, could not be read. Public only because the rules are built as a model of their own.
 */
public record Doubtful(String player) {}
