package org.belthigh.cli;

import java.time.LocalTime;
import java.util.Optional;
import org.belthigh.intake.Event;

/** An event that is changed in one thing. */
final class EventEdit {
  private final Event from;
  private Event.Kind kind;
  private Optional<LocalTime> start;
  private int minutes;
  private int hitting;
  private String place;

  private EventEdit(Event from) {
    this.from = from;
    kind = from.kind();
    start = from.start();
    minutes = from.minutes();
    hitting = from.hittingMinutes();
    place = from.place();
  }

  static EventEdit of(Event event) {
    return new EventEdit(event);
  }

  EventEdit kind(Event.Kind other) {
    kind = other;
    return this;
  }

  EventEdit start(LocalTime other) {
    start = Optional.of(other);
    return this;
  }

  EventEdit minutes(int other) {
    minutes = other;
    return this;
  }

  EventEdit hitting(int other) {
    hitting = other;
    return this;
  }

  EventEdit place(String other) {
    place = other;
    return this;
  }

  Event get() {
    return new Event(
        from.date(),
        from.group(),
        kind,
        start,
        minutes,
        hitting,
        from.adults(),
        place,
        from.note(),
        from.origin());
  }
}
