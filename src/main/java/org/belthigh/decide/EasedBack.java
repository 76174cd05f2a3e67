package org.belthigh.decide;

import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: the clearance of that complaint is followed by
 * days with less, by the table {@code rules/hold/who-ends.yaml}. Public only because the rules are
 * built as a model of their own.
 */
public record EasedBack(Wellness.Kind kind) {}
