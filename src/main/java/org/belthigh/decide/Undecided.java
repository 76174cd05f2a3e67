package org.belthigh.decide;

/**
 * Concluded by a rule of the pack {@code progress}: neither the mark nor the floor is proved.
 * Public only because the rules are built as a model of their own.
 */
public record Undecided(Standing standing) {}
