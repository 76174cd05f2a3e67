package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: who must be there beside the hitters. Public only
 * because the rules are built as a model of their own.
 */
public record DrillHands(String drill, Hands whose) {}
