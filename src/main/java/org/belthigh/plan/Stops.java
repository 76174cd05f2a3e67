package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.decide.Hold;
import org.belthigh.intake.Player;

/** What the holds forbid a player on a day. */
record Stops(List<Hold> holds) {
  Stops {
    holds = List.copyOf(holds);
  }

  /** Whether nothing at all is done. */
  boolean all(Player player, LocalDate day) {
    return any(player, day, h -> h.kind() == Hold.Kind.EVERYTHING);
  }

  /** Whether nothing is swung. */
  boolean swings(Player player, LocalDate day) {
    return any(player, day, Hold::stopsSwinging);
  }

  /** What is stopped. */
  Set<Hold.Kind> kinds(Player player, LocalDate day) {
    return Stream.of(Hold.Kind.values())
        .filter(kind -> any(player, day, h -> h.kind() == kind))
        .collect(Collectors.toSet());
  }

  private boolean any(Player player, LocalDate day, Predicate<Hold> what) {
    return holds.stream()
        .anyMatch(h -> h.player().equals(player.id()) && what.test(h) && h.holds(day));
  }
}
