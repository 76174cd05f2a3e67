package org.belthigh.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.belthigh.model.Phrase;

/** Turns the verdicts of the pack {@code arm} into phrases: the rule's id and what fills it. */
final class ArmReasons {
  private ArmReasons() {}

  static Reason of(ArmVerdict verdict) {
    return new Reason(
        verdict.rule(),
        phrase(verdict.rule(), verdict.about(), verdict.figures()),
        verdict.saysYes());
  }

  static Reason of(YearVerdict verdict) {
    return new Reason(
        verdict.rule(),
        phrase(verdict.rule(), verdict.about(), List.of(verdict.year(), verdict.limit())));
  }

  static Reason of(ReportVerdict verdict) {
    return new Reason(
        verdict.rule(),
        phrase(verdict.rule(), s -> s.put("player", verdict.about().name()), verdict.figures()));
  }

  static Reason of(DayVerdict verdict) {
    return new Reason(
        verdict.rule(), phrase(verdict.rule(), verdict.about(), List.of(verdict.limit())));
  }

  private static Phrase phrase(String rule, Figure about, List<? extends Figure> figures) {
    Map<String, Object> slots = new LinkedHashMap<>();
    about.fill(slots);
    figures.forEach(figure -> figure.fill(slots));
    return new Phrase(rule, slots);
  }
}
