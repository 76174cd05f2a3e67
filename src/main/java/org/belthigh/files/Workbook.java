package org.belthigh.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * Reads the sheets of an XLSX workbook as tables: days as ISO 8601, times as hours and minutes, all
 * else as typed. A workbook is unpacked under limits first, and only what was unpacked is read, so
 * that a small file cannot grow without end.
 */
public final class Workbook {
  /** The most that all parts of a workbook may hold, unpacked: 64 MiB. */
  static final long MOST_UNPACKED = 64L << 20;

  private static final int MOST_PARTS = 1_000;
  private static final int MOST_ROWS = 200_000;
  private static final int MOST_COLUMNS = 200;

  private static final int DAYS_1900_TO_1904 = 1_462;

  /** What a workbook says that counts its days since 1904. */
  private static final Pattern SINCE_1904 =
      Pattern.compile("<(?:\\w+:)?workbookPr\\s[^>]*\\bdate1904\\s*=\\s*[\"'](?:1|true)[\"']");

  private static final String DOCTYPE = "<!DOCTYPE";

  private final String file;
  private final Map<String, List<Table.Line>> sheets = new LinkedHashMap<>();
  private boolean since1904;

  /** How many days later a day is than the reader takes it for, which knows 1904 by one word. */
  private int later;

  private Workbook(String file) {
    this.file = file;
  }

  /** Why a workbook cannot be read. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String maybe;

    Refused(String found, String maybe) {
      super(found);
      this.maybe = maybe;
    }
  }

  /**
   * The workbook in {@code bytes}.
   *
   * @param problems is told why it cannot be used
   */
  public static Optional<Workbook> parse(byte[] bytes, String file, Consumer<Problem> problems) {
    try {
      Workbook workbook = new Workbook(file);
      workbook.read(workbook.unpackedOnce(bytes));
      if (workbook.sheets.isEmpty()) {
        throw new Refused("the file is no workbook: it has no sheet", "Maybe save it again.");
      }
      return Optional.of(workbook);
    } catch (Refused e) {
      problems.accept(refused(file, e.getMessage(), e.maybe));
    } catch (IOException | RuntimeException e) {
      // whatever the parts hold, the reader's own complaint says nothing to a coordinator
      problems.accept(
          refused(
              file,
              "the file is no workbook that can be read",
              "Maybe save it again as .xlsx, without a password."));
    }
    return Optional.empty();
  }

  private static Problem refused(String file, String found, String maybe) {
    return Problem.fault(
        Origin.of(file), "", found, "it must be an XLSX workbook of at most 64 MiB", maybe);
  }

  /** The same parts, packed anew without compression: what was measured is what is read. */
  private byte[] unpackedOnce(byte[] bytes) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    long left = MOST_UNPACKED;
    int parts = 0;
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes));
        ZipOutputStream out = new ZipOutputStream(copy)) {
      out.setMethod(ZipOutputStream.STORED);
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] part = in.readNBytes((int) left + 1);
        left -= part.length;
        if (left < 0 || ++parts > MOST_PARTS) {
          throw new Refused(
              "the workbook is larger than 64 MiB when it is unpacked",
              "Maybe take out sheets and pictures that are not needed.");
        }
        put(out, entry.getName(), part);
      }
    }
    if (parts == 0) {
      throw new Refused(
          "the file is no workbook", "Maybe save it again as .xlsx, without a password.");
    }
    return copy.toByteArray();
  }

  private void put(ZipOutputStream out, String name, byte[] part) throws IOException {
    boolean xml = name.endsWith(".xml") || name.endsWith(".rels");
    String text = xml ? new String(part, StandardCharsets.ISO_8859_1) : "";
    since1904 |= SINCE_1904.matcher(text).find();
    if (text.contains(DOCTYPE)) {
      throw new Refused(
          "a part of the workbook defines words of its own",
          "Maybe save it again from a spreadsheet.");
    }
    CRC32 crc = new CRC32();
    crc.update(part);
    ZipEntry entry = new ZipEntry(name);
    entry.setSize(part.length);
    entry.setCrc(crc.getValue());
    out.putNextEntry(entry);
    out.write(part);
    out.closeEntry();
  }

  private void read(byte[] bytes) throws IOException {
    try (ReadableWorkbook book =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
      later = since1904 && !book.isDate1904() ? DAYS_1900_TO_1904 : 0;
      for (Sheet sheet : book.getSheets().toList()) {
        List<Table.Line> lines = new ArrayList<>();
        try (Stream<Row> rows = sheet.openStream()) {
          rows.forEach(row -> add(lines, row));
        }
        put(sheet.getName().strip().toLowerCase(Locale.ROOT), lines);
      }
    }
  }

  /** Two sheets whose names differ in blanks or capitals alone are both kept. */
  private void put(String name, List<Table.Line> lines) {
    String free = name;
    for (int i = 2; sheets.containsKey(free); i++) {
      free = name + " (" + i + ")";
    }
    sheets.put(free, lines);
  }

  private void add(List<Table.Line> lines, Row row) {
    if (row.getCellCount() > MOST_COLUMNS || lines.size() >= MOST_ROWS) {
      throw new Refused(
          "a sheet has more than " + MOST_ROWS + " rows or " + MOST_COLUMNS + " columns",
          "Maybe split it into one file a month.");
    }
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.getCellCount(); i++) {
      cells.add(row.getCell(i) == null ? "" : Blanks.strip(text(row.getCell(i))));
    }
    if (cells.stream().anyMatch(c -> !c.isEmpty())) {
      lines.add(new Table.Line(row.getRowNum(), cells));
    }
  }

  private String text(Cell cell) {
    String raw = cell.getRawValue() == null ? "" : cell.getRawValue();
    if (cell.getType() == CellType.BOOLEAN) {
      return raw.equals("1") || raw.equalsIgnoreCase("true") ? "yes" : "no";
    }
    if (cell.getType() == CellType.NUMBER) {
      return isTime(cell) ? time(cell.asDate().plusDays(later)) : number(raw);
    }
    return cell.getType() == CellType.STRING ? cell.getText() : raw;
  }

  /** Whether the cell's format shows a number as a day or a time. */
  private static boolean isTime(Cell cell) {
    String format = cell.getDataFormatString();
    if (format == null || format.equalsIgnoreCase("general")) {
      return false;
    }
    String bare = format.toLowerCase(Locale.ROOT).replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "");
    return bare.chars().anyMatch(c -> c == 'y' || c == 'd' || c == 'h');
  }

  private String time(LocalDateTime moment) {
    LocalDateTime whole = moment.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
    boolean noDay = whole.getYear() < (since1904 ? 1905 : 1901);
    return noDay || !whole.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? (noDay ? "" : whole.toLocalDate() + " ") + whole.toLocalTime()
        : whole.toLocalDate().toString();
  }

  private static String number(String raw) {
    if (raw.length() > 40) {
      return raw;
    }
    BigDecimal number = new BigDecimal(raw);
    return Math.abs(number.scale()) > 20 ? raw : number.stripTrailingZeros().toPlainString();
  }

  /** The names of the sheets, in small letters. */
  public List<String> sheets() {
    return List.copyOf(sheets.keySet());
  }

  /** Whether anything stands on the sheet of that name. */
  public boolean filled(String sheet) {
    return !sheets.getOrDefault(sheet, List.of()).isEmpty();
  }

  /** How messages name a sheet. */
  public String shown(String sheet) {
    return file + " sheet " + sheet;
  }

  /** The name of the sheet that {@link #table} reads. */
  public String chosen(String name, boolean orFirst) {
    return sheets.containsKey(name) || !orFirst || sheets.isEmpty()
        ? name
        : sheets.keySet().iterator().next();
  }

  /**
   * The sheet of that name; the first one where {@code orFirst} allows it. Empty where there is
   * none or nothing stands on it.
   *
   * @param problems is told why the sheet as a whole cannot be used
   */
  public Optional<Table> table(String name, boolean orFirst, Consumer<Problem> problems) {
    String sheet = chosen(name, orFirst);
    List<Table.Line> lines = sheets.getOrDefault(sheet, List.of());
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    String shown = shown(sheet);
    Table.Places places = new OnSheet(shown);
    Table.Line header = lines.get(0);
    return Csv.columns(header, places, problems)
        .map(
            columns ->
                new Table(
                    shown,
                    places,
                    header.number(),
                    columns,
                    header.cells().size(),
                    lines.subList(1, lines.size()),
                    true));
  }

  /** Rows and columns of a sheet, counted from 1. */
  private record OnSheet(String shown) implements Table.Places {
    @Override
    public Origin row(int line) {
      return new Origin(shown, line, 0, true);
    }

    @Override
    public Origin cell(int line, int index) {
      return new Origin(shown, line, index + 1, true);
    }
  }
}
