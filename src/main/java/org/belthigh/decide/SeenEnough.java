package org.belthigh.decide;

/**
 * Concluded by a rule of the pack {@code progress}: enough tosses of each kind were seen. Public
 * only because the rules are built as a model of their own.
 */
public record SeenEnough(Standing standing) {}
