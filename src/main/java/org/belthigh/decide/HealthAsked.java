package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code hold}: the day that is asked about. Public only because
 * the rules are built as a model of their own.
 */
public record HealthAsked(LocalDate day) {}
