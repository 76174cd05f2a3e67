package org.belthigh.decide;

import org.belthigh.model.LocalText;

/**
 * A fact for the rules of the pack {@code drill}: what a drill needs. Public only because the rules
 * are built as a model of their own.
 *
 * @param name for the sentence
 */
public record DrillGear(String drill, String gear, LocalText name) {}
