package org.belthigh.decide;

import java.util.Map;

/**
 * A number that a rule added up, for its sentence. Public only because the rules are built as a
 * model of their own.
 */
public record Sum(int count) implements Figure {
  /** So many. */
  public static Sum of(Number count) {
    return new Sum(count.intValue());
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("count", count);
  }
}
