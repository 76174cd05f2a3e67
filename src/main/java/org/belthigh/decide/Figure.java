package org.belthigh.decide;

import java.util.Map;

/**
 * A fact that the sentence of a verdict takes words and numbers from. Public only because the rules
 * are built as a model of their own.
 */
public interface Figure {
  /** Puts what the sentence may name into {@code slots}, by the name of the hole. */
  void fill(Map<String, Object> slots);
}
