package org.belthigh.decide;

import java.time.LocalDate;

/**
 * A fact for the rules of the pack {@code arm}: a player of the roster, who may pitch or not.
 * Public only because the rules are built as a model of their own.
 *
 * @param name first name, for the sentence
 * @param listed whether the roster lets the player pitch
 * @param softball whether the player's group plays softball
 */
public record Pitcher(
    String player, String name, LocalDate born, boolean listed, boolean softball) {}
