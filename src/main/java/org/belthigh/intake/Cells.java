package org.belthigh.intake;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.files.Nearest;
import org.belthigh.files.Table;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/**
 * Typed reading of one row. Each getter notes what is wrong and gives nothing; the row can be used
 * where it is still {@link #sound} after the last cell.
 */
final class Cells {
  private static final Pattern WHOLE = Pattern.compile("([+-]?\\d{1,9})(\\.0+)?");
  private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,9})?");
  private static final Pattern ISO = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})[/.-](\\d{1,2})[/.-](\\d{4})");
  private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})(:00)?");
  private static final List<String> YES = List.of("yes", "y", "true", "1", "x");
  private static final List<String> NO = List.of("no", "n", "false", "0");

  private final Table.Row row;
  private final Notes notes;
  private final boolean forgiving;
  private boolean sound = true;
  private String consequence = "";

  private Cells(Table.Row row, Notes notes, boolean forgiving) {
    this.row = row;
    this.notes = notes;
    this.forgiving = forgiving;
  }

  /**
   * The cells of {@code row}. Where the row as a whole is broken, that alone is told: its cells may
   * stand under the wrong names.
   */
  static Cells of(Table.Row row, Notes notes) {
    Cells cells = new Cells(row, notes, false);
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
    return new Cells(row, notes, true);
  }

  /** Whether no fault has been found so far. */
  boolean sound() {
    return sound;
  }

  /** Whether the row has the cells that the header promises. */
  boolean intact() {
    return row.fault().isEmpty();
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

  /** Notes why the row cannot be used. */
  void fault(String column, String found, String allowed, String maybe) {
    String clause = forgiving ? found + " and is left out" : found;
    sound = false;
    if (intact()) {
      notes.add(Problem.fault(origin(column), column, clause, allowed + consequence, maybe));
    }
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
    if (!has(column)) {
      return Optional.empty();
    }
    Optional<T> value = parse.apply(text(column));
    if (value.isEmpty()) {
      String guess =
          text(column).matches("\\d+")
              ? "a digit was mistyped"
              : "the cell belongs to another column";
      fault(
          column,
          "'" + text(column) + "' is not known",
          column + " must be " + allowed,
          maybe(text(column), words, guess));
    }
    return value;
  }

  /** A member of a closed list; empty where nothing stands there. */
  <E extends Enum<E> & Coded> Optional<E> word(String column, Class<E> type) {
    return word(column, Arrays.asList(type.getEnumConstants()));
  }

  /** One of {@code members}; empty where nothing stands there. */
  <E extends Coded> Optional<E> word(String column, List<E> members) {
    Optional<E> member = has(column) ? find(members, text(column)) : Optional.empty();
    if (has(column) && member.isEmpty()) {
      List<String> words = members.stream().map(Coded::id).toList();
      parsed(column, oneOf(words), words, text -> Optional.empty());
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
    Matcher number = WHOLE.matcher(text(column));
    if (number.matches()) {
      int value = Integer.parseInt(number.group(1));
      if (value >= least && value <= most) {
        return OptionalInt.of(value);
      }
    }
    outside(column, number.matches(), wholeFrom(least, most));
    return OptionalInt.empty();
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
    boolean isNumber = DECIMAL.matcher(text(column)).matches();
    if (isNumber) {
      double value = Double.parseDouble(text(column));
      if (value >= least && value <= most) {
        return OptionalDouble.of(value);
      }
    }
    outside(column, isNumber, "a number from " + least + " to " + most);
    return OptionalDouble.empty();
  }

  private void outside(String column, boolean isNumber, String allowed) {
    String text = text(column);
    fault(
        column,
        isNumber ? text + " is out of range" : "'" + text + "' is no such number",
        column + " must be " + allowed,
        text.matches("\\d+,\\d+")
            ? "Maybe " + text.replace(',', '.') + "."
            : "Maybe a digit was mistyped.");
  }

  /** A day of the calendar, which must be there. */
  Optional<LocalDate> date(String column) {
    return need(column, "a date such as 2027-03-08")
        ? parseDate(text(column)).or(() -> noDate(column))
        : Optional.empty();
  }

  static Optional<LocalDate> parseDate(String text) {
    try {
      return ISO.matcher(text).matches() ? Optional.of(LocalDate.parse(text)) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private Optional<LocalDate> noDate(String column) {
    String text = text(column);
    boolean iso = ISO.matcher(text).matches();
    fault(
        column,
        iso ? text + " is no day of the calendar" : "'" + text + "' is not a date",
        column + " must be a date such as 2027-03-08",
        iso ? "Maybe a digit was mistyped." : turned(text));
    return Optional.empty();
  }

  private static String turned(String text) {
    Matcher parts = YEAR_LAST.matcher(text);
    if (!parts.matches()) {
      return "Write the year, the month, then the day.";
    }
    String year = parts.group(3);
    String first = String.format(Locale.ROOT, "%02d", Integer.parseInt(parts.group(1)));
    String second = String.format(Locale.ROOT, "%02d", Integer.parseInt(parts.group(2)));
    List<String> days =
        Stream.of(year + "-" + first + "-" + second, year + "-" + second + "-" + first)
            .filter(day -> parseDate(day).isPresent())
            .distinct()
            .toList();
    return days.isEmpty()
        ? "Write the year, the month, then the day."
        : "Maybe " + String.join(" or ", days) + ".";
  }

  /** A time of the day such as 17:30; empty where nothing stands there. */
  Optional<LocalTime> time(String column) {
    return parsed(column, "a time such as 17:30", List.of(), Cells::parseTime);
  }

  private static Optional<LocalTime> parseTime(String text) {
    Matcher parts = TIME.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    try {
      String padded = parts.group(1).length() == 1 ? "0" + text : text;
      return Optional.of(LocalTime.parse(padded, DateTimeFormatter.ISO_LOCAL_TIME));
    } catch (DateTimeParseException e) {
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
