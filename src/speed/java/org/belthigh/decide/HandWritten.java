package org.belthigh.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The rules of progress written out by hand: the floor that the rule engine is held against. */
final class HandWritten {
  private HandWritten() {}

  /** The verdicts on {@code standings} as {@link RuleBase#fire} gives them, in the same order. */
  static List<Verdict> verdicts(List<Standing> standings) {
    List<Verdict> verdicts = new ArrayList<>();
    standings.forEach(standing -> judge(standing, verdicts));
    verdicts.sort(Comparator.comparing(Verdict::rule));
    return List.copyOf(verdicts);
  }

  private static void judge(Standing s, List<Verdict> verdicts) {
    if (s.seen() < s.asked()) {
      String rule = s.placed() ? "PRG-010" : "PRG-001";
      verdicts.add(ProgressVerdict.of(rule, s, Outcome.NOT_SEEN_ENOUGH));
    } else if (!s.judged()) {
      verdicts.add(ProgressVerdict.of("PRG-009", s, Outcome.KEEP_GOING));
    } else if (s.days() < s.daysAsked()) {
      verdicts.add(ProgressVerdict.of("PRG-005", s, Outcome.KEEP_GOING));
    } else if (s.forMark() >= s.markBar()) {
      verdicts.add(proved(s));
    } else if (s.againstMark() >= s.floorBar()) {
      verdicts.add(ProgressVerdict.of("PRG-003", s, Outcome.FIRM_UP));
    } else {
      verdicts.add(ProgressVerdict.of("PRG-004", s, Outcome.KEEP_GOING));
      if (s.wasGood() && s.dip() >= s.dipBar()) {
        verdicts.add(ProgressVerdict.of("PRG-011", s, Outcome.KEEP_GOING));
      }
    }
  }

  private static Verdict proved(Standing s) {
    if (s.top()) {
      return ProgressVerdict.of("PRG-006", s, Outcome.KEEP_GOING);
    }
    if (!s.nextForAge()) {
      return ProgressVerdict.of("PRG-007", s, Outcome.KEEP_GOING);
    }
    return s.needsMet()
        ? ProgressVerdict.of("PRG-002", s, Outcome.MOVE_UP)
        : ProgressVerdict.of("PRG-008", s, Outcome.KEEP_GOING);
  }
}
