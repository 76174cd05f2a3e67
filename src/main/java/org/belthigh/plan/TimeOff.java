package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Set;
import org.belthigh.intake.Club;
import org.belthigh.model.Phrase;

/**
 * Days off from the sport: those outside the club's season, unless the group's calendar goes on
 * there and has something within a week of them. A calendar that goes on has the last word, so
 * autumn ball is planned where it is played.
 *
 * <p>At least two months off in a year, one sport eight months at the most: NATA 2019; two to three
 * months off: AAP 2024.
 */
final class TimeOff {
  private static final int NEAR = 6;

  private final LocalDate seasonFirst;
  private final LocalDate seasonLast;
  private final Set<LocalDate> sportDays;

  /**
   * Days off by the season and the calendar.
   *
   * @param sportDays days with an event of the sport; none where practice days are assumed
   */
  TimeOff(Club club, Set<LocalDate> sportDays) {
    this.seasonFirst = club.seasonFirst();
    this.seasonLast = club.seasonLast();
    this.sportDays = Set.copyOf(sportDays);
  }

  /** Whether {@code day} is such a day. */
  boolean on(LocalDate day) {
    return outside(day)
        && day.minusDays(NEAR)
            .datesUntil(day.plusDays(NEAR + 1L))
            .noneMatch(d -> outside(d) && sportDays.contains(d));
  }

  private boolean outside(LocalDate day) {
    return day.isBefore(seasonFirst) || day.isAfter(seasonLast);
  }

  /** Whether the seven days from {@code first} are all such days. */
  boolean week(LocalDate first) {
    return first.datesUntil(first.plusDays(7)).allMatch(this::on);
  }

  /** What is done instead, and when the hitter is looked at again. */
  Phrase says(LocalDate day) {
    return Phrase.of(
        "week.time-off",
        "when",
        day.isAfter(seasonLast) ? "after" : "before",
        "first",
        seasonFirst,
        "last",
        seasonLast);
  }
}
