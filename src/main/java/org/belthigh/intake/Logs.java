package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
  private final List<Toss> tosses = new ArrayList<>();
  private final List<Tally> tallies = new ArrayList<>();
  private final Map<Round, Marked> rounds = new HashMap<>();
  private final List<Toss> unnumbered = new ArrayList<>();
  private final Repeats repeats = new Repeats();

  private record Round(LocalDate date, String player, String drill, String round) {
    static Round of(Toss toss) {
      return new Round(toss.date(), toss.player(), toss.drill(), toss.round());
    }
  }

  /** What is known of a round: the number of its last toss, and the marks of each. */
  private static final class Marked {
    private final Map<Integer, List<Toss>> numbered = new HashMap<>();
    private int last;

    /** The mark that leaves no room for {@code toss}: by the same person, or nobody's. */
    Optional<Toss> against(Toss toss) {
      List<Toss> marks = numbered.getOrDefault(toss.order(), List.of());
      if (marks.isEmpty()) {
        return Optional.empty();
      }
      Optional<Toss> same = marks.stream().filter(m -> m.by().equals(toss.by())).findFirst();
      boolean told = !toss.by().isBlank() && marks.stream().noneMatch(m -> m.by().isEmpty());
      return told ? same : same.or(() -> marks.stream().findFirst());
    }

    void add(Toss toss) {
      numbered.computeIfAbsent(toss.order(), o -> new ArrayList<>(1)).add(toss);
    }
  }

  private record Counted(LocalDate date, String player, String drill, MeasureKind measure) {}

  /** Rounds with digits only by number, the others after them by text. */
  private static int compareRounds(String a, String b) {
    if (a.equals(b)) {
      return 0;
    }
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
    Marked round = rounds.computeIfAbsent(Round.of(toss), r -> new Marked());
    if (toss.order() == 0) {
      Toss placed = toss.withOrder(++round.last);
      tosses.add(placed);
      unnumbered.add(placed);
      return;
    }
    Optional<Toss> first = round.against(toss);
    if (first.isPresent()) {
      second(toss, first.get(), cells);
      return;
    }
    round.add(toss);
    round.last = toss.order();
    tosses.add(toss);
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
    return tosses.stream().sorted(Logs::inOrder).toList();
  }

  /**
   * By day, player, drill, round, number and place. Written out: rows mostly stand in that order
   * already, so that to compare them was a tenth of all reading.
   */
  private static int inOrder(Toss one, Toss other) {
    int order = one.date().compareTo(other.date());
    order = order != 0 ? order : one.player().compareTo(other.player());
    order = order != 0 ? order : one.drill().compareTo(other.drill());
    order = order != 0 ? order : compareRounds(one.round(), other.round());
    order = order != 0 ? order : Integer.compare(one.order(), other.order());
    return order != 0 ? order : one.origin().compareTo(other.origin());
  }

  /** What stood in two files, told once for two files; complete after all else was asked for. */
  List<Problem> remarks() {
    return repeats.remarks();
  }

  /** The tallies that stand: those for whose player, day, drill and measure no toss was logged. */
  List<Tally> tallies(List<Problem> problems) {
    Set<Counted> tossed = tallies.isEmpty() ? Set.of() : tossed();
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
