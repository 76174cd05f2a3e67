package org.belthigh.decide;

import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: to be free of symptoms ends that complaint, by the
 * same table as {@link MayEnd}. Public only because the rules are built as a model of their own.
 */
public record SymptomFreeEnds(Wellness.Kind kind) {}
