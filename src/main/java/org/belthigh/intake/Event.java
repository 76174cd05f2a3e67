package org.belthigh.intake;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalInt;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;

/**
 * One row of the calendar.
 *
 * @param group a group's id, or empty for all groups
 * @param minutes the whole event; 0 where not said
 * @param hittingMinutes of it for hitting; half of a practice unless said, 0 for other kinds
 * @param place a venue's id or free text; empty where not said
 */
public record Event(
    LocalDate date,
    Optional<String> group,
    Kind kind,
    Optional<LocalTime> start,
    int minutes,
    int hittingMinutes,
    OptionalInt adults,
    String place,
    String note,
    Origin origin) {
  /** What happens that day. */
  public enum Kind implements Coded {
    EVALUATION,
    PRACTICE,
    GAME,
    TOURNAMENT,
    BREAK,
    OFF
  }

  /** The same event with so many grown-ups. */
  public Event withAdults(int number) {
    return new Event(
        date,
        group,
        kind,
        start,
        minutes,
        hittingMinutes,
        OptionalInt.of(number),
        place,
        note,
        origin);
  }

  /** Whether it concerns the group. */
  public boolean concerns(String groupId) {
    return group.isEmpty() || group.get().equals(groupId);
  }
}
