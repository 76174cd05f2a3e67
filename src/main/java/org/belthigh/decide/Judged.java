package org.belthigh.decide;

/**
 * Concluded by a rule of the pack {@code progress}: the step may be judged. Public only because the
 * rules are built as a model of their own.
 */
public record Judged(Standing standing) {}
