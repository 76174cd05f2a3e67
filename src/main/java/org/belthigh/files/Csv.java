package org.belthigh.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Reads CSV by RFC 4180: a header line, names without case, any column order, quoted cells, blank
 * lines skipped, blanks around a cell trimmed. Semicolons or tabs may separate instead of commas,
 * as spreadsheets in many languages write them.
 */
public final class Csv {
  /** What a spreadsheet takes for the beginning of a formula. */
  private static final String FORMULA = "=+-@\t\r\n";

  /** The longest line that is read, in characters. */
  static final int LONGEST_LINE = 100_000;

  private Csv() {}

  /**
   * The table in {@code text}.
   *
   * @param file how messages name the file
   * @param problems is told why the whole file, if any, was set aside
   * @return empty where the file as a whole cannot be used
   */
  public static Optional<Table> parse(String text, String file, Consumer<Problem> problems) {
    return parse(new PlainText(text, StandardCharsets.UTF_8), file, problems);
  }

  /** The same, of text that may have been written in another way than UTF-8. */
  public static Optional<Table> parse(PlainText text, String file, Consumer<Problem> problems) {
    CsvText csv = new CsvText(file, text);
    Optional<Problem> unusable = unusable(csv, file);
    if (unusable.isPresent()) {
      problems.accept(unusable.get());
      return Optional.empty();
    }
    try {
      return table(csv, file, problems);
    } catch (CsvParseException e) {
      problems.accept(
          Problem.fault(
              Origin.of(file),
              "",
              "the file is not CSV",
              "it must be CSV with a header line",
              "Maybe save it again from the spreadsheet as \"CSV UTF-8\"."));
      return Optional.empty();
    }
  }

  /**
   * {@code cell} as a spreadsheet shows it and never runs it: one that would begin a formula (=, +,
   * -, @, a tab or a line end) gets an apostrophe in front.
   */
  public static String harmless(String cell) {
    return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
  }

  /** The text of a table by RFC 4180, cells quoted where they must be, lines ended by LF. */
  public static String text(List<List<String>> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      rows.forEach(writer::writeRecord);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static Optional<Problem> unusable(CsvText csv, String file) {
    if (csv.isBlank()) {
      return Optional.of(empty(file));
    }
    return csv.lineLongerThan(LONGEST_LINE)
        .map(
            line ->
                Problem.fault(
                    Origin.of(file, line),
                    "",
                    "the line is longer than " + LONGEST_LINE + " characters",
                    "a line must be one row of a table",
                    "Maybe this is not a CSV file."));
  }

  private static Problem empty(String file) {
    return Problem.fault(
        Origin.of(file),
        "",
        "the file is empty",
        "it must begin with a line of column names",
        "Maybe the file was saved before anything was typed.");
  }

  private static Optional<Table> table(CsvText csv, String file, Consumer<Problem> problems) {
    List<Table.Line> lines = lines(csv);
    if (lines.isEmpty()) {
      problems.accept(empty(file));
      return Optional.empty();
    }
    Table.Line header = lines.get(0);
    Optional<Map<String, Integer>> columns = columns(header, csv, problems);
    if (columns.isEmpty()) {
      return Optional.empty();
    }
    boolean complete = lines.size() == 1 || !csv.endsQuoted(lines.get(lines.size() - 1).number());
    return Optional.of(
        new Table(
            file,
            csv,
            header.number(),
            columns.get(),
            header.cells().size(),
            lines.subList(1, lines.size()),
            complete));
  }

  /** The columns that a header names; empty, and a fault told, where one stands twice. */
  static Optional<Map<String, Integer>> columns(
      Table.Line header, Table.Places places, Consumer<Problem> problems) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    for (int i = 0; i < header.cells().size(); i++) {
      String name = header.cells().get(i).toLowerCase(Locale.ROOT);
      if (!name.isEmpty() && columns.putIfAbsent(name, i) != null) {
        problems.accept(
            Problem.fault(
                places.cell(header.number(), i),
                name,
                "the column stands twice",
                "each column must stand once",
                "Maybe one of the two has the wrong name."));
        return Optional.empty();
      }
    }
    return Optional.of(columns);
  }

  /** The lines with something in them, the header first. */
  private static List<Table.Line> lines(CsvText csv) {
    List<Table.Line> lines = new ArrayList<>();
    boolean said = CsvText.saidSeparator(csv.text()).isPresent();
    for (CsvRecord record :
        CsvReader.builder()
            .fieldSeparator(csv.separator())
            .ignoreDifferentFieldCount(true)
            .ofCsvRecord(csv.text())) {
      boolean first = said && line(record) == 1;
      List<String> cells = first ? List.of() : cells(record);
      if (!cells.isEmpty()) {
        lines.add(new Table.Line(line(record), cells));
      }
    }
    return lines;
  }

  /** The cells, trimmed; none where all are blank. */
  private static List<String> cells(CsvRecord record) {
    List<String> cells = new ArrayList<>(record.getFieldCount());
    boolean blank = true;
    for (int i = 0; i < record.getFieldCount(); i++) {
      String cell = Blanks.strip(record.getField(i));
      blank &= cell.isEmpty();
      cells.add(cell);
    }
    return blank ? List.of() : cells;
  }

  private static int line(CsvRecord record) {
    return Math.toIntExact(record.getStartingLineNumber());
  }
}
