package org.belthigh.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.SkillDecision;
import org.belthigh.model.Phrase;

/**
 * A week with less in it and easier wins, for a hitter whose good weeks were followed by poor ones.
 *
 * <p>One skill, the one that dipped; drills of the last step that the log shows behind the hitter,
 * or of the present one where it shows none; the simpler cue. The decision itself stands: nobody
 * moves down, and the week after goes on as usual.
 */
final class EasyWeek {
  private final SkillDecision eased;
  private final List<SkillDecision> decisions;
  private final boolean back;

  private EasyWeek(SkillDecision eased, List<SkillDecision> decisions, boolean back) {
    this.eased = eased;
    this.decisions = List.copyOf(decisions);
    this.back = back;
  }

  /** The easy week of a player whose decisions are {@code decisions}; empty without a dip. */
  static Optional<EasyWeek> of(List<SkillDecision> decisions, Curriculum curriculum) {
    return decisions.stream()
        .filter(SkillDecision::dip)
        .min(Comparator.comparing(SkillDecision::skill))
        .map(dipped -> of(decisions, dipped, curriculum));
  }

  private static EasyWeek of(
      List<SkillDecision> decisions, SkillDecision dipped, Curriculum curriculum) {
    Optional<Step> proven =
        dipped.evidence().passed().stream()
            .map(Evidence.Passed::step)
            .flatMap(id -> curriculum.step(id).stream())
            .filter(s -> s.rung() < dipped.step().rung())
            .max(Comparator.comparingInt(Step::rung));
    SkillDecision eased = eased(dipped, proven.orElse(dipped.step()));
    return new EasyWeek(
        eased,
        decisions.stream().map(d -> d.skill() == dipped.skill() ? eased : d).toList(),
        proven.isPresent());
  }

  private static SkillDecision eased(SkillDecision dipped, Step step) {
    return new SkillDecision(
        dipped.player(),
        dipped.skill(),
        step,
        Outcome.KEEP_GOING,
        Optional.empty(),
        dipped.because(),
        Optional.empty(),
        dipped.rules(),
        dipped.standouts(),
        dipped.evidence(),
        dipped.placement());
  }

  /** What the week is about: one skill. */
  List<SkillDecision> focus() {
    return List.of(eased);
  }

  /** All skills, the one that dipped at the easier step. */
  List<SkillDecision> decisions() {
    return decisions;
  }

  /** What the family reads: no label, and no blame. */
  Phrase says() {
    return Phrase.of("week.easy", "back", back ? "yes" : "no", "step", eased.step().name());
  }
}
