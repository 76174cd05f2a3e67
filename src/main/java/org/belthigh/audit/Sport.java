package org.belthigh.audit;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.OtherSport;

/** What the club folder says that a child does, whatever is planned. */
final class Sport {
  private static final int GAME_MINUTES = 120;
  private static final int PRACTICE_MINUTES = 90;
  private static final int MINUTES = 60;

  private final ClubRecord record;
  private final FinishedPlan plan;
  private final Map<LocalDate, List<Event>> events;

  /**
   * @param record as known on the first day of the plan
   */
  Sport(ClubRecord record, FinishedPlan plan) {
    this.record = record;
    this.plan = plan;
    this.events = record.events().stream().collect(Collectors.groupingBy(Event::date));
  }

  /** The group's events of {@code day}. */
  List<Event> events(FinishedPlan.Person person, LocalDate day) {
    return events.getOrDefault(day, List.of()).stream()
        .filter(e -> e.concerns(person.group()))
        .toList();
  }

  /** Whether the plan goes by assumed practices, since the calendar has nothing for the group. */
  boolean assumes(FinishedPlan.Person person) {
    return record.events().stream().noneMatch(e -> e.concerns(person.group()) && !off(e));
  }

  /** Whether the day is one on which a group without a calendar is taken to practise. */
  boolean assumed(FinishedPlan.Person person, LocalDate day) {
    boolean practiceDay =
        day.getDayOfWeek() == DayOfWeek.TUESDAY || day.getDayOfWeek() == DayOfWeek.THURSDAY;
    return practiceDay
        && !day.isBefore(plan.from())
        && !day.isAfter(plan.last())
        && assumes(person)
        && events(person, day).isEmpty();
  }

  /** Minutes of organised sport, other than what is planned at home. */
  double minutes(FinishedPlan.Person person, LocalDate day) {
    double minutes = assumed(person, day) ? PRACTICE_MINUTES : 0;
    for (Event event : events(person, day)) {
      minutes += minutes(event);
    }
    for (OtherSport other : record.otherSports()) {
      if (other.player().equals(person.id()) && on(other, day)) {
        minutes += MINUTES * other.hours();
      }
    }
    return minutes;
  }

  private static boolean off(Event event) {
    return event.kind() == Event.Kind.BREAK || event.kind() == Event.Kind.OFF;
  }

  private static double minutes(Event event) {
    if (off(event)) {
      return 0;
    }
    boolean game = event.kind() == Event.Kind.GAME || event.kind() == Event.Kind.TOURNAMENT;
    return event.minutes() > 0 ? event.minutes() : game ? GAME_MINUTES : PRACTICE_MINUTES;
  }

  /** What was reported, and what the last week had, taken to go on week by week. */
  private boolean on(OtherSport other, LocalDate day) {
    if (!day.isAfter(plan.from())) {
      return other.date().equals(day);
    }
    long since = day.toEpochDay() - other.date().toEpochDay();
    return other.date().isAfter(plan.from().minusDays(Week.DAYS)) && since % Week.DAYS == 0;
  }

  /**
   * Swings of a past week that was played; empty where nothing was logged and no practice took
   * place.
   *
   * @param unlogged what a practice week without a log counts as
   */
  Optional<Integer> played(FinishedPlan.Person person, LocalDate first, int unlogged) {
    LocalDate end = first.plusDays(Week.DAYS);
    int logged = 0;
    logged +=
        (int)
            record.tosses().stream()
                .filter(t -> t.player().equals(person.id()) && t.swing())
                .filter(t -> !t.date().isBefore(first) && t.date().isBefore(end))
                .count();
    logged +=
        record.tallies().stream()
            .filter(t -> t.player().equals(person.id()))
            .filter(t -> !t.date().isBefore(first) && t.date().isBefore(end))
            .mapToInt(
                t ->
                    switch (t.measure()) {
                      case COUNTDOWN -> t.made();
                      case FIELD_CALL, HARD_HIT -> t.of();
                      default -> 0;
                    })
            .sum();
    if (logged > 0) {
      return Optional.of(logged);
    }
    return first.datesUntil(end).anyMatch(d -> practised(person, d))
        ? Optional.of(unlogged)
        : Optional.empty();
  }

  private boolean practised(FinishedPlan.Person person, LocalDate day) {
    List<Event> events = events(person, day);
    boolean assumedThen =
        assumes(person)
            && events.isEmpty()
            && !day.isBefore(plan.from().minusDays(Week.DAYS))
            && (day.getDayOfWeek() == DayOfWeek.TUESDAY
                || day.getDayOfWeek() == DayOfWeek.THURSDAY);
    return assumedThen
        || (!events.isEmpty()
            && events.stream()
                .allMatch(
                    e -> e.kind() == Event.Kind.PRACTICE || e.kind() == Event.Kind.EVALUATION));
  }
}
