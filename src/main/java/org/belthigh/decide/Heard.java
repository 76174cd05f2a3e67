package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;

/**
 * A fact for the rules of the pack {@code arm}: the last report about a player's outings, 0 pitches
 * included. Public only because the rules are built as a model of their own.
 *
 * @param daysAgo from then to the day asked about
 */
public record Heard(String player, LocalDate date, int daysAgo) implements Figure {
  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("date", date);
    slots.put("days", daysAgo);
  }
}
