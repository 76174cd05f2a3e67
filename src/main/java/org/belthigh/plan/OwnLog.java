package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;

/**
 * A player's own blank log of a week: what is planned and counted, a line for each day.
 *
 * @param first first day of the week
 * @param last last day of the week
 * @param drills in the order in which they come; empty in a week in which nothing is counted
 */
public record OwnLog(LocalDate first, LocalDate last, List<Drill> drills) {
  public OwnLog {
    drills = List.copyOf(drills);
  }

  /**
   * One drill of the week.
   *
   * @param days on which it is planned; at least one
   * @param tosses the most on any of them, at least 1
   * @param marks what one mark in a box means
   */
  public record Drill(LocalText name, List<LocalDate> days, int tosses, List<Phrase> marks) {
    public Drill {
      days = List.copyOf(days);
      marks = List.copyOf(marks);
      if (days.isEmpty() || tosses < 1) {
        throw new IllegalArgumentException(
            "a drill to log has days %s and %d tosses.".formatted(days, tosses));
      }
    }
  }
}
