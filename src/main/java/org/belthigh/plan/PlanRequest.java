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
 * @param seasonReports whether the plan holds what season reports say, which takes a while
 */
public record PlanRequest(
    LocalDate from,
    int weeks,
    Set<String> groups,
    Set<String> players,
    Optional<String> paper,
    Optional<String> language,
    boolean seasonReports) {
  /** Most weeks that can be planned. */
  public static final int MOST_WEEKS = 16;

  public PlanRequest {
    groups = Set.copyOf(groups);
    players = Set.copyOf(players);
    if (weeks < 1 || weeks > MOST_WEEKS) {
      throw new IllegalArgumentException("weeks must be 1 to " + MOST_WEEKS + ", not " + weeks);
    }
  }

  /** A plan without season reports. */
  public PlanRequest(
      LocalDate from,
      int weeks,
      Set<String> groups,
      Set<String> players,
      Optional<String> paper,
      Optional<String> language) {
    this(from, weeks, groups, players, paper, language, false);
  }

  /** The same with season reports. */
  public PlanRequest withSeasonReports() {
    return new PlanRequest(from, weeks, groups, players, paper, language, true);
  }

  /** The last day that is planned. */
  public LocalDate last() {
    return from.plusDays(7L * weeks - 1);
  }
}
