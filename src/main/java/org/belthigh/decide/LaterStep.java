package org.belthigh.decide;

import org.belthigh.model.Phrase;

/**
 * What a rule of the pack {@code drill} concluded: the first step that lists the drill lies above
 * the one that the player works on. Other rules of the pack go on from it. Public only because the
 * rules are built as a model of their own.
 *
 * @param first the easiest step that lists the drill
 */
public record LaterStep(String rule, DrillAsked drill, DrillOf first, WorksOn now)
    implements DrillVerdict {
  @Override
  public Phrase says() {
    return Phrase.of(rule, "step", first.name(), "now", now.name());
  }
}
