package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: who is asked about. Public only because the rules
 * are built as a model of their own.
 *
 * @param name first name, for the sentence
 * @param age in whole years
 */
public record HitterAsked(String name, int age) {}
