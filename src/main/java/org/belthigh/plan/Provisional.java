package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Hold;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.SkillDecision;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;

/**
 * On what the weeks after the checkpoint depend.
 *
 * <p>The checkpoint is the next plan, a week on. What would change the rest is the open question of
 * the first week: a hold that a person must end, else the more pressing skill.
 */
final class Provisional {
  private static final int WEEK = 7;

  private final LocalDate checkpoint;
  private final Curriculum curriculum;

  Provisional(LocalDate from, Curriculum curriculum) {
    this.checkpoint = from.plusDays(WEEK);
    this.curriculum = curriculum;
  }

  /**
   * What is known of the weeks after the first.
   *
   * @param focus the skills of the first week, the more pressing one first
   * @return empty where nothing but one week, or no work, is planned
   */
  Optional<Checkpoint> of(List<Day> days, List<SkillDecision> focus, List<Hold> holds) {
    boolean more = days.stream().anyMatch(d -> !d.date().isBefore(checkpoint));
    boolean works =
        days.stream().anyMatch(d -> !d.date().isBefore(checkpoint) && !d.items().isEmpty());
    if (more && holds.stream().anyMatch(h -> h.stopsSwinging() && h.until().isEmpty())) {
      return Optional.of(new Checkpoint(checkpoint, Phrase.of("depends.hold")));
    }
    return works ? Optional.of(new Checkpoint(checkpoint, on(open(focus)))) : Optional.empty();
  }

  /** The first skill with an open question; the first of all where none has one. */
  private static SkillDecision open(List<SkillDecision> focus) {
    return focus.stream()
        .filter(d -> d.dip() || d.next().isPresent() || d.settles().isPresent())
        .findFirst()
        .orElse(focus.get(0));
  }

  private Phrase on(SkillDecision decision) {
    LocalText step = decision.workOn().name();
    if (decision.dip()) {
      return Phrase.of("depends.easy", "step", step);
    }
    if (decision.outcome() == Outcome.MOVE_UP) {
      return Phrase.of("depends.begins", "step", step);
    }
    if (decision.evidence().seen() == 0) {
      return Phrase.of("depends.first", "step", step);
    }
    Optional<Step> next = curriculum.after(decision.step());
    if (decision.settles().isEmpty() || next.isEmpty()) {
      return Phrase.of("depends.log", "step", step);
    }
    return Phrase.of(
        "depends.settles",
        "step",
        step,
        "more",
        decision.settles().get(),
        "next",
        next.get().name());
  }
}
