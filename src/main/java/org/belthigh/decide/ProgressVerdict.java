package org.belthigh.decide;

import org.belthigh.model.Skill;

/** What one rule says should come next. Public only because the rules make it. */
public record ProgressVerdict(String rule, String player, Skill skill, Outcome outcome)
    implements Verdict {
  /** The verdict of {@code rule} about {@code standing}. */
  public static ProgressVerdict of(String rule, Standing standing, Outcome outcome) {
    return new ProgressVerdict(rule, standing.player(), standing.skill(), outcome);
  }
}
