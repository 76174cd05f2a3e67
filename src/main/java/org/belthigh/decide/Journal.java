package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Placement;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.measure.Marks;

/** A club's logs by player and day, so that a walk reads only what is its own. */
final class Journal {
  private final Map<String, SortedMap<LocalDate, Day>> byPlayer = new HashMap<>();

  /** Everything one player logged on one day. */
  static final class Day {
    private final List<Toss> tosses = new ArrayList<>();
    private final List<Tally> tallies = new ArrayList<>();
    private final List<Placement> placements = new ArrayList<>();
    private Marks marks;

    List<Toss> tosses() {
      return tosses;
    }

    /** Which tosses of the day two people marked. */
    Marks marks() {
      marks = marks == null ? Marks.of(tosses) : marks;
      return marks;
    }

    List<Tally> tallies() {
      return tallies;
    }

    List<Placement> placements() {
      return placements;
    }
  }

  Journal(ClubRecord record) {
    file(record.tosses(), Toss::player, Toss::date, Day::tosses);
    file(record.tallies(), Tally::player, Tally::date, Day::tallies);
    file(record.placements(), Placement::player, Placement::date, Day::placements);
  }

  private <T> void file(
      List<T> rows,
      Function<T, String> player,
      Function<T, LocalDate> date,
      Function<Day, List<T>> where) {
    for (T row : rows) {
      Day day =
          byPlayer
              .computeIfAbsent(player.apply(row), k -> new TreeMap<>())
              .computeIfAbsent(date.apply(row), k -> new Day());
      where.apply(day).add(row);
    }
  }

  /** The days of one player, oldest first; empty where nothing was logged. */
  SortedMap<LocalDate, Day> of(String player) {
    return byPlayer.getOrDefault(player, Collections.emptySortedMap());
  }
}
