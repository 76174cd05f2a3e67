package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.belthigh.history.Handed;
import org.belthigh.history.History;
import org.belthigh.model.Skill;

/**
 * Skills whose turn has come, since the last two weeks that were handed out left them out.
 *
 * <p>Need changes from week to week, and with it the order in which skills take turns; where each
 * week has its own plan, a skill could miss every turn. A week without work counts neither way.
 */
final class Overdue {
  /** Weeks with work after which a skill is due: then it comes within three. */
  private static final int WEEKS = 2;

  private Overdue() {}

  /**
   * The skills that {@code player} has waited for, the longest wait first.
   *
   * @param seasonFirst plans before it do not count
   */
  static List<Skill> of(History history, String player, LocalDate seasonFirst, DrillChoice choice) {
    Map<LocalDate, Set<Skill>> weeks = new TreeMap<>(Comparator.reverseOrder());
    for (Handed plan : history.plans()) {
      Set<Skill> met =
          plan.sessions().stream()
              .filter(s -> s.player().equals(player) && choice.known(s.drill()))
              .map(s -> choice.drill(s.drill()).skill())
              .collect(Collectors.toSet());
      if (!met.isEmpty() && !plan.from().isBefore(seasonFirst)) {
        weeks.put(plan.from(), met);
      }
    }
    return Arrays.stream(Skill.values())
        .filter(skill -> waited(weeks, skill) >= WEEKS)
        .sorted(Comparator.comparingLong((Skill skill) -> -waited(weeks, skill)))
        .toList();
  }

  /** Weeks with work, from the newest back, without that skill. */
  private static long waited(Map<LocalDate, Set<Skill>> weeks, Skill skill) {
    return weeks.values().stream().takeWhile(met -> !met.contains(skill)).count();
  }
}
