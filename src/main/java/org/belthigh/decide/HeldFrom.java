package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: a hold that is in force for the player. Public
 * only because the rules are built as a model of their own.
 */
public record HeldFrom(Hold.Kind kind) {}
