package org.belthigh.decide;

import org.belthigh.model.Ball;

/**
 * A fact for the rules of the pack {@code drill}: such a ball is at hand, or one that takes its
 * place. Public only because the rules are built as a model of their own.
 */
public record BallThere(Ball ball) {}
