package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Club;
import org.belthigh.intake.Outing;

/**
 * The rest that a child's arm is owed in the planned weeks, reckoned from the outings and the rule
 * books: walked day by day from the first planned day, and again from each later day of an outing.
 *
 * <p>A day is one of rest where a rule book's table has the rest of an earlier day not over, where
 * one more day in a row would be too many, or where the pitches of seven days or the appearances of
 * a few are used up. Age is the book's own.
 */
final class RestDue {
  private final Catalogue catalogue;
  private final Club club;
  private final LocalDate born;
  private final List<Outing> outings;

  /**
   * @param outings of one child, of any date
   */
  RestDue(Catalogue catalogue, Club club, LocalDate born, List<Outing> outings) {
    this.catalogue = catalogue;
    this.club = club;
    this.born = born;
    this.outings = List.copyOf(outings);
  }

  List<HoldDue> of(LocalDate from, LocalDate last) {
    TreeSet<LocalDate> asked = new TreeSet<>(List.of(from));
    outings.stream()
        .map(Outing::date)
        .filter(d -> d.isAfter(from) && !d.isAfter(last))
        .forEach(asked::add);
    Map<List<Object>, HoldDue> once = new LinkedHashMap<>();
    asked.forEach(
        day -> rest(day).ifPresent(d -> once.putIfAbsent(List.of(d.from(), d.until()), d)));
    return List.copyOf(once.values());
  }

  /** The rest that is known of at the end of {@code day}. */
  private Optional<HoldDue> rest(LocalDate day) {
    List<Outing> pitched =
        outings.stream()
            .filter(o -> !o.date().isAfter(day))
            .filter(o -> o.kind() != Outing.Kind.BULLPEN && o.pitches() > 0)
            .toList();
    NavigableMap<LocalDate, Integer> thrown = new TreeMap<>();
    pitched.forEach(o -> thrown.merge(o.date(), o.pitches(), Integer::sum));
    if (thrown.isEmpty()) {
      return Optional.empty();
    }
    List<BooksOnDay.Series> books = BooksOnDay.of(catalogue, club, club.ruleBooks(), day);
    LocalDate after = thrown.lastKey().plusDays(1);
    List<LocalDate> held = new ArrayList<>();
    for (LocalDate d = day; !d.isAfter(reach(books, thrown, day)); d = d.plusDays(1)) {
      LocalDate at = d;
      if (books.stream().anyMatch(b -> owed(b, thrown, at) || full(b, pitched, at, after))) {
        held.add(d);
      }
    }
    return held.stream()
        .findFirst()
        .map(first -> first.isBefore(after) ? first : after)
        .map(first -> due(first, held.get(held.size() - 1), thrown));
  }

  private static HoldDue due(
      LocalDate first, LocalDate last, NavigableMap<LocalDate, Integer> thrown) {
    String why = thrown.lastEntry().getValue() + " pitches on " + thrown.lastKey();
    return new HoldDue("throwing", Optional.empty(), first, Optional.of(last), why);
  }

  /** A day after which no table, week or run of days can hold the arm back any more. */
  private LocalDate reach(
      List<BooksOnDay.Series> books, NavigableMap<LocalDate, Integer> thrown, LocalDate day) {
    LocalDate reach = day.plusDays(Week.DAYS);
    for (BooksOnDay.Series book : books) {
      int few = book.on(day).appearances().map(RuleBook.Appearances::days).orElse(0);
      reach = later(reach, day.plusDays(few));
      for (LocalDate date : thrown.keySet()) {
        reach = later(reach, over(book, thrown, date));
      }
    }
    return reach;
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  /** The last day of rest after what was thrown on {@code date}. */
  private LocalDate over(
      BooksOnDay.Series books, NavigableMap<LocalDate, Integer> thrown, LocalDate date) {
    RuleBook book = books.on(date);
    return date.plusDays(book.restDays(book.ageBasis().age(born, date), thrown.get(date)));
  }

  /** Rest of earlier days, or one day in a row too many. */
  private boolean owed(
      BooksOnDay.Series books, NavigableMap<LocalDate, Integer> thrown, LocalDate day) {
    boolean resting =
        thrown.headMap(day, false).keySet().stream()
            .anyMatch(date -> !day.isAfter(over(books, thrown, date)));
    int row = 0;
    while (thrown.containsKey(day.minusDays(row + 1L))) {
      row++;
    }
    int days = row;
    return resting || books.on(day).consecutiveDays().stream().anyMatch(most -> days >= most);
  }

  /** The week's pitches or the appearances of a few days are used up; not on the day itself. */
  private boolean full(
      BooksOnDay.Series books, List<Outing> pitched, LocalDate day, LocalDate after) {
    if (day.isBefore(after)) {
      return false;
    }
    RuleBook book = books.on(day);
    int age = book.ageBasis().age(born, day);
    int week =
        pitched.stream().filter(o -> within(o, day, Week.DAYS)).mapToInt(Outing::pitches).sum();
    return book.weeklyMax(age).stream().anyMatch(most -> week >= most)
        || book.appearances()
            .filter(a -> pitched.stream().filter(o -> within(o, day, a.days())).count() >= a.most())
            .isPresent();
  }

  private static boolean within(Outing outing, LocalDate day, int days) {
    return outing.date().isAfter(day.minusDays(days)) && !outing.date().isAfter(day);
  }
}
