package org.belthigh.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.belthigh.files.Blanks;
import org.belthigh.files.Table;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * How one file is read, decided once from the whole of it: which heading is which column, whether
 * the day or the month stands first, which lines are no rows. Cells ask it; who reads rows knows
 * nothing of it. What is unusual is told once, as a remark.
 */
final class Reading {
  private static final String BORN = "born";
  private static final Set<String> DATES = Set.of("date", BORN);
  private static final Set<String> SUMS =
      Set.of("total", "totals", "totales", "sum", "suma", "sumas", "average", "promedio");
  private static final int MOST_SUMS = 3;
  private static final int MOST_REMEMBERED = 1_000;
  private static final int MOST_SHOWN = 4;
  private static final double EXACT = 1e-6;

  private final Table table;
  private final Dates dates;
  private final boolean clean;
  private final Map<String, Map<String, Optional<?>>> remembered = new HashMap<>();

  /** What is told, by kind: the clause that opens it and its examples. */
  private final Map<String, Set<String>> told = new LinkedHashMap<>();

  private Reading(Table table, Dates dates, boolean clean) {
    this.table = table;
    this.dates = dates;
    this.clean = clean;
  }

  /**
   * The reading of {@code raw} as a sheet with the columns of {@code sheet}.
   *
   * @param club what the club says of the order of day and month
   */
  static Reading of(Table raw, Sheet<?> sheet, Optional<Dates.Order> club) {
    Table named = named(raw, sheet.columns());
    Set<Integer> left = new HashSet<>();
    named.lines().stream()
        .filter(line -> repeatsHeading(raw, line))
        .forEach(l -> left.add(l.number()));
    int repeats = left.size();
    List<Integer> sums = sums(named, sheet, left);
    left.addAll(sums);
    Table rows = left.isEmpty() ? named : named.only(line -> !left.contains(line.number()));
    Reading reading = new Reading(rows, Dates.of(dateCells(rows), club), isClean(rows));
    raw.form().forEach(clause -> reading.tell(clause, ""));
    for (int i = 0; i < raw.columns().size(); i++) {
      String before = raw.columns().get(i);
      String after = rows.columns().get(i);
      if (!before.equals(after)) {
        reading.tell("with headings such as", before + " for " + after);
      }
    }
    if (repeats > 0) {
      reading.tell(
          "without " + repeats + (repeats == 1 ? " repeated heading" : " repeated headings"), "");
    }
    sums.forEach(line -> reading.tell("without the sums on line", Integer.toString(line)));
    return reading;
  }

  /** The table with the columns of {@code known} under their names, as far as headings tell. */
  static Table named(Table raw, List<String> known) {
    Set<String> taken = new HashSet<>(raw.columns());
    Map<String, String> names = new HashMap<>();
    for (String heading : raw.columns()) {
      if (!known.contains(heading)) {
        Vocabulary.columns(heading).stream()
            .filter(known::contains)
            .filter(taken::add)
            .findFirst()
            .ifPresent(column -> names.put(heading, column));
      }
    }
    return names.isEmpty() ? raw : raw.named(c -> names.getOrDefault(c, c));
  }

  private static boolean repeatsHeading(Table raw, Table.Line line) {
    List<String> columns = raw.columns();
    boolean begins =
        !columns.isEmpty()
            && cell(line, raw.index(columns.get(0))).equalsIgnoreCase(columns.get(0));
    return begins && columns.stream().allMatch(c -> cell(line, raw.index(c)).equalsIgnoreCase(c));
  }

  private static String cell(Table.Line line, int index) {
    return index < 0 || index >= line.cells().size() ? "" : line.cells().get(index);
  }

  /** The last lines that sum up those above and are no rows of their own. */
  private static List<Integer> sums(Table table, Sheet<?> sheet, Set<Integer> left) {
    List<Integer> sums = new ArrayList<>();
    List<Table.Line> lines =
        table.lines().stream().filter(l -> !left.contains(l.number())).toList();
    int last = lines.size() - 1;
    while (table.complete()
        && last >= 2
        && sums.size() < MOST_SUMS
        && sumsUp(
            table, sheet, lines.get(last), lines.subList(0, lines.size() - 1 - sums.size()))) {
      sums.add(0, lines.get(last--).number());
    }
    return sums;
  }

  private static boolean sumsUp(
      Table table, Sheet<?> sheet, Table.Line line, List<Table.Line> above) {
    String first = cell(line, table.index(sheet.required().get(0)));
    if (!first.isEmpty() && !SUMS.contains(Vocabulary.plain(first, '-'))) {
      return false;
    }
    if (line.cells().stream().limit(3).anyMatch(c -> SUMS.contains(Vocabulary.plain(c, '-')))) {
      return true;
    }
    for (int i = 0; i < line.cells().size(); i++) {
      if (!cell(line, i).isEmpty() && !isSum(i, cell(line, i), above)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSum(int index, String cell, List<Table.Line> above) {
    double sum =
        above.stream()
            .flatMap(l -> Numeral.parse(cell(l, index)).stream())
            .mapToDouble(Numeral::value)
            .sum();
    return Numeral.parse(cell).filter(n -> Math.abs(n.value() - sum) < EXACT).isPresent();
  }

  private static List<String> dateCells(Table table) {
    List<String> cells = new ArrayList<>();
    String last = "";
    for (String column : DATES) {
      int index = table.index(column);
      for (Table.Line line : index < 0 ? List.<Table.Line>of() : table.lines()) {
        String cell = cell(line, index);
        if (!cell.equals(last)) {
          cells.add(cell);
        }
        last = cell;
      }
    }
    return cells;
  }

  private static boolean isClean(Table table) {
    for (Table.Line line : table.lines()) {
      List<String> cells = line.cells();
      // by index: an iterator for each row was a twentieth of all reading
      for (int i = 0; i < cells.size(); i++) {
        if (Blanks.hidden(cells.get(i)) >= 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** The table under the names of the documentation, without the lines that are no rows. */
  Table table() {
    return table;
  }

  /** Notes how something was read; the remark shows a few examples of each kind. */
  void tell(String clause, String example) {
    Set<String> examples = told.computeIfAbsent(clause, c -> new java.util.LinkedHashSet<>());
    if (!example.isEmpty() && examples.size() <= MOST_SHOWN) {
      examples.add(example);
    }
  }

  /**
   * The day that a cell of {@code column} says; empty where it is none, or cannot be told. The
   * remark shows no child's birthday, and there is none where the club said the order itself.
   */
  Optional<LocalDate> date(String column, String text) {
    Optional<LocalDate> day = dates.parse(text);
    if (day.isPresent() && !Dates.isIso(text) && !dates.asSaid(text)) {
      Optional<String> order =
          dates
              .order()
              .filter(o -> !Dates.meanings(text).isEmpty())
              .map(o -> o == Dates.Order.DAY_FIRST ? "with the day first" : "with the month first");
      if (column.equals(BORN)) {
        tell(order.orElse("with dates in another form"), "");
      } else {
        tell(order.map(o -> o + ",").orElse("with dates such as"), text + " for " + day.get());
      }
    }
    return day;
  }

  /** Notes that a number was read, for the remark on decimal commas. */
  void tellNumber(Numeral number) {
    if (number.comma()) {
      tell("with decimal commas,", number.text().replace('.', ',') + " for " + number.text());
    }
  }

  /**
   * What {@code parse} makes of a text in a column, asked once for each text: the words of a log
   * are few and come back on every line. What cannot be read is asked again, to be told again.
   */
  @SuppressWarnings("unchecked") // a column is always read by the same parser
  <T> Optional<T> remembered(String column, String text, Function<String, Optional<T>> parse) {
    Map<String, Optional<?>> known = remembered.computeIfAbsent(column, c -> new HashMap<>());
    Optional<?> value = known.get(text);
    if (value != null) {
      return (Optional<T>) value;
    }
    Optional<T> parsed = parse.apply(text);
    if (parsed.isPresent() && known.size() < MOST_REMEMBERED) {
      known.put(text, parsed);
    }
    return parsed;
  }

  /** The text of a cell in the words of the documentation; empty where it is in no others. */
  Optional<String> word(String column, String text) {
    return Vocabulary.word(column, text);
  }

  /** Whether no cell of the file holds a hidden character. */
  boolean clean() {
    return clean;
  }

  /** The hidden character in a cell, as a code point; empty where all can be seen. */
  OptionalInt hidden(String text) {
    int hidden = Blanks.hidden(text);
    return hidden < 0 ? OptionalInt.empty() : OptionalInt.of(hidden);
  }

  /** What is unusual in the file and how it was read; empty where nothing is. */
  Optional<Problem> remark() {
    if (told.isEmpty()) {
      return Optional.empty();
    }
    List<String> clauses = new ArrayList<>();
    told.forEach((clause, examples) -> clauses.add(clause + shown(examples)));
    return Optional.of(
        Problem.warning(
            Origin.of(table.file()),
            "",
            "it is read " + String.join(", ", clauses),
            "the plain form is UTF-8 with commas, English names and days such as 2027-03-08",
            "Maybe compare one row, to see that this is what you meant."));
  }

  private static String shown(Set<String> examples) {
    if (examples.isEmpty()) {
      return "";
    }
    boolean more = examples.size() > MOST_SHOWN;
    return " "
        + String.join(" and ", examples.stream().limit(MOST_SHOWN).toList())
        + (more ? " and so on" : "");
  }
}
