package org.belthigh.sending;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.belthigh.files.Csv;
import org.belthigh.files.Timeless;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A table for spreadsheets. A text that one would take for a formula is made {@linkplain
 * Csv#harmless harmless}, so that opening the file can do nothing.
 *
 * @param heading the columns
 * @param rows their cells; {@link Number}s stay numbers, all else is text
 */
public record Spreadsheet(List<String> heading, List<List<Object>> rows) {
  public Spreadsheet {
    heading = List.copyOf(heading);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** As CSV by RFC 4180, in UTF-8. */
  public byte[] csv() {
    List<List<String>> lines = new ArrayList<>();
    lines.add(heading);
    for (List<Object> row : rows) {
      lines.add(
          row.stream()
              .map(c -> c instanceof Number ? c.toString() : Csv.harmless(c.toString()))
              .toList());
    }
    return Csv.text(lines).getBytes(StandardCharsets.UTF_8);
  }

  /** Several tables as the sheets of one workbook. */
  public static byte[] xlsx(Map<String, Spreadsheet> sheets) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "belthigh", "1.0")) {
      sheets.forEach((name, table) -> table.write(book.newWorksheet(name)));
      book.finish();
      return Timeless.workbook(bytes.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(Worksheet sheet) {
    for (int column = 0; column < heading.size(); column++) {
      sheet.value(0, column, heading.get(column));
      for (int row = 0; row < rows.size(); row++) {
        Object cell = rows.get(row).get(column);
        if (cell instanceof Number number) {
          sheet.value(row + 1, column, number);
        } else {
          sheet.value(row + 1, column, Csv.harmless(cell.toString()));
        }
      }
    }
    sheet.range(0, 0, 0, heading.size() - 1).style().bold().set();
    sheet.freezePane(0, 1);
  }
}
