package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Problem;

/**
 * All logs together: numbers the tosses of each round, refuses a second row for one toss, and lets
 * tosses win over a tally of the same drill, day and measure.
 */
final class Logs {
  private static final Comparator<Toss> ORDER =
      Comparator.comparing(Toss::date)
          .thenComparing(Toss::player)
          .thenComparing(Toss::drill)
          .thenComparing(Toss::round, Logs::compareRounds)
          .thenComparingInt(Toss::order)
          .thenComparing(Toss::origin);

  private final List<Toss> tosses = new ArrayList<>();
  private final List<Tally> tallies = new ArrayList<>();
  private final Map<Round, Map<Integer, Map<String, Toss>>> numbered = new HashMap<>();
  private final Map<Round, Integer> last = new HashMap<>();
  private final List<Toss> unnumbered = new ArrayList<>();
  private final Repeats repeats = new Repeats();

  private record Round(LocalDate date, String player, String drill, String round) {
    static Round of(Toss toss) {
      return new Round(toss.date(), toss.player(), toss.drill(), toss.round());
    }
  }

  private record Counted(LocalDate date, String player, String drill, MeasureKind measure) {}

  /** Rounds with digits only by number, the others after them by text. */
  private static int compareRounds(String a, String b) {
    boolean number = isNumber(a);
    if (number != isNumber(b)) {
      return number ? -1 : 1;
    }
    return number && a.length() != b.length()
        ? Integer.compare(a.length(), b.length())
        : a.compareTo(b);
  }

  private static boolean isNumber(String round) {
    return round.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  /**
   * Takes a toss in, with its place in the round; refuses one that stands already. Two people who
   * each say who they are may mark the same toss: that is a second mark, not a second row.
   */
  void add(Toss toss, Cells cells) {
    Round round = Round.of(toss);
    int order = toss.order() > 0 ? toss.order() : last.getOrDefault(round, 0) + 1;
    if (toss.order() > 0) {
      Map<String, Toss> marks =
          numbered
              .computeIfAbsent(round, r -> new HashMap<>())
              .computeIfAbsent(order, o -> new LinkedHashMap<>());
      boolean again = toss.by().isBlank() ? !marks.isEmpty() : marks.containsKey("");
      if (again || marks.containsKey(toss.by())) {
        second(toss, marks.getOrDefault(toss.by(), marks.values().iterator().next()), cells);
        return;
      }
      marks.put(toss.by(), toss);
    }
    last.put(round, order);
    Toss placed = toss.withOrder(order);
    tosses.add(placed);
    if (toss.order() == 0) {
      unnumbered.add(placed);
    }
  }

  /** A second row for one toss: a copy in another file, or a contradiction. */
  private void second(Toss toss, Toss first, Cells cells) {
    boolean sameFile = first.origin().file().equals(toss.origin().file());
    String difference = Repeats.difference(first, toss);
    if (!sameFile && difference.isEmpty()) {
      repeats.note(toss.origin(), first.origin());
      return;
    }
    cells.fault(
        "toss",
        "toss "
            + toss.order()
            + " of round "
            + toss.round()
            + " of "
            + toss.player()
            + " stands already "
            + (sameFile ? "on line " + first.origin().line() : "in " + first.origin())
            + (sameFile ? "" : ": " + difference),
        "one toss must be one row",
        sameFile
            ? "Maybe the round or the toss was mistyped."
            : "Maybe it is another round; else keep the row that is right.");
  }

  void add(Tally tally) {
    tallies.add(tally);
  }

  /** The tosses in their order, without those that stand in two files. */
  List<Toss> tosses() {
    Set<Toss> copied = repeats.copied(unnumbered);
    if (!copied.isEmpty()) {
      tosses.removeIf(copied::contains);
    }
    unnumbered.clear();
    return tosses.stream().sorted(ORDER).toList();
  }

  /** What stood in two files, told once for two files; complete after all else was asked for. */
  List<Problem> remarks() {
    return repeats.remarks();
  }

  /** The tallies that stand: those for whose player, day, drill and measure no toss was logged. */
  List<Tally> tallies(List<Problem> problems) {
    Set<Counted> tossed = tossed();
    List<Tally> standing = new ArrayList<>();
    List<Tally> once = repeats.once(tallies);
    problems.addAll(Repeats.contradictions(once));
    for (Tally tally : once) {
      if (tossed.contains(
          new Counted(tally.date(), tally.player(), tally.drill(), tally.measure()))) {
        problems.add(beaten(tally));
      } else {
        standing.add(tally);
      }
    }
    return standing.stream()
        .sorted(
            Comparator.comparing(Tally::date)
                .thenComparing(Tally::player)
                .thenComparing(Tally::origin))
        .toList();
  }

  private Set<Counted> tossed() {
    Set<Counted> tossed = new HashSet<>();
    for (Toss toss : tosses) {
      for (MeasureKind measure : MeasureKind.values()) {
        if (toss.countsFor(measure)) {
          tossed.add(new Counted(toss.date(), toss.player(), toss.drill(), measure));
        }
      }
    }
    return tossed;
  }

  private static Problem beaten(Tally tally) {
    return Problem.fault(
        tally.origin(),
        "measure",
        "single tosses of "
            + tally.player()
            + " in "
            + tally.drill()
            + " on "
            + tally.date()
            + " were logged too, so this tally is left out",
        "a drill must be logged toss by toss or as a tally",
        "Maybe the tally sums up those tosses; then delete its row.");
  }

  /** How a log file is read into these logs: toss by toss, or as tallies. */
  Sheet<?> sheet(boolean tally, Bearings bearings) {
    return tally
        ? Sheet.of(
            TallyRows.COLUMNS,
            cells -> {
              Optional<Tally> row = new TallyRows(bearings).row(cells);
              row.ifPresent(this::add);
              return row;
            })
        : Sheet.of(
            TossRows.COLUMNS,
            cells -> {
              Optional<Toss> row = new TossRows(bearings).row(cells);
              row.ifPresent(toss -> add(toss, cells));
              return row;
            });
  }
}
