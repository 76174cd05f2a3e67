package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: that step is behind the player. Public only
 * because the rules are built as a model of their own.
 */
public record StepBehind(String step) {}
