package org.belthigh.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one child meets at a practice, stay by stay, by the rotations.
 *
 * @param visits in their order
 */
record SquadDay(List<Visit> visits) {
  SquadDay {
    visits = List.copyOf(visits);
  }

  /** One stay; {@code drill} is empty where the squad fields. */
  record Visit(String drill, int minutes, boolean bats) {}

  /** All drills and their minutes. */
  Map<String, Integer> all() {
    return minutes(bats());
  }

  /**
   * Whether a child's own day may be {@code said}. Who has used up the swings of the day bats no
   * more: then the stays with a bat that come after it are not in the day, and all others are. A
   * day without anything is one of a child for whom not one swing was left.
   *
   * @param fewer whether the day says that it has fewer swings; these may be none
   */
  boolean allows(Map<String, Integer> said, boolean fewer) {
    int bats = bats();
    int fewest = said.isEmpty() || fewer ? 0 : Math.min(1, bats);
    for (int most = bats; most >= fewest; most--) {
      if (minutes(most).equals(said)) {
        return true;
      }
    }
    return false;
  }

  private int bats() {
    return (int) visits.stream().filter(v -> v.bats() && !v.drill().isEmpty()).count();
  }

  /** Drills and minutes with no more than the first {@code most} stays with a bat. */
  private Map<String, Integer> minutes(int most) {
    Map<String, Integer> minutes = new LinkedHashMap<>();
    int bats = 0;
    for (Visit visit : visits) {
      if (visit.drill().isEmpty()) {
        continue;
      }
      bats += visit.bats() ? 1 : 0;
      if (!visit.bats() || bats <= most) {
        minutes.merge(visit.drill(), visit.minutes(), Integer::sum);
      }
    }
    return minutes;
  }
}
