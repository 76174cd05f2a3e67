package org.belthigh.decide;

import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code progress}: how far a player is on another ladder than the
 * one that is judged. Public only because the rules are built as a model of their own.
 *
 * @param judged the skill that is judged
 * @param skill the other one
 * @param rung of the step that the player works on there
 */
public record Reached(String player, Skill judged, Skill skill, int rung) {}
