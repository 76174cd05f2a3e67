package org.belthigh.decide;

import java.util.Map;

/**
 * A fact for the rules of the pack {@code arm}: the last twelve calendar months of a player's arm,
 * by what was reported. A month without a report is not known to be free, so the rules only warn,
 * and only of what was seen. Public only because the rules are built as a model of their own.
 *
 * @param months in which a throw was reported, or an inning caught; 0 to 12
 * @param free the longest run of months without such a report; 0 to 12
 */
public record ThrowingYear(String player, int months, int free) implements Figure {
  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("months", months);
    slots.put("free", free);
  }
}
