package org.belthigh.decide;

import java.util.Map;

/**
 * Concluded by a rule of the pack {@code arm}: the rest that keeps a player from throwing on the
 * day. Public only because the rules are built as a model of their own.
 */
public record Resting(Question question, RestOwed owed) implements Figure {
  @Override
  public void fill(Map<String, Object> slots) {
    question.fill(slots);
    owed.fill(slots);
  }
}
