package org.belthigh.decide;

/**
 * Concluded by rules of the pack {@code progress}: a step that the next one needs is not behind the
 * player. Public only because the rules are built as a model of their own.
 */
public record Missing(Standing standing, String need) {}
