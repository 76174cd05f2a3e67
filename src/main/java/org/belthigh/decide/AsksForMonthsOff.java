package org.belthigh.decide;

import java.util.Map;

/**
 * Concluded by a rule of the pack {@code arm}: the book that speaks for months without throwing.
 * Public only because the rules are built as a model of their own.
 */
public record AsksForMonthsOff(Question question) implements Figure {
  @Override
  public void fill(Map<String, Object> slots) {
    question.fill(slots);
  }
}
