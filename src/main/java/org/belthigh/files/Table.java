package org.belthigh.files;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** Rows under named columns, each cell with its place: of a CSV file, a workbook or a list. */
public final class Table {
  private final String file;
  private final Places places;
  private final int headerLine;
  private final Map<String, Integer> columns;
  private final List<String> names;
  private final int width;
  private final List<Line> lines;
  private final boolean complete;
  private final List<Row> rows;

  /** Where the parts of a table stand in its file. */
  public interface Places {
    /** The row that begins on that line. */
    Origin row(int line);

    /** The cell at {@code index}, from 0, of the row that begins on that line. */
    Origin cell(int line, int index);

    /** Whether the file breaks off on that line, without the end that a last line has. */
    default boolean breaksOff(int line) {
      return false;
    }

    /** What is unusual in how the file is written, as clauses: {@code as Windows-1252 text}. */
    default List<String> form() {
      return List.of();
    }
  }

  /**
   * The cells of one row.
   *
   * @param number the line on which it begins, or whatever tells {@link Places} where it stands
   */
  public record Line(int number, List<String> cells) {
    public Line {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A table.
   *
   * @param columns names in lower case, with their index
   * @param width how many cells a row may have
   * @param complete whether the file ends as it should, not inside a cell of the last row
   */
  public Table(
      String file,
      Places places,
      int headerLine,
      Map<String, Integer> columns,
      int width,
      List<Line> lines,
      boolean complete) {
    this.file = file;
    this.places = places;
    this.headerLine = headerLine;
    this.columns = new LinkedHashMap<>(columns);
    this.names = List.copyOf(this.columns.keySet());
    this.width = width;
    this.lines = List.copyOf(lines);
    this.complete = complete;
    this.rows = new ArrayList<>(lines.size());
    for (int i = 0; i < this.lines.size(); i++) {
      rows.add(new Row(this.lines.get(i), complete || i + 1 < this.lines.size()));
    }
  }

  /** The same table, its columns under other names. Names must stay different. */
  public Table named(Function<String, String> name) {
    Map<String, Integer> renamed = new LinkedHashMap<>();
    columns.forEach((column, index) -> renamed.put(name.apply(column), index));
    return new Table(file, places, headerLine, renamed, width, lines, complete);
  }

  /** The same table with those lines alone. */
  public Table only(Predicate<Line> kept) {
    return new Table(
        file, places, headerLine, columns, width, lines.stream().filter(kept).toList(), complete);
  }

  /** The table whose header is the line of that number, further down; a heading counts once. */
  public Table below(int number) {
    int at = 0;
    while (lines.get(at).number != number) {
      at++;
    }
    Map<String, Integer> below = new LinkedHashMap<>();
    List<String> header = lines.get(at).cells;
    for (int i = 0; i < header.size(); i++) {
      if (!header.get(i).isEmpty()) {
        below.putIfAbsent(header.get(i).toLowerCase(Locale.ROOT), i);
      }
    }
    List<Line> rest = lines.subList(at + 1, lines.size());
    return new Table(file, places, number, below, header.size(), rest, complete);
  }

  /** Where the header stands. */
  public Origin header() {
    return places.row(headerLine);
  }

  /** How messages name the file. */
  public String file() {
    return file;
  }

  /** What is unusual in how the file is written, as clauses: {@code as Windows-1252 text}. */
  public List<String> form() {
    return places.form();
  }

  /** The names of the columns, from the left. */
  public List<String> columns() {
    return names;
  }

  /** Whether the header has that column. */
  public boolean has(String column) {
    return columns.containsKey(column);
  }

  /** The rows in file order, the blank ones left out. */
  public List<Row> rows() {
    return Collections.unmodifiableList(rows);
  }

  /** The same rows, cell by cell. */
  public List<Line> lines() {
    return lines;
  }

  /** The index of a column in each line; -1 where there is none. */
  public int index(String column) {
    return columns.getOrDefault(column, -1);
  }

  /** Whether the file ends in its header, without a line end. */
  public boolean endsInHeader() {
    return rows.isEmpty() && places.breaksOff(headerLine);
  }

  /** Whether the file ends as it should; false where a quote swallowed its last rows. */
  public boolean complete() {
    return complete;
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
    if (missing.size() > 1 && missing.size() == required.size()) {
      problems.accept(noHeader(required));
    } else {
      missing.forEach(c -> problems.accept(missing(c, unknown)));
    }
    return missing.isEmpty();
  }

  private Problem unknown(String column, List<String> known) {
    List<String> free = known.stream().filter(c -> !has(c)).toList();
    return Problem.warning(
        places.cell(headerLine, columns.get(column)),
        column,
        "the column is not known and is not read",
        "columns are " + String.join(", ", known),
        Nearest.to(column, free)
            .map(c -> "Maybe " + c + ".")
            .orElse("Maybe it is a note of your own; then leave it."));
  }

  private Problem noHeader(List<String> required) {
    return Problem.fault(
        places.row(headerLine),
        "",
        "this line does not name the columns, so the file is not read",
        "the header must name " + String.join(", ", required),
        "Maybe the header line was deleted.");
  }

  private Problem missing(String column, List<String> unknown) {
    return Problem.fault(
        places.row(headerLine),
        column,
        "the column is missing, so the file is not read",
        "the header must name " + column,
        Nearest.to(column, unknown)
            .map(c -> "Maybe it is the column " + c + ".")
            .orElse("Maybe the header line was deleted."));
  }

  /** One row. Cells that the line does not have are empty. */
  public final class Row {
    private final Line line;
    private final boolean closed;

    private Row(Line line, boolean closed) {
      this.line = line;
      this.closed = closed;
    }

    /** The cell under {@code column}, trimmed; empty where there is none. */
    public String get(String column) {
      Integer index = columns.get(column);
      return index == null || index >= line.cells.size() ? "" : line.cells.get(index);
    }

    /** The whole row. */
    public Origin origin() {
      return places.row(line.number);
    }

    /** The cell under {@code column}; the whole row where the line does not have it. */
    public Origin origin(String column) {
      Integer index = columns.get(column);
      return index == null || index >= line.cells.size()
          ? origin()
          : places.cell(line.number, index);
    }

    /** Whether the row has no cell after {@code column}, though the header has. */
    public boolean endsAt(String column) {
      int size = line.cells.size();
      return size < width && index(column) == size - 1;
    }

    /** The cells from the left, however many there are. */
    public List<String> cells() {
      return line.cells;
    }

    /** The column of the last cell that is written; empty where it stands under none. */
    public String lastColumn() {
      return columns.entrySet().stream()
          .filter(column -> column.getValue() == line.cells.size() - 1)
          .map(Map.Entry::getKey)
          .findFirst()
          .orElse("");
    }

    /** Whether the file ends on this line, without a line end. */
    public boolean endsFile() {
      return places.breaksOff(line.number);
    }

    /** Whether the file breaks off in this row before the last column, perhaps inside a number. */
    public boolean breaksOff() {
      return line.cells.size() < width && endsFile();
    }

    /** Why the row as a whole cannot be trusted: more cells than columns, or an open quote. */
    public Optional<Problem> fault() {
      if (!closed) {
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
                  "the row has " + line.cells.size() + " cells under " + width + " columns",
                  "a cell with a comma in it must stand in quotes",
                  "Maybe put \" before and after the text with the comma."))
          : Optional.empty();
    }

    private boolean surplus() {
      List<String> cells = line.cells;
      return cells.size() > width
          && cells.subList(width, cells.size()).stream().anyMatch(c -> !c.isEmpty());
    }
  }
}
