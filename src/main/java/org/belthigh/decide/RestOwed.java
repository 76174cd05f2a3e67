package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;

/**
 * Concluded by rules of the pack {@code arm}: the rest that a day of pitching asks for. Public only
 * because the rules are built as a model of their own.
 *
 * @param outing the day of pitching
 * @param days full calendar days of rest
 * @param over first day after them
 * @param printed whether it is that of a confirmed row for the age and the pitches
 */
public record RestOwed(
    String player,
    Reckoned by,
    LocalDate outing,
    int pitches,
    int days,
    LocalDate over,
    boolean printed)
    implements Figure {
  /** By the row for the age and the pitches. */
  public static RestOwed by(RestRow row, PitchedDay day) {
    return of(day, row.days(), row.confirmed());
  }

  /** By a stricter row, for want of one for the age and the pitches. */
  public static RestOwed borrowed(RestRow row, PitchedDay day) {
    return of(day, row.days(), false);
  }

  private static RestOwed of(PitchedDay day, int days, boolean printed) {
    return new RestOwed(
        day.player(),
        day.by(),
        day.date(),
        day.pitches(),
        days,
        day.date().plusDays(days + 1L),
        printed);
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("pitches", pitches);
    slots.put("date", outing);
    slots.put("days", days);
    slots.put("from", over);
  }
}
