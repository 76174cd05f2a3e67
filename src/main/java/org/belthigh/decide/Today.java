package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: nothing is known of later days. Public only because
 * the rules are built as a model of their own.
 */
public record Today(LocalDate day) {}
