package org.belthigh.decide;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;

/**
 * Concluded by rules of the pack {@code arm}: pitching days in a row. Public only because the rules
 * are built as a model of their own.
 *
 * @param next the day after the last of them
 * @param days how many, at least 1
 */
public record Streak(String player, LocalDate next, int days) implements Figure {
  /** The days from {@code first} up to the day before {@code next}. */
  public static Streak of(String player, LocalDate first, LocalDate next) {
    return new Streak(player, next, (int) ChronoUnit.DAYS.between(first, next));
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("run", days);
  }
}
