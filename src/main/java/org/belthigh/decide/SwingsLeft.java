package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: how many swings the load leaves the player, and
 * how many tosses a session has, each of which may be one. Public only because the rules are built
 * as a model of their own.
 */
public record SwingsLeft(int left, int tosses) {}
