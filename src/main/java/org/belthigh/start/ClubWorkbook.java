package org.belthigh.start;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.belthigh.files.Timeless;
import org.belthigh.intake.Event;
import org.belthigh.intake.Headings;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.Column;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Row;
import org.belthigh.model.Space;
import org.belthigh.model.Timing;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.Range;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The workbook of a new club: a sheet for each table, its first row the same headings as the CSV
 * file, each with a note. Columns with a closed list of words have a drop-down; days, numbers and
 * ids are checked as they are typed. The lists stand on a hidden sheet of their own.
 */
final class ClubWorkbook {
  private static final List<String> SHEETS =
      List.of("roster", "log", "tally", "throws", "wellness", "calendar");

  private static final String WORDS = "words";
  private static final int ROSTER_ROWS = 300;
  private static final int ROWS = 2000;
  private static final int MOST_PITCHES = 200;
  private static final int LETTERS = 26;

  /** Closed lists by column, {@code table.column} before {@code column}. */
  private final Map<String, List<String>> lists = lists();

  /** Where each list stands on the sheet of words. */
  private final Map<String, Range> ranges = new LinkedHashMap<>();

  private final Explained explained;

  /** A workbook whose columns are explained so. */
  ClubWorkbook(Explained explained) {
    this.explained = explained;
  }

  private static Map<String, List<String>> lists() {
    List<String> yesNo = List.of("yes", "no");
    List<String> sides = List.of("L", "R");
    List<String> fields = words(Field.class);
    List<String> spots =
        Stream.of(
                IntStream.rangeClosed(1, 9).mapToObj(Integer::toString),
                Stream.of("ball"),
                Arrays.stream(Row.values())
                    .flatMap(r -> Arrays.stream(Column.values()).map(c -> r.id() + "-" + c.id())))
            .flatMap(s -> s)
            .toList();
    Map<String, List<String>> lists = new LinkedHashMap<>();
    lists.put("roster.bats", List.of("L", "R", "S"));
    lists.put("bats", sides);
    lists.put("throws", sides);
    lists.put("sex", List.of("F", "M"));
    lists.put("language", List.of("en", "es"));
    for (String column : List.of("pitches", "catches", "guest")) {
      lists.put("roster." + column, yesNo);
    }
    lists.put("home_space", words(Space.class));
    lists.put("calendar.kind", words(Event.Kind.class));
    lists.put("throws.kind", words(Outing.Kind.class));
    lists.put("wellness.kind", words(Wellness.Kind.class));
    lists.put(
        "clears",
        Arrays.stream(Wellness.Kind.values()).filter(Wellness.Kind::holds).map(Coded::id).toList());
    lists.put("wellness.by", words(Wellness.Role.class));
    lists.put("zone", spots);
    lists.put(
        "called",
        Stream.of(
                spots.stream(),
                Stream.of("none", "strike"),
                words(Row.class).stream(),
                words(Column.class).stream())
            .flatMap(w -> w)
            .toList());
    lists.put("near", yesNo);
    lists.put("swing", yesNo);
    lists.put("field", fields);
    lists.put("hit", words(Hit.class));
    lists.put("went", Stream.concat(fields.stream(), Stream.of("foul", "pop-up", "none")).toList());
    lists.put("timing", words(Timing.class));
    lists.put("ball", words(Ball.class));
    lists.put("feed", words(Feed.class));
    lists.put("log.place", List.of("field", "cage", "home"));
    lists.put("tally.place", List.of("field", "cage", "home"));
    lists.put("measure", words(MeasureKind.class));
    return lists;
  }

  private static <E extends Enum<E> & Coded> List<String> words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Coded::id).toList();
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "belthigh", "1.0")) {
      Map<String, Worksheet> sheets = new LinkedHashMap<>();
      SHEETS.forEach(name -> sheets.put(name, book.newWorksheet(name)));
      writeWords(book.newWorksheet(WORDS));
      Range ids = sheets.get("roster").range(1, 0, ROSTER_ROWS, 0);
      sheets.forEach((name, sheet) -> write(name, sheet, ids));
      book.finish();
      return Timeless.workbook(bytes.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void writeWords(Worksheet sheet) {
    int column = 0;
    for (Map.Entry<String, List<String>> list : lists.entrySet()) {
      sheet.value(0, column, list.getKey());
      for (int i = 0; i < list.getValue().size(); i++) {
        String word = list.getValue().get(i);
        if (word.matches("\\d+")) {
          // a number that is typed is found in the list only where that holds numbers too
          sheet.value(i + 1, column, Integer.valueOf(word));
        } else {
          sheet.value(i + 1, column, word);
        }
      }
      ranges.put(list.getKey(), sheet.range(1, column, list.getValue().size(), column));
      column++;
    }
    sheet.setVisibilityState(VisibilityState.HIDDEN);
  }

  private void write(String table, Worksheet sheet, Range ids) {
    List<String> columns = Headings.of(table);
    int last = table.equals("roster") ? ROSTER_ROWS : ROWS;
    for (int i = 0; i < columns.size(); i++) {
      String column = columns.get(i);
      sheet.value(0, i, column);
      sheet.comment(0, i, explained.of(table, column));
      sheet.width(i, Math.max(10, column.length() + 3));
      check(table, column, sheet, sheet.range(1, i, last, i), ids);
    }
    Range head = sheet.range(0, 0, 0, columns.size() - 1);
    head.style().bold().fillColor("E7E6E6").set();
    sheet.freezePane(0, 1);
  }

  private void check(String table, String column, Worksheet sheet, Range cells, Range ids) {
    String name = table + "." + column;
    Range list = ranges.getOrDefault(name, ranges.get(column));
    String top = letters(cells.getLeft()) + "2";
    if (column.equals("player")) {
      offer(cells, ids, "The id of a player on the sheet roster.");
    } else if (list != null && !isNumber(name)) {
      offer(cells, list, explained.of(table, column));
    } else if (column.equals("date") || column.equals("born")) {
      sheet.style(cells.getLeft()).format("yyyy-mm-dd").set();
      String years = column.equals("born") ? "1990,1,1" : "2000,1,1";
      refuse(cells, "AND(ISNUMBER(" + top + ")," + top + ">=DATE(" + years + "))", name);
    } else if (column.equals("start")) {
      sheet.style(cells.getLeft()).format("hh:mm").set();
      refuse(cells, "AND(ISNUMBER(" + top + ")," + top + ">=0,1>" + top + ")", name);
    } else if (column.equals("id")) {
      String all = "$" + letters(cells.getLeft()) + "$2:$" + letters(cells.getLeft()) + "$301";
      refuse(cells, "AND(COUNTIF(" + all + "," + top + ")=1,40>=LEN(" + top + "))", name);
    } else if (isNumber(name)) {
      int most = column.equals("pitches") ? MOST_PITCHES : 9999;
      refuse(cells, "AND(ISNUMBER(" + top + ")," + top + ">=0," + most + ">=" + top + ")", name);
    }
  }

  private static boolean isNumber(String name) {
    return List.of(
            "roster.number",
            "roster.height_cm",
            "calendar.minutes",
            "calendar.hitting_minutes",
            "calendar.adults",
            "log.toss",
            "log.feet",
            "tally.made",
            "tally.of",
            "tally.feet",
            "throws.pitches",
            "throws.before_last_batter",
            "throws.innings",
            "throws.innings_caught")
        .contains(name);
  }

  private static void offer(Range cells, Range list, String text) {
    cells
        .validateWithList(list)
        .allowBlank(true)
        .errorStyle(DataValidationErrorStyle.STOP)
        .showErrorMessage(true)
        .errorTitle("Not in the list")
        .error(brief(text));
  }

  /** The formula holds no {@code <}: the library writes it into the file as it is. */
  private void refuse(Range cells, String formula, String name) {
    String[] parts = name.split("\\.", 2);
    cells
        .validateWithFormula(formula)
        .allowBlank(true)
        .errorStyle(DataValidationErrorStyle.STOP)
        .showErrorMessage(true)
        .errorTitle("Look again")
        .error(brief(explained.of(parts[0], parts[1])));
  }

  /** Spreadsheets show at most 225 characters. */
  private static String brief(String text) {
    return text.length() <= 225 ? text : text.substring(0, 225);
  }

  private static String letters(int column) {
    return column < LETTERS
        ? Character.toString('A' + column)
        : letters(column / LETTERS - 1) + letters(column % LETTERS);
  }
}
