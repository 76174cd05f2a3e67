package org.belthigh.intake;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.belthigh.files.Table;
import org.belthigh.model.Problem;

/** A title that stands above the names of the columns, as people write over their tables. */
final class Title {
  private static final int MOST_LINES = 10;
  private static final int SURE = 3;
  private static final Set<String> KNOWN =
      Headings.tables().stream()
          .flatMap(table -> Headings.of(table).stream())
          .collect(Collectors.toUnmodifiableSet());

  private Title() {}

  /** The table under its title; empty where the first line names columns, or none below does. */
  static Optional<Table> beneath(Table raw) {
    if (known(raw.columns()) > 1) {
      return Optional.empty();
    }
    return raw.lines().stream()
        .limit(MOST_LINES)
        .filter(line -> isHeader(line.cells()))
        .findFirst()
        .map(line -> raw.below(line.number()));
  }

  private static boolean isHeader(List<String> cells) {
    long known = known(cells);
    return known >= SURE
        || (known > 1 && known == cells.stream().filter(c -> !c.isEmpty()).count());
  }

  private static long known(List<String> cells) {
    return cells.stream()
        .filter(cell -> Vocabulary.columns(cell).stream().anyMatch(KNOWN::contains))
        .count();
  }

  /** What is told of {@code raw}, whose columns are named first in {@code beneath}. */
  static Problem above(Table raw, Table beneath) {
    boolean sheet = beneath.header().onSheet();
    String first = (sheet ? "row " : "line ") + beneath.header().line();
    return Problem.fault(
        raw.header(),
        "",
        "a title stands above the names of the columns, so the file is not read",
        "the first line must name the columns, as " + first + " does",
        "Take out all that stands above " + first + ".");
  }
}
