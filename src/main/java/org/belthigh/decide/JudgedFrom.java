package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code progress}: below {@code age} the step is a game. Public
 * only because the rules are built as a model of their own.
 *
 * @param age in whole years; 0 where it is judged at every age
 */
public record JudgedFrom(String step, int age) {}
