package org.belthigh.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * The same practice in two files: a log that was copied, renamed or typed by two people. What
 * stands twice counts once, which is told once for two files; what differs is told side by side.
 */
final class Repeats {
  /**
   * So many tosses without numbers must be the same, in the same order, to be a copy and not
   * another visit that went alike. Ours, common practice.
   */
  private static final int FEWEST = 4;

  /** How many rows of one file stand in another, and the first of them. */
  private record Copy(Origin first, int rows) {}

  private final Map<String, Map<String, Copy>> copies = new TreeMap<>();

  /** Notes that the row at {@code again} says the same as the one at {@code before}. */
  void note(Origin again, Origin before) {
    copies
        .computeIfAbsent(again.file(), f -> new TreeMap<>())
        .merge(before.file(), new Copy(again, 1), (a, b) -> new Copy(a.first(), a.rows() + 1));
  }

  /** The remarks, one for two files. */
  List<Problem> remarks() {
    List<Problem> remarks = new ArrayList<>();
    copies.forEach(
        (file, others) ->
            others.forEach(
                (other, copy) ->
                    remarks.add(
                        Problem.warning(
                            copy.first(),
                            "",
                            Notes.rows(copy.rows())
                                + " from here on "
                                + (copy.rows() == 1 ? "stands" : "stand")
                                + " in "
                                + other
                                + " too and "
                                + (copy.rows() == 1 ? "is" : "are")
                                + " counted once",
                            "a practice needs to be logged once",
                            "Maybe one of the two files is a copy; then delete it."))));
    return remarks;
  }

  /** How two rows for one toss differ: {@code zone is belt-in there and low-in here}. */
  static String difference(Toss there, Toss here) {
    Map<String, String> before = there.seen();
    Map<String, String> now = here.seen();
    Set<String> columns = new LinkedHashSet<>(before.keySet());
    columns.addAll(now.keySet());
    List<String> different =
        columns.stream()
            .filter(c -> !before.getOrDefault(c, "").equals(now.getOrDefault(c, "")))
            .map(
                c ->
                    c
                        + " is "
                        + before.getOrDefault(c, "empty")
                        + " there and "
                        + now.getOrDefault(c, "empty")
                        + " here")
            .toList();
    return String.join(", ", different);
  }

  /**
   * {@code unnumbered} tosses without those that another file holds already: whole visits to a
   * drill that are the same, toss by toss.
   */
  Set<Toss> copied(Collection<Toss> unnumbered) {
    Map<Object, Map<String, List<Toss>>> visits = new LinkedHashMap<>();
    for (Toss toss : unnumbered) {
      visits
          .computeIfAbsent(
              List.of(toss.date(), toss.player(), toss.drill(), toss.round(), toss.by()),
              v -> new LinkedHashMap<>())
          .computeIfAbsent(toss.origin().file(), f -> new ArrayList<>())
          .add(toss);
    }
    Set<Toss> copied = new HashSet<>();
    for (Map<String, List<Toss>> byFile : visits.values()) {
      if (byFile.size() > 1) {
        alike(
            byFile.values(),
            tosses -> tosses.size() < FEWEST ? null : tosses.stream().map(Toss::seen).toList(),
            (again, before) -> {
              for (int i = 0; i < again.size(); i++) {
                note(again.get(i).origin(), before.get(i).origin());
              }
              copied.addAll(again);
            });
      }
    }
    return copied;
  }

  private static <T> void alike(
      Collection<T> all, Function<T, Object> content, BiConsumer<T, T> found) {
    Map<Object, T> first = new HashMap<>();
    for (T one : all) {
      Object key = content.apply(one);
      T before = key == null ? null : first.putIfAbsent(key, one);
      if (before != null) {
        found.accept(one, before);
      }
    }
  }

  /** The tallies without those that another file holds already; two in one file are two. */
  List<Tally> once(List<Tally> tallies) {
    Map<Object, Map<String, List<Tally>>> same = new LinkedHashMap<>();
    for (Tally tally : tallies) {
      same.computeIfAbsent(
              List.of(
                  tally.date(),
                  tally.player(),
                  tally.drill(),
                  tally.measure(),
                  tally.made(),
                  tally.of(),
                  tally.side(),
                  tally.by()),
              t -> new LinkedHashMap<>())
          .computeIfAbsent(tally.origin().file(), f -> new ArrayList<>())
          .add(tally);
    }
    Set<Tally> copied = new HashSet<>();
    for (Map<String, List<Tally>> byFile : same.values()) {
      List<Tally> kept = new ArrayList<>();
      for (List<Tally> inFile : byFile.values()) {
        for (int i = 0; i < inFile.size(); i++) {
          if (i < kept.size()) {
            note(inFile.get(i).origin(), kept.get(i).origin());
            copied.add(inFile.get(i));
          } else {
            kept.add(inFile.get(i));
          }
        }
      }
    }
    return tallies.stream().filter(t -> !copied.contains(t)).toList();
  }

  /** Tallies of different files that say different things of one drill, day and measure. */
  static List<Problem> contradictions(List<Tally> tallies) {
    List<Problem> problems = new ArrayList<>();
    Map<Object, Tally> first = new HashMap<>();
    for (Tally tally : tallies) {
      Tally before =
          tally.measure() == MeasureKind.COUNTDOWN
              ? null
              : first.putIfAbsent(
                  List.of(tally.date(), tally.player(), tally.drill(), tally.measure()), tally);
      if (before != null && !before.origin().file().equals(tally.origin().file())) {
        problems.add(
            Problem.warning(
                tally.origin(),
                "made",
                tally.made()
                    + " of "
                    + tally.of()
                    + " here and "
                    + before.made()
                    + " of "
                    + before.of()
                    + " in "
                    + before.origin()
                    + ", and both are counted",
                "two files may each hold a part of a practice",
                "Maybe one corrects the other; then delete the wrong row."));
      }
    }
    return problems;
  }
}
