package org.belthigh.decide;

import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code drill}: a drill that is looked at. Public only because
 * the rules are built as a model of their own.
 *
 * @param swing whether the hitter swings at all
 */
public record DrillAsked(String id, Skill skill, boolean swing) {}
