package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Coded;
import org.belthigh.model.Spot;

/**
 * An evaluation day: the same tosses for every hitter, marked by two who do not see each other's
 * marks.
 *
 * @param day empty where the calendar has none ahead
 * @param script where each toss goes, first to last
 * @param hitters in roster order; their numbers run from 1
 * @param screen whether who tosses stands behind a screen; else balls are soft
 */
public record EvaluationSheet(
    Optional<LocalDate> day, List<Spot> script, List<Hitter> hitters, boolean screen) {
  public EvaluationSheet {
    script = List.copyOf(script);
    hitters = List.copyOf(hitters);
  }

  /**
   * Who is looked at.
   *
   * @param may what the day allows, as far as is known
   */
  public record Hitter(Label who, May may) {}

  /** What a hitter may do that day. */
  public enum May implements Coded {
    SWING,
    CALL,
    NOTHING
  }
}
