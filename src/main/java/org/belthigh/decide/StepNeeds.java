package org.belthigh.decide;

import org.belthigh.model.LocalText;

/**
 * A fact for the rules of the pack {@code drill}: what must be behind a player before a step is.
 * Public only because the rules are built as a model of their own.
 *
 * @param name of the step that is needed, for the sentence
 */
public record StepNeeds(String step, String needed, LocalText name) {}
