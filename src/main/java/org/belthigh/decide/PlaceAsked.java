package org.belthigh.decide;

import org.belthigh.model.Place;

/**
 * A fact for the rules of the pack {@code drill}: drills are looked at for that place. Public only
 * because the rules are built as a model of their own.
 */
public record PlaceAsked(Place place) {}
