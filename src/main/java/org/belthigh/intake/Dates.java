package org.belthigh.intake;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.model.Coded;

/**
 * Days as people and spreadsheets write them. ISO 8601 and months in letters are always clear;
 * {@code 3/8/2027} is read by the order that the whole file shows, or that the club states, and by
 * none where neither tells.
 */
final class Dates {
  /** What has the form of a day in numbers, whole or cut. */
  static final Pattern LIKE_DAY = Pattern.compile("\\d+[-/.]\\d+[-/.]\\d+");

  private static final int LAST_MONTH = 12;
  private static final int CENTURY = 2000;
  private static final Map<String, Integer> MONTHS = months();

  private final Optional<Order> order;
  private final boolean asSaid;
  private String lastText = "";
  private Optional<LocalDate> lastDay = Optional.empty();

  /** What stands first in a day written with numbers, the year last. */
  enum Order implements Coded {
    DAY_FIRST,
    MONTH_FIRST
  }

  /** Two numbers and a year after them. */
  private record Numbers(int first, int second, int year) {
    boolean shows(Order order) {
      return order == Order.DAY_FIRST
          ? first > LAST_MONTH && second <= LAST_MONTH
          : second > LAST_MONTH && first <= LAST_MONTH;
    }

    Optional<LocalDate> day(Order order) {
      return order == Order.DAY_FIRST
          ? Dates.day(year, second, first)
          : Dates.day(year, first, second);
    }
  }

  private Dates(Optional<Order> order, boolean asSaid) {
    this.order = order;
    this.asSaid = asSaid;
  }

  /** The order that {@code cells} show; where they show none or both, that of {@code club}. */
  static Dates of(Iterable<String> cells, Optional<Order> club) {
    boolean dayFirst = false;
    boolean monthFirst = false;
    for (String cell : cells) {
      if (!isIso(cell)) {
        Optional<Numbers> numbers = numbers(cell);
        dayFirst |= numbers.filter(n -> n.shows(Order.DAY_FIRST)).isPresent();
        monthFirst |= numbers.filter(n -> n.shows(Order.MONTH_FIRST)).isPresent();
      }
    }
    Optional<Order> shown =
        dayFirst == monthFirst
            ? Optional.empty()
            : Optional.of(dayFirst ? Order.DAY_FIRST : Order.MONTH_FIRST);
    return new Dates(shown.or(() -> club), club.isPresent() && shown.or(() -> club).equals(club));
  }

  /** Days of ISO 8601 and other clear ones alone. */
  static Dates clear() {
    return new Dates(Optional.empty(), false);
  }

  /** The order by which days with numbers are read; empty where that is not known. */
  Optional<Order> order() {
    return order;
  }

  /** Whether the days of {@code text} are in the order that the club said itself. */
  boolean asSaid(String text) {
    return asSaid && numbers(text).flatMap(n -> order.flatMap(n::day)).isPresent();
  }

  /** The day; empty where the text is none, or does not say which one. */
  Optional<LocalDate> parse(String text) {
    if (!text.equals(lastText)) {
      lastDay = isIso(text) ? iso(text) : other(text);
      lastText = text;
    }
    return lastDay;
  }

  private Optional<LocalDate> other(String text) {
    Optional<Numbers> numbers = numbers(text);
    if (numbers.isEmpty()) {
      return inLetters(text);
    }
    List<LocalDate> meanings = meanings(text);
    return meanings.size() == 1
        ? Optional.of(meanings.get(0))
        : order.flatMap(o -> numbers.get().day(o));
  }

  /** The days that a text with numbers can mean, month first first; one where it is clear. */
  static List<LocalDate> meanings(String text) {
    Optional<Numbers> numbers = numbers(text);
    return Stream.of(Order.MONTH_FIRST, Order.DAY_FIRST)
        .flatMap(o -> numbers.flatMap(n -> n.day(o)).stream())
        .distinct()
        .toList();
  }

  /** Whether the text has the form of ISO 8601, whether or not the calendar has the day. */
  static boolean isIso(String text) {
    if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return false;
    }
    for (int at = 0; at < 10; at++) {
      if (at != 4 && at != 7 && !isDigit(text.charAt(at))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static Optional<LocalDate> iso(String text) {
    return day(
        number(text.substring(0, 4)), number(text.substring(5, 7)), number(text.substring(8)));
  }

  private static Optional<LocalDate> day(int year, int month, int day) {
    try {
      return Optional.of(LocalDate.of(year, month, day));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  /** The parts of a day between blanks, hyphens, slashes, points and commas, a time cut off. */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    String day = withoutTime(text);
    for (int at = 0; at <= day.length() && parts.size() < 7; at++) {
      if (at == day.length() || " -/.,".indexOf(day.charAt(at)) >= 0) {
        if (at > from) {
          parts.add(day.substring(from, at));
        }
        from = at + 1;
      }
    }
    return parts;
  }

  /** A spreadsheet writes midnight behind a day; anything later would be more than a day. */
  private static String withoutTime(String text) {
    for (String midnight : List.of("T00:00:00", "T00:00", " 00:00:00", " 00:00", " 0:00")) {
      if (text.endsWith(midnight)) {
        return text.substring(0, text.length() - midnight.length());
      }
    }
    return text;
  }

  private static boolean isNumber(String part, int mostDigits) {
    return part.length() <= mostDigits && part.chars().allMatch(c -> isDigit((char) c));
  }

  private static Optional<Numbers> numbers(String text) {
    List<String> parts = text.length() > 20 ? List.of() : parts(text);
    boolean three =
        parts.size() == 3
            && isNumber(parts.get(0), 2)
            && isNumber(parts.get(1), 2)
            && isNumber(parts.get(2), 4)
            && parts.get(2).length() % 2 == 0;
    return three
        ? Optional.of(new Numbers(number(parts.get(0)), number(parts.get(1)), year(parts.get(2))))
        : Optional.empty();
  }

  private static int year(String digits) {
    return digits.length() == 2 ? CENTURY + number(digits) : number(digits);
  }

  /** {@code 8 March 2027}, {@code 8 de marzo de 2027}, {@code Mar 8, 2027}, {@code 2027/03/08}. */
  private static Optional<LocalDate> inLetters(String text) {
    List<String> parts =
        text.length() > 40
            ? List.of()
            : parts(text).stream().filter(p -> !p.equalsIgnoreCase("de")).toList();
    if (parts.size() != 3) {
      return Optional.empty();
    }
    if (parts.get(0).length() == 4
        && parts.stream().allMatch(p -> isNumber(p, 4))
        && parts.get(1).length() <= 2
        && parts.get(2).length() <= 2) {
      return day(number(parts.get(0)), number(parts.get(1)), number(parts.get(2)));
    }
    int letters = month(parts.get(0)) > 0 ? 0 : 1;
    String day = parts.get(1 - letters);
    boolean whole =
        month(parts.get(letters)) > 0
            && isNumber(day, 2)
            && isNumber(parts.get(2), 4)
            && parts.get(2).length() % 2 == 0;
    return whole
        ? day(year(parts.get(2)), month(parts.get(letters)), number(day))
        : Optional.empty();
  }

  /** Whether the word is the name of a month, or its first three letters. */
  static boolean isMonth(String word) {
    return month(word) > 0;
  }

  private static int month(String word) {
    String plain =
        Normalizer.normalize(word, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT);
    return MONTHS.getOrDefault(plain, 0);
  }

  private static Map<String, Integer> months() {
    Map<String, Integer> months = new java.util.HashMap<>();
    List<String> names =
        List.of(
            "january enero",
            "february febrero",
            "march marzo",
            "april abril",
            "may mayo",
            "june junio",
            "july julio",
            "august agosto",
            "september septiembre sept setiembre",
            "october octubre",
            "november noviembre",
            "december diciembre");
    for (int month = 1; month <= names.size(); month++) {
      for (String name : names.get(month - 1).split(" ", -1)) {
        months.put(name, month);
        months.put(name.substring(0, 3), month);
      }
    }
    return Map.copyOf(months);
  }
}
