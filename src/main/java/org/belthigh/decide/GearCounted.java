package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: whether a place has that gear is asked; other
 * gear is taken to be there. Public only because the rules are built as a model of their own.
 */
public record GearCounted(String gear) {}
