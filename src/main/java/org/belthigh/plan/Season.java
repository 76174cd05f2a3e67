package org.belthigh.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.model.Origin;

/**
 * One group's calendar.
 *
 * <p>A group whose calendar is empty gets two practices a week, on Tuesday and Thursday, so that a
 * club folder of two files yields a plan that a coach can run; sheets say that the days are
 * assumed.
 */
final class Season {
  private static final Set<DayOfWeek> ASSUMED = EnumSet.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY);
  private static final int ASSUMED_MINUTES = 90;

  private final List<Event> events;
  private final Map<LocalDate, List<Event>> byDay;
  private final boolean assumed;
  private final TimeOff timeOff;

  private Season(Club club, List<Event> events, boolean assumed) {
    this.events = events;
    this.byDay =
        events.stream()
            .collect(Collectors.groupingBy(Event::date, Collectors.toUnmodifiableList()));
    this.assumed = assumed;
    this.timeOff = new TimeOff(club, sportDays().collect(Collectors.toSet()));
  }

  /** The calendar of {@code group}; {@code first} to {@code last} bound what may be assumed. */
  static Season of(ClubRecord record, Club.Group group, LocalDate first, LocalDate last) {
    List<Event> own = record.events().stream().filter(e -> e.concerns(group.id())).toList();
    boolean none =
        own.stream().noneMatch(e -> e.kind() != Event.Kind.BREAK && e.kind() != Event.Kind.OFF);
    if (!none) {
      return new Season(record.club(), own, false);
    }
    List<Event> all = new ArrayList<>(own);
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      LocalDate here = day;
      boolean free = own.stream().noneMatch(e -> e.date().equals(here));
      if (free && ASSUMED.contains(day.getDayOfWeek())) {
        all.add(assumedPractice(day, group));
      }
    }
    return new Season(record.club(), List.copyOf(all), true);
  }

  private static Event assumedPractice(LocalDate day, Club.Group group) {
    return new Event(
        day,
        Optional.of(group.id()),
        Event.Kind.PRACTICE,
        Optional.empty(),
        ASSUMED_MINUTES,
        ASSUMED_MINUTES / 2,
        OptionalInt.empty(),
        "",
        "",
        Origin.of("calendar.csv"));
  }

  /** Whether the practice days are assumed. */
  boolean assumed() {
    return assumed;
  }

  /** What happens on {@code day}, in file order. */
  List<Event> on(LocalDate day) {
    return byDay.getOrDefault(day, List.of());
  }

  /** The days off from the sport. */
  TimeOff timeOff() {
    return timeOff;
  }

  /** The practice or evaluation of {@code day}; none on a day that is off or has a game. */
  Optional<Event> practice(LocalDate day) {
    if (off(day) || timeOff.on(day) || game(day).isPresent()) {
      return Optional.empty();
    }
    return on(day).stream()
        .filter(e -> e.kind() == Event.Kind.PRACTICE || e.kind() == Event.Kind.EVALUATION)
        .findFirst();
  }

  /** The first practice on {@code from} or after it. */
  Optional<LocalDate> firstPractice(LocalDate from) {
    return byDay.keySet().stream()
        .filter(day -> !day.isBefore(from) && practice(day).isPresent())
        .min(Comparator.naturalOrder());
  }

  /** The game or tournament of {@code day}. */
  Optional<Event> game(LocalDate day) {
    return tournament(day).isPresent() ? tournament(day) : of(day, Event.Kind.GAME);
  }

  /** The tournament of {@code day}, also where another game stands beside it. */
  Optional<Event> tournament(LocalDate day) {
    return of(day, Event.Kind.TOURNAMENT);
  }

  private Optional<Event> of(LocalDate day, Event.Kind kind) {
    return on(day).stream().filter(e -> e.kind() == kind).findFirst();
  }

  /** Whether {@code day} is a break or off: no work is planned, at home neither. */
  boolean off(LocalDate day) {
    return on(day).stream()
        .anyMatch(e -> e.kind() == Event.Kind.BREAK || e.kind() == Event.Kind.OFF);
  }

  /** Days with a practice, a game or a tournament; none where practice days are assumed. */
  Stream<LocalDate> sportDays() {
    return (assumed ? List.<Event>of() : events)
        .stream()
            .filter(e -> e.kind() != Event.Kind.BREAK && e.kind() != Event.Kind.OFF)
            .map(Event::date);
  }

  /** Minutes of organised sport on {@code day}; a game without minutes is taken for two hours. */
  int minutes(LocalDate day) {
    return on(day).stream().mapToInt(Season::minutes).sum();
  }

  private static int minutes(Event event) {
    return switch (event.kind()) {
      case BREAK, OFF -> 0;
      case GAME, TOURNAMENT -> event.minutes() > 0 ? event.minutes() : 120;
      case PRACTICE, EVALUATION -> event.minutes() > 0 ? event.minutes() : ASSUMED_MINUTES;
    };
  }
}
