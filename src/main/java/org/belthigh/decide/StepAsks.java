package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code progress}: how many counted tosses a step asks for.
 * Public only because the rules are built as a model of their own.
 *
 * @param kinds of tosses among which the step's number is shared out
 * @param tosses of each kind
 */
public record StepAsks(String step, int kinds, int tosses) {}
