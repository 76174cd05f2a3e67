package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code arm}: the parameter {@code ask-after-days}, days without
 * a report after which a pitcher is asked about first. Public only because the rules are built as a
 * model of their own.
 */
public record AskAfter(int days) {}
