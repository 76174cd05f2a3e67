package org.belthigh.intake;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.belthigh.catalogue.WhoEnds;
import org.belthigh.model.Problem;

/**
 * Remarks on complaints that were meant to be over and are not: an end of the same day, of which
 * nobody knows whether it came first, and freedom from symptoms where that is not enough.
 */
final class OpenComplaints {
  private final List<Wellness> rows;
  private final WhoEnds whoEnds;

  private OpenComplaints(List<Wellness> rows, WhoEnds whoEnds) {
    this.rows = rows;
    this.whoEnds = whoEnds;
  }

  /** The remarks on {@code rows}, a complaint at most one; rows may stand in any order. */
  static List<Problem> remarks(List<Wellness> rows, WhoEnds whoEnds) {
    OpenComplaints all = new OpenComplaints(rows, whoEnds);
    return rows.stream()
        .filter(row -> row.kind().holds() && all.open(row))
        .flatMap(row -> all.remark(row))
        .toList();
  }

  private boolean open(Wellness complaint) {
    return after(complaint).noneMatch(row -> row.ends(complaint.kind(), whoEnds));
  }

  private Stream<Wellness> after(Wellness complaint) {
    return ends(complaint).filter(row -> row.date().isAfter(complaint.date()));
  }

  /** Rows of the same player that end one thing or another. */
  private Stream<Wellness> ends(Wellness complaint) {
    return rows.stream()
        .filter(row -> row.player().equals(complaint.player()) && !row.kind().holds())
        .sorted(Comparator.comparing(Wellness::date).thenComparing(Wellness::origin));
  }

  private Stream<Problem> remark(Wellness complaint) {
    return Stream.concat(
            ends(complaint)
                .filter(row -> row.date().equals(complaint.date()))
                .filter(row -> row.endsAny(whoEnds))
                .map(row -> sameDay(complaint, row)),
            after(complaint)
                .filter(row -> row.kind() == Wellness.Kind.SYMPTOM_FREE)
                .map(row -> notEnough(complaint, row)))
        .limit(1);
  }

  private static Problem sameDay(Wellness complaint, Wellness end) {
    return Problem.warning(
        complaint.origin(),
        "kind",
        complaint.kind().id()
            + " is of the same day as "
            + end.kind().id()
            + " in line "
            + end.origin().line()
            + ", so the hold stays",
        "what ends a report must be dated after it",
        "Maybe ask the family which came first; a row of a later day ends it.");
  }

  private static Problem notEnough(Wellness complaint, Wellness end) {
    return Problem.warning(
        end.origin(),
        "kind",
        "symptom-free does not end the " + complaint.kind().id() + " of " + complaint.date(),
        "that must be ended by a row of kind cleared, with clears and by",
        "Maybe it was meant for something else; the hold stays.");
  }
}
