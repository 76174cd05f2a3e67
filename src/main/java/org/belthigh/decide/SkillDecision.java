package org.belthigh.decide;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Placement;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;

/**
 * What comes next for one player and one skill, and why.
 *
 * @param step the step the player works on now
 * @param next the step that follows a move up; empty otherwise
 * @param because one sentence with the numbers in it
 * @param settles what would settle it; empty where nothing is open
 * @param rules ids of the rules that fired, the one that decided first
 * @param standouts what the rules found out of the usual
 * @param placement the coach's word that put the player here; empty where none did
 */
public record SkillDecision(
    String player,
    Skill skill,
    Step step,
    Outcome outcome,
    Optional<Step> next,
    Phrase because,
    Optional<Phrase> settles,
    List<String> rules,
    Set<ProgressVerdict.Standout> standouts,
    Evidence evidence,
    Optional<Placement> placement) {
  public SkillDecision {
    rules = List.copyOf(rules);
    standouts = Set.copyOf(standouts);
  }

  /** Whether the skill is played at this age, and nobody is judged on it. */
  public boolean played() {
    return standouts.contains(ProgressVerdict.Standout.PLAYED);
  }

  /** Whether good weeks were followed by poor ones: less, and one simple cue. */
  public boolean dip() {
    return standouts.contains(ProgressVerdict.Standout.DIP);
  }

  /** The step to work on: the next one after a move up, the present one otherwise. */
  public Step workOn() {
    return next.orElse(step);
  }
}
