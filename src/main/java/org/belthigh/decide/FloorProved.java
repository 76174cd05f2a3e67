package org.belthigh.decide;

/**
 * Concluded by a rule of the pack {@code progress}: the floor is proved. Public only because the
 * rules are built as a model of their own.
 */
public record FloorProved(Standing standing) {}
