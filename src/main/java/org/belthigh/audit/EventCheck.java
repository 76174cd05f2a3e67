package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;

/**
 * Work stands where the calendar allows it: within the hitting minutes of a practice with an adult,
 * at home on a day without an event that is not the eve of a tournament, and never on the day of a
 * game, a tournament, a break or a day off.
 */
final class EventCheck {
  private static final int ASSUMED_HITTING_MINUTES = 45;

  private final ClubRecord record;
  private final Sport sport;
  private final Findings findings;

  EventCheck(ClubRecord record, FinishedPlan plan, Findings findings) {
    this.record = record;
    this.sport = new Sport(record, plan);
    this.findings = findings;
  }

  void check(FinishedPlan.Person person) {
    person.days().stream().filter(FinishedPlan.Dated::works).forEach(day -> day(person, day));
  }

  private void day(FinishedPlan.Person person, FinishedPlan.Dated day) {
    String where = person.id() + " " + day.date();
    List<Event> events = sport.events(person, day.date());
    for (Event event : events) {
      if (event.kind() != Event.Kind.PRACTICE && event.kind() != Event.Kind.EVALUATION) {
        broken(where, "hitting work on the day of a " + event.kind().id(), "such a day has none");
      }
    }
    if (day.atHome()) {
      home(where, person, day.date(), events);
    } else if (sport.assumed(person, day.date())) {
      within(where, day, ASSUMED_HITTING_MINUTES);
    } else {
      practice(where, person, day, events);
    }
  }

  private void home(String where, FinishedPlan.Person person, LocalDate day, List<Event> events) {
    if (!events.isEmpty() || sport.assumed(person, day)) {
      broken(where, "home work on the day of an event", "home work stands on days without one");
    }
    if (sport.events(person, day.plusDays(1)).stream()
        .anyMatch(e -> e.kind() == Event.Kind.TOURNAMENT)) {
      broken(where, "home work on the day before a tournament", "that day has none");
    }
  }

  private void practice(
      String where, FinishedPlan.Person person, FinishedPlan.Dated day, List<Event> events) {
    List<Event> practices =
        events.stream()
            .filter(e -> e.kind() == Event.Kind.PRACTICE || e.kind() == Event.Kind.EVALUATION)
            .toList();
    if (practices.isEmpty()) {
      findings.fault(where, "a practice that the calendar does not have", "practices are as there");
      return;
    }
    within(where, day, practices.stream().mapToInt(Event::hittingMinutes).max().getAsInt());
    int tossers = record.club().group(person.group()).tossers();
    if (practices.stream().allMatch(e -> e.adults().orElse(tossers) < 1)) {
      broken(where, "hitting at a practice without an adult", "each bat has an adult beside it");
    }
  }

  private void within(String where, FinishedPlan.Dated day, int minutes) {
    if (day.allMinutes() > minutes) {
      findings.fault(
          where,
          day.allMinutes() + " minutes of hitting work",
          "the practice has " + minutes + " hitting minutes");
    }
  }

  private void broken(String where, String found, String limit) {
    findings.broken(where, found, limit, "ours, common practice");
  }
}
