package org.belthigh.decide;

import org.belthigh.model.LocalText;
import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code drill}: the step of a skill that the player works on.
 * Public only because the rules are built as a model of their own.
 *
 * @param name the step's, for the sentence
 * @param rung 1 for the first step of the ladder
 */
public record WorksOn(Skill skill, String step, LocalText name, int rung) {}
