package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: a day that is asked about, or of an outing; each
 * once. Public only because the rules are built as a model of their own.
 */
public record OnDay(LocalDate day) {}
