package org.belthigh.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
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
 * lines skipped, blanks around a cell trimmed. Where a header has no comma, semicolons or tabs may
 * separate instead, as spreadsheets in many languages write them.
 */
public final class Csv {
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
    CsvText csv = new CsvText(text);
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
      return Optional.of(
          Problem.fault(
              Origin.of(file),
              "",
              "the file is empty",
              "it must begin with a line of column names",
              "Maybe the file was saved before anything was typed."));
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

  private static Optional<Table> table(CsvText csv, String file, Consumer<Problem> problems) {
    List<CsvRecord> records = records(csv);
    CsvRecord header = records.get(0);
    Map<String, Integer> columns = new LinkedHashMap<>();
    for (int i = 0; i < header.getFieldCount(); i++) {
      String name = header.getField(i).strip().toLowerCase(Locale.ROOT);
      if (!name.isEmpty() && columns.putIfAbsent(name, i) != null) {
        problems.accept(
            Problem.fault(
                csv.origin(file, line(header), i),
                name,
                "the column stands twice",
                "each column must stand once",
                "Maybe one of the two has the wrong name."));
        return Optional.empty();
      }
    }
    return Optional.of(rows(csv, file, records, columns));
  }

  private static Table rows(
      CsvText csv, String file, List<CsvRecord> records, Map<String, Integer> columns) {
    int headerLine = line(records.get(0));
    int width = records.get(0).getFieldCount();
    Table table = new Table(file, csv, headerLine, columns, width);
    for (CsvRecord record : records.subList(1, records.size())) {
      table.add(line(record), record.getFields().stream().map(String::strip).toList());
    }
    return table;
  }

  private static List<CsvRecord> records(CsvText csv) {
    List<CsvRecord> records = new ArrayList<>();
    for (CsvRecord record :
        CsvReader.builder()
            .fieldSeparator(csv.separator())
            .ignoreDifferentFieldCount(true)
            .ofCsvRecord(csv.text())) {
      if (record.getFields().stream().anyMatch(f -> !f.isBlank())) {
        records.add(record);
      }
    }
    return records;
  }

  private static int line(CsvRecord record) {
    return Math.toIntExact(record.getStartingLineNumber());
  }
}
