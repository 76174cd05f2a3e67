package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Outing;

/**
 * What bars a child from pitching on a day by the rule books, the club's stricter numbers in them,
 * and how many pitches they leave; by calendar age and by league age.
 */
final class PitchBars {
  private static final int THIRDS = 3;
  private static final int TENTHS = 10;
  private static final String INNINGS = "innings in 12 months";

  private final Given given;
  private final LocalDate born;
  private final List<Outing> outings;
  private final NavigableMap<LocalDate, Integer> thrown = new TreeMap<>();

  /**
   * @param outings of one child; those after a day that is asked for do not count
   */
  PitchBars(Given given, LocalDate born, List<Outing> outings) {
    this.given = given;
    this.born = born;
    this.outings = List.copyOf(outings);
    outings.stream()
        .filter(o -> o.kind() != Outing.Kind.BULLPEN && o.pitches() > 0)
        .forEach(o -> thrown.merge(o.date(), o.pitches(), Integer::sum));
  }

  /**
   * The answer of all books.
   *
   * @param bars why nothing is pitched; empty where something may be
   * @param left by book, the fewest pitches that it leaves, 0 or more
   */
  record Answer(List<String> bars, Map<String, Integer> left) {
    boolean free() {
      return bars.isEmpty() && left.values().stream().allMatch(n -> n > 0);
    }

    int most() {
      return left.values().stream().mapToInt(n -> n).min().orElse(0);
    }
  }

  /** By the books that bind on {@code day}. */
  Answer on(LocalDate day) {
    return on(day, day);
  }

  /** The answer for {@code day} by the books that bind on {@code asked}. */
  Answer on(LocalDate asked, LocalDate day) {
    Answer answer = new Answer(new ArrayList<>(), new TreeMap<>());
    for (BooksOnDay.Series series : books(asked)) {
      RuleBook book = series.on(day);
      for (RuleBook.AgeBasis basis : List.of(book.ageBasis(), book.ageBasis().other())) {
        boolean other = basis != book.ageBasis();
        book(answer, series, book, basis.age(born, day), other, day);
      }
    }
    return new Answer(answer.bars().stream().distinct().toList(), answer.left());
  }

  /**
   * The first day from {@code asked} on that is free if nothing more is thrown; empty where none is
   * within the reach of rest, weeks, appearances and twelve months' innings.
   */
  Optional<LocalDate> free(LocalDate asked) {
    LocalDate last = reach(asked);
    for (LocalDate d = asked; !d.isAfter(asked.plusYears(1)); d = d.plusDays(1)) {
      Answer answer = on(asked, d);
      if (answer.free()) {
        return Optional.of(d);
      }
      if (!d.isBefore(last) && answer.bars().stream().noneMatch(b -> b.endsWith(INNINGS))) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Whether a book has no row for the child's age on {@code day}, as before its first one. */
  boolean lacksRow(LocalDate day) {
    return books(day).stream()
        .map(series -> series.on(day))
        .anyMatch(
            book ->
                Stream.of(book.ageBasis(), book.ageBasis().other())
                    .anyMatch(basis -> book.dailyMax(basis.age(born, day)).isEmpty()));
  }

  private LocalDate reach(LocalDate asked) {
    LocalDate reach = asked.plusDays(Week.DAYS);
    for (BooksOnDay.Series series : books(asked)) {
      int few = series.named().appearances().map(RuleBook.Appearances::days).orElse(0);
      reach = later(reach, asked.plusDays(few));
      for (LocalDate date : thrown.keySet()) {
        int rest = Math.max(rest(series, false, date), rest(series, true, date));
        reach = later(reach, date.plusDays(rest + 1L));
      }
    }
    return reach;
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private List<BooksOnDay.Series> books(LocalDate day) {
    return BooksOnDay.of(
        given.catalogue(), given.record().club(), given.record().club().ruleBooks(), day);
  }

  private void book(
      Answer answer,
      BooksOnDay.Series series,
      RuleBook book,
      int age,
      boolean other,
      LocalDate day) {
    if (book.status() == RuleBook.Status.OPEN) {
      answer.bars().add(book.id() + " has no confirmed number");
      return;
    }
    OptionalInt daily = book.dailyMax(age);
    if (daily.isEmpty()) {
      answer.bars().add(book.id() + " has no row for age " + age);
      return;
    }
    int most = daily.getAsInt() - thrown.getOrDefault(day, 0);
    if (book.weeklyMax(age).isPresent()) {
      most = Math.min(most, book.weeklyMax(age).getAsInt() - week(day));
    }
    answer.left().merge(book.id(), Math.max(0, most), Math::min);
    resting(answer, series, other, day);
    inARow(answer, day, book);
    catcher(answer, day, book);
    if (thrown.containsKey(day) && book.sameDay() == RuleBook.SameDay.NOT_ALLOWED) {
      answer.bars().add(book.id() + " has no second game on a day of pitching");
    }
    appearances(answer, day, book);
    book.year(age).ifPresent(year -> innings(answer, day, book, year));
  }

  private int week(LocalDate day) {
    return thrown.subMap(day.minusDays(Week.DAYS - 1L), true, day, true).values().stream()
        .mapToInt(n -> n)
        .sum();
  }

  private void catcher(Answer answer, LocalDate day, RuleBook book) {
    int caught =
        outings.stream()
            .filter(o -> o.date().equals(day))
            .mapToInt(o -> o.inningsCaught().orElse(0))
            .sum();
    if (caught > 0 && book.avoidCatching()) {
      answer.bars().add(book.id() + " advises against catching and pitching on one day");
    }
    book.catcher()
        .filter(c -> caught >= c.inningsThatBarPitching())
        .ifPresent(c -> answer.bars().add(caught + " innings caught bar pitching by " + book.id()));
  }

  private Stream<Outing> pitched(LocalDate after, LocalDate last) {
    return outings.stream()
        .filter(o -> o.kind() != Outing.Kind.BULLPEN && o.pitches() > 0)
        .filter(o -> o.date().isAfter(after) && !o.date().isAfter(last));
  }

  private void appearances(Answer answer, LocalDate day, RuleBook book) {
    book.appearances()
        .filter(a -> pitched(day.minusDays(a.days()), day).count() >= a.most())
        .ifPresent(
            a ->
                answer
                    .bars()
                    .add(
                        "%s has %d appearances in %d days"
                            .formatted(book.id(), a.most(), a.days())));
  }

  private void innings(Answer answer, LocalDate day, RuleBook book, RuleBook.Year year) {
    int thirds =
        pitched(day.minusYears(1), day)
            .flatMapToDouble(o -> o.innings().stream())
            .mapToInt(PitchBars::thirds)
            .sum();
    if (year.innings().isPresent() && thirds >= THIRDS * year.innings().getAsInt()) {
      answer.bars().add(book.id() + " has " + year.innings().getAsInt() + " " + INNINGS);
    }
  }

  /** Innings with thirds written .1 and .2, in thirds. */
  private static int thirds(double innings) {
    int whole = (int) innings;
    return THIRDS * whole + (int) Math.round((innings - whole) * TENTHS);
  }

  private void resting(Answer answer, BooksOnDay.Series series, boolean other, LocalDate day) {
    thrown
        .headMap(day, false)
        .forEach(
            (date, pitches) -> {
              int rest = rest(series, other, date);
              if (!day.isAfter(date.plusDays(rest))) {
                answer
                    .bars()
                    .add(pitches + " pitches on " + date + " need " + rest + " days of rest");
              }
            });
  }

  private int rest(BooksOnDay.Series series, boolean other, LocalDate date) {
    RuleBook book = series.on(date);
    RuleBook.AgeBasis basis = other ? book.ageBasis().other() : book.ageBasis();
    return book.restDays(basis.age(born, date), thrown.get(date));
  }

  private void inARow(Answer answer, LocalDate day, RuleBook book) {
    int row = 0;
    while (thrown.containsKey(day.minusDays(row + 1L))) {
      row++;
    }
    if (book.consecutiveDays().isPresent() && row >= book.consecutiveDays().getAsInt()) {
      answer
          .bars()
          .add(row + " days running before it, at most " + book.consecutiveDays().getAsInt());
    }
  }
}
