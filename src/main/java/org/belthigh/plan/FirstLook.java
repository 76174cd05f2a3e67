package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Event;

/**
 * Practices at which everybody is looked at afresh: evaluation days, and the first practice of a
 * season, which is also the check after months off.
 */
final class FirstLook {
  private static final int TWO = 2;
  private static final int WEEK = 7;

  private final Season season;
  private final Optional<LocalDate> firstPractice;

  FirstLook(LocalDate seasonFirst, Season season) {
    this.season = season;
    this.firstPractice = season.firstPractice(seasonFirst);
  }

  /** Whether the practice of {@code day} is such a one. */
  boolean on(LocalDate day) {
    return season
        .practice(day)
        .filter(
            e -> e.kind() == Event.Kind.EVALUATION || firstPractice.filter(day::equals).isPresent())
        .isPresent();
  }

  /** Whether home work of a hitter of whom nothing is known waits for an evaluation day. */
  boolean awaited(LocalDate day, List<SkillDecision> decisions) {
    return decisions.stream().allMatch(d -> d.evidence().seen() == 0)
        && day.datesUntil(day.plusDays(WEEK))
            .flatMap(d -> season.practice(d).stream())
            .anyMatch(e -> e.kind() == Event.Kind.EVALUATION);
  }

  /** The two skills of which least is known: never seen, seen longest ago, seen least. */
  static List<SkillDecision> focus(List<SkillDecision> decisions) {
    return decisions.stream()
        .sorted(
            Comparator.<SkillDecision, LocalDate>comparing(
                    d -> d.evidence().last().orElse(LocalDate.MIN))
                .thenComparingInt(d -> d.evidence().seen())
                .thenComparing(SkillDecision::skill))
        .limit(TWO)
        .toList();
  }
}
