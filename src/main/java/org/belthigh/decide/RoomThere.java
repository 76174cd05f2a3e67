package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code drill}: how much room a place has, where that is known.
 * Public only because the rules are built as a model of their own.
 *
 * @param feet the farthest toss
 * @param swings whether a bat may be swung
 */
public record RoomThere(int feet, boolean swings) {}
