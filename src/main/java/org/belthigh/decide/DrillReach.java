package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: how far away who tosses stands, at the age that
 * is asked about. Public only because the rules are built as a model of their own.
 *
 * @param feet 0 where nobody tosses
 */
public record DrillReach(String drill, int feet) {}
