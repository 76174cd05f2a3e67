package org.belthigh.decide;

/**
 * Concluded by a rule of the pack {@code progress}: the mark is proved. Public only because the
 * rules are built as a model of their own.
 */
public record MarkProved(Standing standing) {}
