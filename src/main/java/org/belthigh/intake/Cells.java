package org.belthigh.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.files.Nearest;
import org.belthigh.files.Table;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Printable;
import org.belthigh.model.Problem;

/**
 * Typed reading of one row. Each getter notes what is wrong and gives nothing; the row can be used
 * where it is still {@link #sound} after the last cell.
 */
final class Cells {
  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2})[:.h](\\d{2})(?::00)?(?: ?([ap])\\.? ?m\\.?)?");
  private static final Set<String> YES = Set.of("yes", "y", "true", "1", "x", "✓", "✔");
  private static final Set<String> NO = Set.of("no", "n", "false", "0");

  /** Columns whose cells are a child's own affair: messages show their form alone. */
  private static final Set<String> PERSONAL = Set.of("born");

  private static final Set<String> UNITS =
      Set.of("cm", "ft", "feet", "min", "minutes", "h", "hours", "pitches", "innings");
  private static final int NOON = 12;

  /** The day before the first of a spreadsheet's days, as they count since 1900. */
  private static final LocalDate SERIAL_ZERO = LocalDate.of(1899, 12, 30);

  private static final int FIRST_SERIAL = 36_526;
  private static final int LAST_SERIAL = 73_050;

  private final Table.Row row;
  private final Notes notes;
  private final Reading reading;
  private final boolean forgiving;

  /** Columns of which all has been said. */
  private final Set<String> told = new HashSet<>();

  private boolean sound = true;
  private String consequence = "";

  private Cells(Table.Row row, Notes notes, Reading reading, boolean forgiving) {
    this.row = row;
    this.notes = notes;
    this.reading = reading;
    this.forgiving = forgiving;
  }

  /**
   * The cells of {@code row}. Where the row as a whole is broken, that alone is told: its cells may
   * stand under the wrong names.
   */
  static Cells of(Table.Row row, Notes notes, Reading reading) {
    Cells cells = new Cells(row, notes, reading, false);
    cells.sound = cells.intact();
    row.fault().ifPresent(notes::add);
    return cells;
  }

  /** Adds to every fault what follows until the row is put right. */
  void untilThen(String whatFollows) {
    consequence = "; until then " + whatFollows;
  }

  /** The same row, for cells it can do without: a faulty one is told and read as empty. */
  Cells forgiving() {
    return new Cells(row, notes, reading, true);
  }

  /** Whether no fault has been found so far. */
  boolean sound() {
    return sound;
  }

  /** Whether the row has the cells that the header promises. */
  boolean intact() {
    return row.fault().isEmpty();
  }

  /** Whether the row has no cell after that column, though the header has. */
  boolean endsAt(String column) {
    return row.endsAt(column);
  }

  /** What stands elsewhere than under {@code columns}, cell by cell. */
  List<String> besides(List<String> columns) {
    List<String> all = new ArrayList<>(row.cells());
    columns.stream().map(this::text).forEach(all::remove);
    return all;
  }

  /** The column of the last cell that is written. */
  String lastColumn() {
    return row.lastColumn();
  }

  /** Whether the file ends on this line, without a line end. */
  boolean endsFile() {
    return row.endsFile();
  }

  /** Whether the file breaks off in this row. */
  boolean breaksOff() {
    return row.breaksOff();
  }

  /** The whole row. */
  Origin origin() {
    return row.origin();
  }

  /** Where the cell stands. */
  Origin origin(String column) {
    return row.origin(column);
  }

  boolean has(String column) {
    return !row.get(column).isEmpty();
  }

  /** The cell, trimmed; empty where nothing stands there. */
  String text(String column) {
    return row.get(column);
  }

  /** The cell; a fault where nothing stands there. */
  String needText(String column, String allowed) {
    need(column, allowed);
    return text(column);
  }

  /** Sets the row aside where a character stands in it that nobody can see. */
  void refuseHidden(List<String> columns) {
    for (String column : reading.clean() ? List.<String>of() : columns) {
      OptionalInt hidden = reading.hidden(text(column));
      if (hidden.isPresent()) {
        fault(
            column,
            String.format(
                Locale.ROOT, "the hidden character U+%04X stands here", hidden.getAsInt()),
            "a cell must hold only what can be seen",
            "Maybe type the cell anew.");
        told.add(column);
      }
    }
  }

  /** Remarks on cells of which sheets cannot show every letter; names are the roster's matter. */
  void tellUnprintable(List<String> columns) {
    for (String column : reading.clean() ? List.<String>of() : columns) {
      if (!column.endsWith("_name") && !Printable.all(text(column))) {
        remarkOnce("unprintable " + column, rows -> Unprintable.told(origin(column), column, rows));
      }
    }
  }

  /** Notes why the row cannot be used. */
  void fault(String column, String found, String allowed, String maybe) {
    String clause = forgiving ? found + " and is left out" : found;
    sound = false;
    if (intact() && !told.contains(column)) {
      notes.add(Problem.fault(origin(column), column, clause, allowed + consequence, maybe));
    }
  }

  /** Notes how the file is read, told once. */
  void tell(String clause) {
    reading.tell(clause, "");
  }

  /** Notes something to look at. */
  void warning(String column, String found, String allowed, String maybe) {
    notes.add(Problem.warning(origin(column), column, found, allowed, maybe));
  }

  /** Notes a remark once for all rows with the same {@code key}. */
  void remarkOnce(String key, IntFunction<Problem> told) {
    notes.again(key, told);
  }

  /** Sets the row aside for a reason that is told once for all rows with the same {@code key}. */
  void faultOnce(String key, IntFunction<Problem> told) {
    sound = false;
    notes.again(key, told);
  }

  /** A fault where the cell is empty. */
  boolean need(String column, String allowed) {
    if (has(column)) {
      return true;
    }
    fault(column, "the cell is empty", column + " must be " + allowed, "Fill the cell in.");
    return false;
  }

  /** What {@code parse} makes of the cell; empty where nothing stands there. */
  <T> Optional<T> parsed(
      String column, String allowed, List<String> words, Function<String, Optional<T>> parse) {
    String cell = text(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> value = reading.remembered(column, cell, text -> meant(column, text, parse));
    if (value.isEmpty()) {
      unknown(column, allowed, words);
    }
    return value;
  }

  private void unknown(String column, String allowed, List<String> words) {
    String text = text(column);
    Optional<String> question = Vocabulary.question(column, text);
    fault(
        column,
        "'" + text + "' " + (question.isPresent() ? "is not clear" : "is not known"),
        column + " must be " + allowed,
        question.map(q -> "Maybe " + q + ".").orElseGet(() -> maybe(text, words, guess(text))));
  }

  private static String guess(String text) {
    return text.chars().allMatch(c -> c >= '0' && c <= '9')
        ? "a digit was mistyped"
        : "the cell belongs to another column";
  }

  /** What {@code parse} makes of a text as it stands, or in the words of the documentation. */
  private <T> Optional<T> meant(String column, String text, Function<String, Optional<T>> parse) {
    Optional<T> value = parse.apply(text);
    if (value.isPresent()) {
      return value;
    }
    Optional<String> word = reading.word(column, text);
    Optional<T> other = word.flatMap(parse);
    other.ifPresent(v -> reading.tell("with words such as", text + " for " + word.orElseThrow()));
    return other;
  }

  /** A member of a closed list; empty where nothing stands there. */
  <E extends Enum<E> & Coded> Optional<E> word(String column, Class<E> type) {
    return word(column, Arrays.asList(type.getEnumConstants()));
  }

  /** One of {@code members}; empty where nothing stands there. */
  <E extends Coded> Optional<E> word(String column, List<E> members) {
    String cell = text(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Optional<E> member =
        reading.remembered(column, cell, text -> meant(column, text, w -> find(members, w)));
    if (member.isEmpty()) {
      List<String> words = members.stream().map(Coded::id).toList();
      unknown(column, oneOf(words), words);
    }
    return member;
  }

  /** A member of a closed list, which must be there. */
  <E extends Enum<E> & Coded> Optional<E> needWord(String column, Class<E> type) {
    List<E> members = Arrays.asList(type.getEnumConstants());
    if (!has(column)) {
      need(column, oneOf(members.stream().map(Coded::id).toList()));
    }
    return word(column, members);
  }

  private static <E extends Coded> Optional<E> find(List<E> members, String text) {
    String word = text.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    return members.stream().filter(m -> m.id().equals(word)).findFirst();
  }

  /** Yes or no, in any of the usual spellings; empty where nothing stands there. */
  Optional<Boolean> yesNo(String column) {
    return parsed(column, "yes or no", List.of("yes", "no"), Cells::parseYesNo);
  }

  /** Yes or no, which must be there. */
  Optional<Boolean> needYesNo(String column) {
    need(column, "yes or no");
    return yesNo(column);
  }

  static Optional<Boolean> parseYesNo(String text) {
    String word = text.toLowerCase(Locale.ROOT);
    if (YES.contains(word)) {
      return Optional.of(true);
    }
    return NO.contains(word) ? Optional.of(false) : Optional.empty();
  }

  /** A whole number; empty where nothing stands there. */
  OptionalInt whole(String column, int least, int most) {
    if (!has(column)) {
      return OptionalInt.empty();
    }
    Optional<Numeral> number = number(column, least, most, Numeral::whole, wholeFrom(least, most));
    return number.map(n -> OptionalInt.of((int) n.value())).orElseGet(OptionalInt::empty);
  }

  private Optional<Numeral> number(
      String column, int least, int most, Predicate<Numeral> kind, String allowed) {
    Optional<Numeral> number = Numeral.parse(text(column)).filter(kind);
    Optional<Numeral> fits = number.filter(n -> n.value() >= least && n.value() <= most);
    fits.ifPresent(reading::tellNumber);
    if (fits.isEmpty()) {
      outside(column, number.isPresent(), allowed, kind);
    }
    return fits;
  }

  /** A whole number, which must be there. */
  OptionalInt needWhole(String column, int least, int most) {
    need(column, wholeFrom(least, most));
    return whole(column, least, most);
  }

  private static String wholeFrom(int least, int most) {
    return "a whole number from " + least + " to " + most;
  }

  /** A decimal number; empty where nothing stands there. */
  OptionalDouble number(String column, int least, int most) {
    if (!has(column)) {
      return OptionalDouble.empty();
    }
    Optional<Numeral> number =
        number(column, least, most, n -> true, "a number from " + least + " to " + most);
    return number.map(n -> OptionalDouble.of(n.value())).orElseGet(OptionalDouble::empty);
  }

  private void outside(String column, boolean isNumber, String allowed, Predicate<Numeral> kind) {
    String text = text(column);
    fault(
        column,
        isNumber ? text + " is out of range" : "'" + text + "' is no such number",
        column + " must be " + allowed,
        isNumber ? "Maybe a digit was mistyped." : nearNumber(text, kind));
  }

  /** A number with its unit, or with a letter for a digit, is proposed without it. */
  private static String nearNumber(String text, Predicate<Numeral> kind) {
    String bare = text.replace('O', '0').replace('o', '0').replace('l', '1');
    String[] words = text.split(" ", 3);
    String front = words.length == 2 && UNITS.contains(words[1]) ? words[0] : bare;
    return Stream.of(bare, front)
        .flatMap(t -> Numeral.parse(t).stream())
        .filter(kind)
        .map(n -> "Maybe " + n.text() + ".")
        .findFirst()
        .orElse("Maybe a digit was mistyped.");
  }

  /** A day of the calendar, which must be there. */
  Optional<LocalDate> date(String column) {
    if (!need(column, "a date such as 2027-03-08")) {
      return Optional.empty();
    }
    Optional<LocalDate> day = clearDate(column);
    if (day.isEmpty() && Dates.meanings(text(column)).size() > 1) {
      faultOnce("dates", rows -> unclearDates(column, rows));
    } else if (day.isEmpty()) {
      noDate(column);
    }
    return day;
  }

  /** The day that the cell says; empty, and nothing noted, where it says none. */
  Optional<LocalDate> clearDate(String column) {
    return reading.date(column, text(column));
  }

  private Problem unclearDates(String column, int rows) {
    List<LocalDate> days = Dates.meanings(text(column));
    String two = PERSONAL.contains(column) ? "two days" : days.get(0) + " or " + days.get(1);
    return Problem.fault(
        origin(column),
        column,
        "'" + shown(column) + "' can mean " + two + ", so " + Notes.rows(rows) + " cannot be used",
        "a date of the file with a day over 12, or dates: in club.yaml, must tell which comes first"
            + consequence,
        "Add a line to club.yaml: dates: month-first, or dates: day-first if the day comes"
            + " first.");
  }

  private void noDate(String column) {
    String text = shown(column);
    boolean iso = Dates.isIso(text(column));
    fault(
        column,
        iso ? text + " is no day of the calendar" : "'" + text + "' is not a date",
        column + " must be a date such as 2027-03-08",
        iso ? "Maybe a digit was mistyped." : nearDate(text));
  }

  /** The cell as messages show it: of what is personal each digit as # and each letter as x. */
  private String shown(String column) {
    return PERSONAL.contains(column)
        ? text(column).replaceAll("\\p{Nd}", "#").replaceAll("\\p{L}", "x")
        : text(column);
  }

  /** A day that a spreadsheet left as its own number is proposed. */
  private static String nearDate(String text) {
    if (text.length() > 10 && Dates.clear().parse(text.substring(0, 10)).isPresent()) {
      return "Maybe " + text.substring(0, 10) + ".";
    }
    return Numeral.parse(text)
        .filter(Numeral::whole)
        .map(Numeral::value)
        .filter(n -> n >= FIRST_SERIAL && n <= LAST_SERIAL)
        .map(n -> "Maybe " + SERIAL_ZERO.plusDays(n.longValue()) + ", a spreadsheet's own number.")
        .orElse("Write the year, the month, then the day.");
  }

  /** A time of the day such as 17:30; empty where nothing stands there. */
  Optional<LocalTime> time(String column) {
    return parsed(column, "a time such as 17:30", List.of(), Cells::parseTime);
  }

  private static Optional<LocalTime> parseTime(String text) {
    Matcher parts = TIME.matcher(text.toLowerCase(Locale.ROOT));
    if (!parts.matches()) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(parts.group(1));
    String half = parts.group(3);
    if (half != null && (hour < 1 || hour > NOON)) {
      return Optional.empty();
    }
    int after = half == null ? hour : hour % NOON + (half.equals("p") ? NOON : 0);
    try {
      return Optional.of(LocalTime.of(after, Integer.parseInt(parts.group(2))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** "Maybe belt-in." where a known word is near, else a guess at the cause. */
  static String maybe(String word, List<String> known, String otherwise) {
    return Nearest.to(word, known)
        .map(near -> "Maybe " + near + ".")
        .orElse("Maybe " + otherwise + ".");
  }

  /** {@code a, b or c}. */
  static String oneOf(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
