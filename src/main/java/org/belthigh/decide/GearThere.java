package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: the place has at least one. Public only because
 * the rules are built as a model of their own.
 */
public record GearThere(String gear) {}
