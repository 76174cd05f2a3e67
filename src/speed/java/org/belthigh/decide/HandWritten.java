package org.belthigh.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.model.AgeBand;

/** The rules of progress written out by hand: the floor that the rule engine is held against. */
final class HandWritten {
  private final Map<String, List<Proof>> proofs = new HashMap<>();
  private final Map<String, Integer> tosses = new HashMap<>();
  private final Map<String, Integer> judgedFrom = new HashMap<>();
  private final Map<String, NextStep> next = new HashMap<>();
  private final Map<String, List<Needs>> needs = new HashMap<>();
  private final Map<String, Integer> reached = new HashMap<>();
  private final Map<String, Double> thresholds = new HashMap<>();
  private final List<Verdict> verdicts = new ArrayList<>();

  private HandWritten() {}

  /** The verdicts on {@code facts} as {@link RuleBase#fire} gives them, in another order. */
  static List<Verdict> verdicts(List<Object> facts) {
    HandWritten all = new HandWritten();
    facts.forEach(all::file);
    facts.stream().filter(Standing.class::isInstance).forEach(fact -> all.judge((Standing) fact));
    return List.copyOf(all.verdicts);
  }

  private void file(Object fact) {
    if (fact instanceof Proof p) {
      proofs.computeIfAbsent(p.player() + p.skill(), k -> new ArrayList<>()).add(p);
    } else if (fact instanceof StepAsks asks) {
      tosses.put(asks.step() + asks.kinds(), asks.tosses());
    } else if (fact instanceof JudgedFrom from) {
      judgedFrom.put(from.step(), from.age());
    } else if (fact instanceof NextStep step) {
      next.put(step.step(), step);
    } else if (fact instanceof Needs need) {
      needs.computeIfAbsent(need.step(), k -> new ArrayList<>()).add(need);
    } else if (fact instanceof Reached at) {
      reached.put(at.player() + at.judged() + at.skill(), at.rung());
    } else if (fact instanceof Threshold bar) {
      thresholds.put(bar.what() + bar.band() + bar.kinds(), bar.value());
    }
  }

  private double threshold(String what, AgeBand band, int kinds) {
    return thresholds.get(what + band + kinds);
  }

  private void judge(Standing s) {
    List<Proof> own = proofs.get(s.player() + s.skill());
    boolean game = s.age() < judgedFrom.get(s.step());
    if (game) {
      verdicts.add(new NotJudged("PRG-013", s));
    }
    int asked = tosses.get(s.step() + s.kinds());
    if (own.stream().anyMatch(p -> p.seen() < asked)) {
      String rule = s.placed() ? "PRG-010" : "PRG-001";
      verdicts.add(ProgressVerdict.of(rule, s, Outcome.NOT_SEEN_ENOUGH));
    } else if (game) {
      verdicts.add(
          ProgressVerdict.of("PRG-009", s, Outcome.KEEP_GOING, ProgressVerdict.Standout.PLAYED));
    } else if (s.days() < threshold(Threshold.DAYS, s.band(), 1)) {
      verdicts.add(ProgressVerdict.of("PRG-005", s, Outcome.KEEP_GOING));
    } else {
      weigh(s, own);
    }
  }

  private void weigh(Standing s, List<Proof> own) {
    double mark = threshold(Threshold.MARK, s.band(), 1);
    double floor = threshold(Threshold.FLOOR, s.band(), s.kinds());
    double dip = threshold(Threshold.DIP, s.band(), 1);
    if (own.stream().allMatch(p -> p.best() >= mark)) {
      proved(s);
    } else if (own.stream().anyMatch(p -> p.against() >= floor)) {
      verdicts.add(ProgressVerdict.of("PRG-003", s, Outcome.FIRM_UP));
    } else {
      verdicts.add(ProgressVerdict.of("PRG-004", s, Outcome.KEEP_GOING));
      if (own.stream().allMatch(Proof::wasGood) && own.stream().anyMatch(p -> p.dip() >= dip)) {
        verdicts.add(
            ProgressVerdict.of("PRG-011", s, Outcome.KEEP_GOING, ProgressVerdict.Standout.DIP));
      }
    }
  }

  private void proved(Standing s) {
    Optional<NextStep> step = Optional.ofNullable(next.get(s.step()));
    if (step.isEmpty()) {
      verdicts.add(ProgressVerdict.proved("PRG-006", s, Outcome.KEEP_GOING));
    } else if (step.get().fromAge() > s.ageNow()) {
      verdicts.add(ProgressVerdict.proved("PRG-007", s, Outcome.KEEP_GOING));
    } else {
      List<Needs> missing =
          needs.getOrDefault(step.get().next(), List.of()).stream()
              .filter(n -> reached.get(s.player() + s.skill() + n.skill()) <= n.rung())
              .toList();
      missing.forEach(n -> verdicts.add(ProgressVerdict.waiting("PRG-008", s, n.need())));
      if (missing.isEmpty()) {
        verdicts.add(ProgressVerdict.proved("PRG-002", s, Outcome.MOVE_UP));
      }
    }
  }
}
