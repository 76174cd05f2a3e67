package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code progress}: the step that follows on the ladder. Public
 * only because the rules are built as a model of their own.
 *
 * @param fromAge youngest age, in whole years, at which {@code next} is asked for
 */
public record NextStep(String step, String next, int fromAge) {}
