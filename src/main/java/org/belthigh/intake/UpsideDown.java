package org.belthigh.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.belthigh.model.Call;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.belthigh.model.Row;

/**
 * Asks about logs whose calls fit only with high and low changed places: somebody took spot 1 for
 * the top row. Nothing is changed by itself.
 *
 * <p>The numbers are ours. A dozen calls of high and low tosses are a round of a drill. A child who
 * only guesses is right a third of the time, and calls the other end a third of the time; three
 * quarters at the other end, and at most a quarter right, is not how calling goes wrong.
 */
final class UpsideDown {
  private static final int FEWEST = 12;
  private static final double MOST_RIGHT = 0.25;
  private static final double FEWEST_TURNED = 0.75;

  private UpsideDown() {}

  /** A remark for each such log, in the order of their names. */
  static List<Problem> remarks(List<Toss> tosses) {
    Map<String, List<Toss>> byFile =
        tosses.stream()
            .filter(toss -> called(toss).isPresent())
            .collect(
                Collectors.groupingBy(t -> t.origin().file(), TreeMap::new, Collectors.toList()));
    return byFile.entrySet().stream()
        .flatMap(log -> remark(log.getKey(), log.getValue()).stream())
        .toList();
  }

  /** The row that was called of a toss that was high or low. */
  private static Optional<Row> called(Toss toss) {
    Optional<Row> row =
        toss.called()
            .flatMap(
                call ->
                    call instanceof Call.InRow in
                        ? Optional.of(in.row())
                        : call instanceof Call.AtSpot at ? at.spot().row() : Optional.empty());
    return toss.zone().row().filter(r -> r != Row.BELT).isPresent() ? row : Optional.empty();
  }

  private static Optional<Problem> remark(String file, List<Toss> calls) {
    long right = calls.stream().filter(t -> called(t).equals(t.zone().row())).count();
    long turned =
        calls.stream()
            .filter(t -> called(t).filter(r -> r != Row.BELT).isPresent())
            .filter(t -> !called(t).equals(t.zone().row()))
            .count();
    if (calls.size() < FEWEST
        || right > MOST_RIGHT * calls.size()
        || turned < FEWEST_TURNED * calls.size()) {
      return Optional.empty();
    }
    return Optional.of(
        Problem.warning(
            Origin.of(file),
            "called",
            turned
                + " of "
                + calls.size()
                + " calls of high and low tosses would be right upside down, and "
                + right
                + " are right as they stand",
            "spots 1 2 3 are the low row, 4 5 6 the belt, 7 8 9 the high row",
            "Maybe 1 was taken for the top row; then change the spots, or ask who wrote it."));
  }
}
