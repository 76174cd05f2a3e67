package org.belthigh.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.SkillDecision;
import org.belthigh.model.LocalText;

/**
 * Which two skills a week is about.
 *
 * <p>Two, not four: with some sixty logged tosses a skill in twelve weeks, work on everything
 * proves nothing. The order is by need; over three weeks the first two come twice and every skill
 * once.
 */
final class Focus {
  private static final int[][] TURNS = {{0, 1}, {2, 0}, {3, 1}};

  private final List<SkillDecision> byNeed;

  Focus(List<SkillDecision> decisions) {
    byNeed =
        decisions.stream()
            .sorted(Comparator.comparingInt(Focus::need).thenComparing(SkillDecision::skill))
            .toList();
  }

  /** Lower is more pressing: what wavers first, then what is unknown, then what goes well. */
  private static int need(SkillDecision decision) {
    return switch (decision.outcome()) {
      case FIRM_UP -> 0;
      case NOT_SEEN_ENOUGH -> decision.played() ? 4 : 1;
      case KEEP_GOING -> decision.played() ? 4 : 2;
      case MOVE_UP -> 3;
    };
  }

  /** All skills, the most pressing first. */
  List<SkillDecision> byNeed() {
    return byNeed;
  }

  /** The two skills of week {@code index}, 0 for the first, the more pressing one first. */
  List<SkillDecision> of(int index) {
    int[] turn = TURNS[index % TURNS.length];
    return List.of(byNeed.get(turn[0]), byNeed.get(turn[1]));
  }

  /** The step to work on for the k-th visit to a station in week {@code index}. */
  SkillDecision visit(int index, int visit) {
    return of(index).get(visit % 2);
  }

  /** What the child tries to do. */
  static LocalText aim(SkillDecision decision) {
    Step step = decision.workOn();
    return letGo(decision).map(Step.LetGo::aim).orElse(step.aim());
  }

  /**
   * The cue of a decision: to let go, where that is what fails; else the simpler one where the step
   * wavers, or after a dip.
   */
  static LocalText cue(SkillDecision decision) {
    Step step = decision.workOn();
    boolean easy = decision.outcome() == Outcome.FIRM_UP || decision.dip();
    return letGo(decision).map(Step.LetGo::cue).orElse(easy ? step.easyCue() : step.cue());
  }

  /** The words for a hitter who swings at too many balls, and lets go no more than others. */
  private static Optional<Step.LetGo> letGo(SkillDecision decision) {
    double takes = place(decision, Step.Counted.TAKES);
    double chases = place(decision, Step.Counted.CHASES);
    boolean chasing = decision.next().isEmpty() && chases < 0 && chases < takes;
    return chasing ? decision.step().letGo() : Optional.empty();
  }

  private static double place(SkillDecision decision, Step.Counted counted) {
    return decision.evidence().bars().stream()
        .filter(r -> r.counted() == counted)
        .mapToDouble(Evidence.Reading::place)
        .min()
        .orElse(0);
  }
}
