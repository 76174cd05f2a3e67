package org.belthigh.decide;

import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code progress}: a step that must be behind a player before
 * another one. Public only because the rules are built as a model of their own.
 *
 * @param skill of the step that is needed
 * @param rung of it on its ladder
 */
public record Needs(String step, String need, Skill skill, int rung) {}
