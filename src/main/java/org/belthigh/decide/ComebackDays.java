package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code hold}: the parameter {@code days-after-clearance}, days
 * with less, the day of the clearance among them. Public only because the rules are built as a
 * model of their own.
 */
public record ComebackDays(int days) {}
