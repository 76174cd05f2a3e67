package org.belthigh.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.belthigh.catalogue.Drill;
import org.belthigh.history.History;

/** The drills that one player has had of late, handed out before or planned, so that none bores. */
final class Familiar {
  /** Days after which a drill counts as fresh again; ours, common practice. */
  private static final int FRESH_AFTER_DAYS = 21;

  private final Map<String, Integer> used = new HashMap<>();
  private final Runs runs;

  private Familiar(int most) {
    this.runs = new Runs(most);
  }

  /**
   * What {@code player} was handed in the weeks before {@code from}.
   *
   * @param most sessions running with one drill
   */
  static Familiar of(History history, String player, LocalDate from, DrillChoice choice, int most) {
    Familiar familiar = new Familiar(most);
    LocalDate since = from.minusDays(FRESH_AFTER_DAYS);
    history.plans().stream()
        .filter(h -> !h.from().isBefore(since))
        .flatMap(h -> h.sessions().stream())
        .filter(s -> s.player().equals(player) && choice.known(s.drill()))
        .map(s -> Map.entry(s.date(), choice.drill(s.drill())))
        .distinct()
        .forEach(s -> familiar.add(s.getKey(), s.getValue()));
    return familiar;
  }

  /** Notes a drill of {@code day}. */
  void add(LocalDate day, Drill drill) {
    used.merge(drill.id(), 1, Integer::sum);
    runs.add(day, drill.skill(), drill.id());
  }

  /** How often the player has had each drill, by id. */
  Map<String, Integer> used() {
    return Map.copyOf(used);
  }

  /** Drills that would be one time too many running on {@code day}. */
  Predicate<Drill> bores(LocalDate day) {
    return drill -> runs.bores(day, drill.skill(), drill.id());
  }
}
