package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.Event;

/**
 * Practices at which everybody is looked at afresh: evaluation days, and the first practice of a
 * season, which is also the check after months off.
 */
final class FirstLook {
  private static final int TWO = 2;
  private static final int WEEK = 7;

  private final LocalDate seasonFirst;
  private final Season season;

  FirstLook(LocalDate seasonFirst, Season season) {
    this.seasonFirst = seasonFirst;
    this.season = season;
  }

  /** Whether the practice of {@code day} is such a one. */
  boolean on(LocalDate day) {
    return season
        .practice(day)
        .filter(e -> e.kind() == Event.Kind.EVALUATION || firstOfSeason(day))
        .isPresent();
  }

  private boolean firstOfSeason(LocalDate day) {
    return !day.isBefore(seasonFirst)
        && seasonFirst.datesUntil(day).noneMatch(d -> season.practice(d).isPresent());
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
