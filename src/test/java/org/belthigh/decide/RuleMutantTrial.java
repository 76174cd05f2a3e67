package org.belthigh.decide;

import java.util.ArrayList;
import java.util.List;

/**
 * One rule with one mistake, and what became of it: the cases of its pack are run until one fails.
 *
 * @param detail the case that failed, or the message of the exception
 */
record RuleMutantTrial(String rule, RuleMutant mutant, Fate fate, String detail) {
  /** What can become of a mistake. */
  enum Fate {
    /** A case came out otherwise than it says. */
    KILLED,
    /** A case came to no answer. */
    KILLED_BY_EXCEPTION,
    /** Every case came out as it says. */
    SURVIVED,
    /** Drools makes no network of it. */
    NOT_BUILT
  }

  /** Every mistake in that rule of that pack. */
  static List<RuleMutantTrial> of(RulePack pack, String rule) {
    List<RuleMutant> mutants = pack.mutants(rule);
    List<RulePack.Case> cases = pack.cases(rule);
    List<RuleMutantTrial> trials = new ArrayList<>();
    for (int i = 0; i < mutants.size(); i++) {
      trials.add(of(pack, rule, i, mutants.get(i), cases));
    }
    return trials;
  }

  private static RuleMutantTrial of(
      RulePack pack, String rule, int mistake, RuleMutant mutant, List<RulePack.Case> cases) {
    RuleBase rules;
    try {
      rules = pack.with(rule, mistake);
      rules.fire(List.of());
    } catch (RuntimeException e) {
      return new RuleMutantTrial(rule, mutant, Fate.NOT_BUILT, e.toString());
    }
    for (RulePack.Case one : cases) {
      try {
        one.check().accept(rules);
      } catch (AssertionError e) {
        return new RuleMutantTrial(rule, mutant, Fate.KILLED, one.file() + ": " + one.name());
      } catch (RuntimeException e) {
        return new RuleMutantTrial(rule, mutant, Fate.KILLED_BY_EXCEPTION, e.toString());
      }
    }
    return new RuleMutantTrial(rule, mutant, Fate.SURVIVED, "");
  }
}
