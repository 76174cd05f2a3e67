package org.belthigh.audit;

import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import org.belthigh.intake.Club;
import org.belthigh.intake.Event;

/**
 * Days off from the sport: outside the club's season, unless the group's own calendar has something
 * outside it within the six days before or after.
 */
final class TimeOffDays {
  private final Club club;
  private final Set<LocalDate> beyond;

  TimeOffDays(Given given, String group) {
    this.club = given.record().club();
    this.beyond =
        given.record().events().stream()
            .filter(e -> e.concerns(group))
            .filter(e -> e.kind() != Event.Kind.BREAK && e.kind() != Event.Kind.OFF)
            .map(Event::date)
            .filter(this::outside)
            .collect(Collectors.toSet());
  }

  private boolean outside(LocalDate day) {
    return day.isBefore(club.seasonFirst()) || day.isAfter(club.seasonLast());
  }

  boolean on(LocalDate day) {
    return outside(day)
        && day.minusDays(Week.DAYS - 1L)
            .datesUntil(day.plusDays(Week.DAYS))
            .noneMatch(beyond::contains);
  }

  /** Whether the week from {@code first} has no other day. */
  boolean week(LocalDate first) {
    return first.datesUntil(first.plusDays(Week.DAYS)).allMatch(this::on);
  }

  String season() {
    return "the season is from " + club.seasonFirst() + " to " + club.seasonLast();
  }
}
