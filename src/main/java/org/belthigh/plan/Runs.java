package org.belthigh.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.model.Skill;

/**
 * How often one player has had the same drill running, so that it does not bore.
 *
 * <p>A run is a drill in sessions of its skill that follow one another; sessions without the skill
 * do not break it.
 */
final class Runs {
  private final int most;
  private final Map<Skill, NavigableMap<LocalDate, Set<String>>> sessions = new HashMap<>();

  /**
   * No session so far.
   *
   * @param most sessions running with one drill
   */
  Runs(int most) {
    this.most = most;
  }

  /** Notes a drill of {@code day}. */
  void add(LocalDate day, Skill skill, String drill) {
    sessions
        .computeIfAbsent(skill, s -> new TreeMap<>())
        .computeIfAbsent(day, d -> new HashSet<>())
        .add(drill);
  }

  /** Whether {@code drill} on {@code day} would be once too often, by what stands on both sides. */
  boolean bores(LocalDate day, Skill skill, String drill) {
    NavigableMap<LocalDate, Set<String>> of = sessions.getOrDefault(skill, new TreeMap<>());
    return 1
            + length(of.headMap(day, false).descendingMap(), drill)
            + length(of.tailMap(day, false), drill)
        > most;
  }

  private static int length(Map<LocalDate, Set<String>> away, String drill) {
    int length = 0;
    for (Set<String> drills : away.values()) {
      if (!drills.contains(drill)) {
        return length;
      }
      length++;
    }
    return length;
  }
}
