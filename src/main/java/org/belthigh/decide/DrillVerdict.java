package org.belthigh.decide;

import org.belthigh.model.Phrase;

/**
 * A verdict of the pack {@code drill}: why a drill may not be chosen. Public only because the rules
 * are built as a model of their own.
 */
public interface DrillVerdict extends Verdict {
  /** The drill that is ruled out. */
  DrillAsked drill();

  /** The rule's sentence with its values; only the player's name is not among them. */
  Phrase says();
}
