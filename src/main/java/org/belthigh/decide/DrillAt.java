package org.belthigh.decide;

import org.belthigh.model.Ball;
import org.belthigh.model.Place;

/**
 * A fact for the rules of the pack {@code drill}: it may be done at that place, with that ball.
 * Public only because the rules are built as a model of their own.
 */
public record DrillAt(String drill, Place place, Ball ball) {}
