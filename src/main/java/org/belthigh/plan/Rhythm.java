package org.belthigh.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * The days on which a group does less: every fourth week of its season, and the days before a
 * tournament.
 *
 * <p>Weeks are counted from the season's first day, so a day is light or not whatever day a plan
 * begins on. Common practice; how often and how much less stands in {@code
 * rules/parameters/load.yaml}.
 */
final class Rhythm {
  private static final int WEEK = 7;

  private final LocalDate seasonFirst;
  private final Season season;
  private final Doses doses;

  Rhythm(LocalDate seasonFirst, Season season, Doses doses) {
    this.seasonFirst = seasonFirst;
    this.season = season;
    this.doses = doses;
  }

  /** Whether less is done on {@code day}, for one reason or the other. */
  boolean light(LocalDate day) {
    return lighterWeek(day) || beforeTournament(day);
  }

  /** Part of the usual tosses that {@code day} has; above 0 and at most 1. */
  double share(LocalDate day) {
    return light(day) ? doses.lighterShare() : 1;
  }

  /** Whether {@code day} lies in one of the season's lighter weeks. */
  boolean lighterWeek(LocalDate day) {
    long week = Math.floorDiv(ChronoUnit.DAYS.between(seasonFirst, day), WEEK);
    int every = doses.lighterWeekEvery();
    return week >= 0 && week % every == every - 1;
  }

  /** Whether a tournament begins within the next days. */
  boolean beforeTournament(LocalDate day) {
    return season.tournament(day).isEmpty()
        && day.plusDays(1)
            .datesUntil(day.plusDays(doses.lighterDaysBeforeTournament() + 1L))
            .anyMatch(d -> season.tournament(d).isPresent());
  }

  /** The days of a week that are light because of the season's rhythm. */
  List<LocalDate> lighterDays(LocalDate first) {
    return first.datesUntil(first.plusDays(WEEK)).filter(this::lighterWeek).toList();
  }

  /** The days of a week that are light because a tournament is near. */
  List<LocalDate> daysBeforeTournament(LocalDate first) {
    return first.datesUntil(first.plusDays(WEEK)).filter(this::beforeTournament).toList();
  }
}
