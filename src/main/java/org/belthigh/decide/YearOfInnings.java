package org.belthigh.decide;

import java.util.Map;

/**
 * Concluded by a rule of the pack {@code arm}: innings of twelve months against their limit, all in
 * thirds of an inning. Public only because the rules are built as a model of their own.
 *
 * @param so pitched in the twelve months that end on the day
 * @param unwritten outings of them whose innings were not written down, where others' were, or that
 *     could not be read
 */
public record YearOfInnings(Question question, int so, int most, int unwritten) implements Figure {
  private static final int THIRDS = 3;

  /** What was added up. */
  public static YearOfInnings of(
      Question question, Limit limit, Number so, Number unwritten, Number unread) {
    int open = so.intValue() > 0 ? unwritten.intValue() : 0;
    return new YearOfInnings(
        question, so.intValue(), limit.most() * THIRDS, open + unread.intValue());
  }

  /** Whether it may be more than what was added up. */
  public boolean unsure() {
    return unwritten > 0;
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("innings", so / THIRDS);
    slots.put("most", most / THIRDS);
    slots.put("unwritten", unwritten);
  }
}
