package org.belthigh.decide;

import java.util.Optional;
import org.belthigh.intake.Wellness;

/**
 * A fact for the rules of the pack {@code hold}: the word of that role ends that complaint, by the
 * table {@code rules/hold/who-ends.yaml}. Public only because the rules are built as a model of
 * their own.
 */
public record MayEnd(Wellness.Kind kind, Optional<Wellness.Role> by) {}
