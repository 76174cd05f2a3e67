package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code arm}: the rest that an edition asks for. Public only
 * because the rules are built as a model of their own.
 *
 * @param edition the edition's key
 * @param ageFrom youngest age of the row, in whole years
 * @param ageTo oldest age of it
 * @param from fewest pitches of the row
 * @param to most pitches of it
 * @param days full calendar days of rest
 * @param confirmed whether the row itself was seen in a source
 */
public record RestRow(
    String edition, int ageFrom, int ageTo, int from, int to, int days, boolean confirmed) {}
