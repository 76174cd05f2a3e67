package org.belthigh.decide;

import org.belthigh.model.Skill;

/**
 * What one rule says should come next. Public only because the rules make it.
 *
 * @param because what the plan has to know of it beside the outcome
 */
public record ProgressVerdict(
    String rule, String player, Skill skill, Outcome outcome, Standout because) implements Verdict {
  /** What is out of the usual. */
  public enum Standout {
    NOTHING,
    /** At this age the skill is played, and nobody is judged on it. */
    PLAYED,
    /** Good weeks were followed by poor ones: less, and one simple cue. */
    DIP
  }

  /** The verdict of {@code rule} about {@code standing}. */
  public static ProgressVerdict of(String rule, Standing standing, Outcome outcome) {
    return of(rule, standing, outcome, Standout.NOTHING);
  }

  /** The same, where something is out of the usual. */
  public static ProgressVerdict of(
      String rule, Standing standing, Outcome outcome, Standout because) {
    return new ProgressVerdict(rule, standing.player(), standing.skill(), outcome, because);
  }
}
