package org.belthigh.history;

import java.time.LocalDate;
import java.util.List;

/**
 * The first week of a plan, as families and coaches have it on paper.
 *
 * @param from first day of that week
 * @param sessions what each player was asked to do, a drill a row
 * @param steps what each player worked on
 */
public record Handed(LocalDate from, List<Session> sessions, List<Stood> steps) {
  public Handed {
    sessions = List.copyOf(sessions);
    steps = List.copyOf(steps);
  }

  /**
   * One drill on one day.
   *
   * @param place {@code field}, {@code cage} or {@code home}
   * @param reps tosses asked for, 1 or more
   * @param swings of them with a swing
   * @param minutes of hitting work
   */
  public record Session(
      LocalDate date,
      String player,
      String place,
      String drill,
      int reps,
      int swings,
      int minutes) {}

  /**
   * Where a player stood in one skill.
   *
   * @param step the step that the sheets were about
   * @param decision such as {@code keep-going}
   */
  public record Stood(String player, String skill, String step, String decision) {}

  /** Whether {@code player} was on its sheets. */
  public boolean has(String player) {
    return steps.stream().anyMatch(s -> s.player().equals(player));
  }
}
