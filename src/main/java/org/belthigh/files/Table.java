package org.belthigh.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** The rows of one CSV file under the names of its header line. */
public final class Table {
  private final String file;
  private final CsvText csv;
  private final int headerLine;
  private final Map<String, Integer> columns;
  private final int width;
  private final List<Row> rows = new ArrayList<>();

  Table(String file, CsvText csv, int headerLine, Map<String, Integer> columns, int width) {
    this.file = file;
    this.csv = csv;
    this.headerLine = headerLine;
    this.columns = columns;
    this.width = width;
  }

  void add(int line, List<String> cells) {
    rows.add(new Row(line, cells));
  }

  /** How messages name the file. */
  public String file() {
    return file;
  }

  /** Whether the header has that column. */
  public boolean has(String column) {
    return columns.containsKey(column);
  }

  /** The rows in file order, the blank ones left out. */
  public List<Row> rows() {
    return Collections.unmodifiableList(rows);
  }

  /** Whether the file ends as it should; false where a quote swallowed its last rows. */
  public boolean complete() {
    return rows.isEmpty() || !csv.endsQuoted(rows.get(rows.size() - 1).line);
  }

  /**
   * Compares the header with what is expected: a missing required column is a fault, an unknown one
   * a warning that names the nearest known one.
   *
   * @return whether every required column is there
   */
  public boolean expect(List<String> required, List<String> optional, Consumer<Problem> problems) {
    List<String> known = Stream.concat(required.stream(), optional.stream()).toList();
    List<String> unknown = columns.keySet().stream().filter(c -> !known.contains(c)).toList();
    List<String> missing = required.stream().filter(c -> !has(c)).toList();
    unknown.forEach(c -> problems.accept(unknown(c, known)));
    missing.forEach(c -> problems.accept(missing(c, unknown)));
    return missing.isEmpty();
  }

  private Problem unknown(String column, List<String> known) {
    List<String> free = known.stream().filter(c -> !has(c)).toList();
    return Problem.warning(
        csv.origin(file, headerLine, columns.get(column)),
        column,
        "the column is not known and is not read",
        "columns are " + String.join(", ", known),
        Nearest.to(column, free)
            .map(c -> "Maybe " + c + ".")
            .orElse("Maybe it is a note of your own; then leave it."));
  }

  private Problem missing(String column, List<String> unknown) {
    return Problem.fault(
        Origin.of(file, headerLine),
        column,
        "the column is missing, so the file is not read",
        "the header must name " + column,
        Nearest.to(column, unknown)
            .map(c -> "Maybe it is the column " + c + ".")
            .orElse("Maybe the header line was deleted."));
  }

  /** One row. Cells that the line does not have are empty. */
  public final class Row {
    private final int line;
    private final List<String> cells;

    private Row(int line, List<String> cells) {
      this.line = line;
      this.cells = cells;
    }

    /** The cell under {@code column}, trimmed; empty where there is none. */
    public String get(String column) {
      Integer index = columns.get(column);
      return index == null || index >= cells.size() ? "" : cells.get(index);
    }

    /** The whole row. */
    public Origin origin() {
      return Origin.of(file, line);
    }

    /** The cell under {@code column}; the whole row where the line does not have it. */
    public Origin origin(String column) {
      Integer index = columns.get(column);
      return index == null || index >= cells.size() ? origin() : csv.origin(file, line, index);
    }

    /** Why the row as a whole cannot be trusted: more cells than columns, or an open quote. */
    public Optional<Problem> fault() {
      if (this == rows.get(rows.size() - 1) && csv.endsQuoted(line)) {
        return Optional.of(
            Problem.fault(
                origin(),
                "",
                "a quote opens in this row and never closes, so the file is not read from here on",
                "a quoted cell must end with a quote",
                "Maybe a \" is missing, or one too many was typed."));
      }
      return surplus()
          ? Optional.of(
              Problem.fault(
                  origin(),
                  "",
                  "the row has " + cells.size() + " cells under " + width + " columns",
                  "a cell with a comma in it must stand in quotes",
                  "Maybe put \" before and after the text with the comma."))
          : Optional.empty();
    }

    private boolean surplus() {
      return cells.size() > width
          && cells.subList(width, cells.size()).stream().anyMatch(c -> !c.isEmpty());
    }
  }
}
