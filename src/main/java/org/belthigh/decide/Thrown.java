package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;

/**
 * Concluded by a rule of the pack {@code arm}: all pitches of a day, for all teams together. Public
 * only because the rules are built as a model of their own.
 *
 * @param count which count of {@link Threw}
 */
public record Thrown(String player, String count, LocalDate date, int pitches) implements Figure {
  /** So many pitches, added up. */
  public static Thrown of(String player, String count, LocalDate date, Number pitches) {
    return new Thrown(player, count, date, pitches.intValue());
  }

  /** The day after. */
  public LocalDate next() {
    return date.plusDays(1);
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("date", date);
    slots.put("thrown", pitches);
  }
}
