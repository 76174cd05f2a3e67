package org.belthigh.plan;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.decide.Hold;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;

/**
 * The days on which a pitcher or a catcher swings less: rest days that a rule book asks for, and
 * the day after much was thrown or caught. Common practice; no published figure was found.
 */
final class ArmRest {
  private final List<Hold> restDays;
  private final Set<LocalDate> dayAfter;

  private ArmRest(List<Hold> restDays, Set<LocalDate> dayAfter) {
    this.restDays = restDays;
    this.dayAfter = dayAfter;
  }

  /**
   * What is known of {@code player}.
   *
   * @param restHolds the rest days of all pitchers
   */
  static ArmRest of(ClubRecord record, Player player, List<Hold> restHolds, Doses doses) {
    Map<LocalDate, Integer> pitches = new TreeMap<>();
    Map<LocalDate, Integer> caught = new TreeMap<>();
    for (Outing outing : record.outings()) {
      if (outing.player().equals(player.id())) {
        pitches.merge(outing.date(), outing.pitches(), Integer::sum);
        caught.merge(outing.date(), outing.inningsCaught().orElse(0), Integer::sum);
      }
    }
    Set<LocalDate> dayAfter = new HashSet<>();
    pitches.forEach(
        (day, thrown) -> {
          int age = player.ageOn(day);
          if (thrown >= doses.heavyPitches(age)
              || caught.get(day) >= doses.heavyInningsCaught(age)) {
            dayAfter.add(day.plusDays(1));
          }
        });
    return new ArmRest(
        restHolds.stream().filter(h -> h.player().equals(player.id())).toList(), dayAfter);
  }

  /** Whether {@code day} is such a day. */
  boolean on(LocalDate day) {
    return dayAfter.contains(day) || restDays.stream().anyMatch(h -> h.holds(day));
  }
}
