package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * What was asked for.
 *
 * @param from first day to plan; what happened on it and later is not known yet
 * @param weeks 1 to 16
 * @param groups ids; empty for all
 * @param players ids; empty for all
 * @param paper {@code letter} or {@code a4}; empty for the club's
 * @param language for every sheet; empty for the club's and the families' own
 */
public record PlanRequest(
    LocalDate from,
    int weeks,
    Set<String> groups,
    Set<String> players,
    Optional<String> paper,
    Optional<String> language) {
  /** Most weeks that can be planned. */
  public static final int MOST_WEEKS = 16;

  public PlanRequest {
    groups = Set.copyOf(groups);
    players = Set.copyOf(players);
    if (weeks < 1 || weeks > MOST_WEEKS) {
      throw new IllegalArgumentException("weeks must be 1 to " + MOST_WEEKS + ", not " + weeks);
    }
  }

  /** The last day that is planned. */
  public LocalDate last() {
    return from.plusDays(7L * weeks - 1);
  }
}
