package org.belthigh.decide;

import java.util.Map;

/**
 * Concluded by rules of the pack {@code arm}: what one limit still leaves on the day. Public only
 * because the rules are built as a model of their own.
 *
 * @param left pitches, 0 or more
 */
public record Room(Question question, int left) implements Figure {
  /** What {@code thrown} pitches leave of {@code limit}. */
  public static Room under(Limit limit, Number thrown, Question question) {
    return new Room(question, Math.max(0, limit.most() - thrown.intValue()));
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("left", left);
  }
}
