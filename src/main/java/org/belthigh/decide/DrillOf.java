package org.belthigh.decide;

import org.belthigh.model.LocalText;
import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code drill}: a step lists the drill. Public only because the
 * rules are built as a model of their own.
 *
 * @param name the step's, for the sentence
 * @param rung 1 for the first step of the ladder
 * @param fromAge youngest age, in whole years, at which the step is asked for
 */
public record DrillOf(
    String drill, Skill skill, String step, LocalText name, int rung, int fromAge) {}
