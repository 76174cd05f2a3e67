package org.belthigh.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Coded;
import org.belthigh.model.Phrase;

/**
 * A safety stop. It says what is not done, since when, until when or who can end it; it never says
 * what the matter is medically, and never how to come back.
 *
 * @param from first day held
 * @param until last day held; empty where a person must end it
 * @param source id of a source of the catalogue
 * @param whoEnds a phrase {@code hold.ends.…}
 * @param cause what was reported; empty for the rest days of a pitcher
 * @param notes more to know, such as a clearance that does not count
 */
public record Hold(
    String player,
    Kind kind,
    LocalDate from,
    Optional<LocalDate> until,
    Reason because,
    String source,
    Phrase whoEnds,
    Optional<Wellness.Kind> cause,
    List<Reason> notes) {
  /** What is stopped. */
  public enum Kind implements Coded {
    /** No full-effort throw: no pitching, no bullpen, no catching. */
    THROWING,
    /** No swing. */
    SWINGING,
    /** Nothing at all: not today. */
    EVERYTHING
  }

  public Hold {
    Objects.requireNonNull(because);
    notes = List.copyOf(notes);
    if (until.filter(from::isAfter).isPresent()) {
      throw new IllegalArgumentException(
          "A hold ends on its first day or later, but "
              + from
              + " to "
              + until.get()
              + " does not");
    }
  }

  /** Whether {@code day} is held. */
  public boolean holds(LocalDate day) {
    return !day.isBefore(from) && until.filter(day::isAfter).isEmpty();
  }

  /** Whether no full-effort throw is allowed. */
  public boolean stopsThrowing() {
    return kind != Kind.SWINGING;
  }

  /** Whether no swing is allowed. */
  public boolean stopsSwinging() {
    return kind != Kind.THROWING;
  }
}
