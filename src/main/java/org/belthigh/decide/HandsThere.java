package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: somebody is there. Public only because the rules
 * are built as a model of their own.
 */
public record HandsThere(Hands whose) {}
