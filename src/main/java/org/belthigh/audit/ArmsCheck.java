package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Unread;

/**
 * What the card and the arm sheet let a child pitch, day by day of the first week: never a pitch
 * where the rule books, the club's stricter numbers, a hold, a lost row or too long a silence bars
 * it, and never more than they leave.
 *
 * <p>Only what is too free is a finding, with one exception: who is held from throwing must be told
 * so. The tables are those of {@code rules/books}; how they are read is the auditor's own.
 */
final class ArmsCheck {
  private static final String MAY = "may-pitch";
  private static final String NO_THROWING = "no-throwing";
  private static final List<String> ANSWERS = List.of(MAY, "ask-first", "no-pitching", NO_THROWING);

  private static final int THIRDS = 3;
  private static final int TENTHS = 10;

  private final Given given;

  ArmsCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    List<HoldDue> due = HoldDaysCheck.due(given, child);
    Set<LocalDate> dates = new HashSet<>();
    for (JsonNode arm : child.said().path("arms")) {
      Given.date(arm, "date").ifPresent(dates::add);
      Given.date(arm, "date").ifPresent(day -> day(child, arm, day, due));
    }
    LocalDate from = given.plan().from();
    Set<LocalDate> week = Set.copyOf(from.datesUntil(from.plusDays(Week.DAYS)).toList());
    if (!dates.equals(week) || child.said().path("arms").size() != week.size()) {
      given.fault(
          child.id() + ", arms",
          "days " + dates.stream().sorted().toList(),
          "each day of the first week stands there once");
    }
  }

  private void day(Given.Child child, JsonNode arm, LocalDate day, List<HoldDue> due) {
    String where = child.id() + " " + day + ", arm";
    String answer = arm.path("answer").asText();
    int left = arm.path("pitches_left").asInt();
    boolean may = answer.equals(MAY);
    if (!ANSWERS.contains(answer)) {
      given.fault(where, "the answer '" + answer + "'", "answers are " + ANSWERS);
    }
    if (!may && left != 0) {
      given.fault(where, left + " pitches beside " + answer, "who may not pitch has none left");
    }
    boolean held = due.stream().anyMatch(d -> d.stopsThrowing(day));
    if (held && !answer.equals(NO_THROWING)) {
      given.broken(where, "the answer is " + answer, "a hold stops throwing on that day");
    }
    if (!held && answer.equals(NO_THROWING)) {
      given.fault(where, "the answer is " + answer, "no hold stops throwing on that day");
    }
    if ((held || answer.equals(NO_THROWING)) && arm.path("may_catch").asBoolean()) {
      given.broken(where, "the child may catch", "who may not throw may not catch");
    }
    knownTo(where, child, arm);
    if (may) {
      free(where, child, day, left);
    }
  }

  private boolean lost(Given.Child child, LocalDate day) {
    return given.whole().unread().stream()
        .filter(u -> u.date().filter(day::isBefore).isEmpty())
        .anyMatch(u -> u.what() == Unread.What.OUTING && u.concerns(child.id()));
  }

  private void knownTo(String where, Given.Child child, JsonNode arm) {
    String known = last(child).map(LocalDate::toString).orElse("null");
    if (!arm.path("known_to").asText("null").equals(known)) {
      given.fault(
          where, "known_to is " + arm.path("known_to"), "the last outing reported is of " + known);
    }
  }

  private Optional<LocalDate> last(Given.Child child) {
    return given.record().outings().stream()
        .filter(o -> o.player().equals(child.id()))
        .map(Outing::date)
        .max(LocalDate::compareTo);
  }

  /** Those dated inside the weeks as well: they count from their own day on. */
  private Stream<Outing> outings(Given.Child child) {
    return given.whole().outings().stream().filter(o -> o.player().equals(child.id()));
  }

  private void free(String where, Given.Child child, LocalDate day, int left) {
    if (!child.player().pitches()) {
      barred(where, "the roster has the child as no pitcher");
    }
    if (lost(child, day)) {
      barred(where, "a report of throwing was lost, so ask first");
    }
    int ask = given.limits().whole("ask-after-days", child.player().ageOn(day));
    if (last(child).filter(d -> ChronoUnit.DAYS.between(d, day) <= ask).isEmpty()) {
      barred(where, "nothing was heard for more than " + ask + " days, so ask first");
    }
    if (given.record().club().group(child.player().group()).softball()) {
      barred(where, "no table is borrowed for softball");
      return;
    }
    for (String id : given.record().club().ruleBooks()) {
      for (RuleBook.AgeBasis basis : bases(given.catalogue().ruleBook(id))) {
        book(where, child, day, left, id, basis);
      }
    }
  }

  private static List<RuleBook.AgeBasis> bases(RuleBook book) {
    return List.of(book.ageBasis(), book.ageBasis().other());
  }

  private void barred(String where, String why) {
    given.broken(where, "the child may pitch", why);
  }

  private void book(
      String where,
      Given.Child child,
      LocalDate day,
      int left,
      String id,
      RuleBook.AgeBasis basis) {
    RuleBook book = given.book(id, day);
    if (book.status() == RuleBook.Status.OPEN) {
      barred(where, book.id() + " has no confirmed number");
      return;
    }
    int age = basis.age(child.player().born(), day);
    NavigableMap<LocalDate, Integer> thrown = thrown(child);
    OptionalInt daily = book.dailyMax(age);
    if (daily.isEmpty()) {
      barred(where, book.id() + " has no row for age " + age);
      return;
    }
    int most = daily.getAsInt() - thrown.getOrDefault(day, 0);
    if (book.weeklyMax(age).isPresent()) {
      int week =
          thrown.subMap(day.minusDays(Week.DAYS - 1L), true, day, true).values().stream()
              .mapToInt(n -> n)
              .sum();
      most = Math.min(most, book.weeklyMax(age).getAsInt() - week);
    }
    if (left > most) {
      given.broken(where, left + " pitches are left", book.id() + " leaves " + Math.max(0, most));
    }
    resting(where, child, day, id, basis, thrown);
    inARow(where, day, book, thrown);
    catcher(where, child, day, book);
    if (thrown.containsKey(day) && book.sameDay() == RuleBook.SameDay.NOT_ALLOWED) {
      barred(where, book.id() + " has no second game on a day of pitching");
    }
    appearances(where, child, day, book);
    book.year(age).ifPresent(year -> innings(where, child, day, book, year));
  }

  private void catcher(String where, Given.Child child, LocalDate day, RuleBook book) {
    int caught =
        outings(child)
            .filter(o -> o.date().equals(day))
            .mapToInt(o -> o.inningsCaught().orElse(0))
            .sum();
    if (caught > 0 && book.avoidCatching()) {
      barred(where, book.id() + " advises against catching and pitching on one day");
    }
    book.catcher()
        .filter(c -> caught >= c.inningsThatBarPitching())
        .ifPresent(c -> barred(where, caught + " innings caught bar pitching by " + book.id()));
  }

  private Stream<Outing> pitched(Given.Child child, LocalDate after, LocalDate last) {
    return outings(child)
        .filter(o -> o.kind() != Outing.Kind.BULLPEN && o.pitches() > 0)
        .filter(o -> o.date().isAfter(after) && !o.date().isAfter(last));
  }

  private void appearances(String where, Given.Child child, LocalDate day, RuleBook book) {
    book.appearances()
        .filter(a -> pitched(child, day.minusDays(a.days()), day).count() >= a.most())
        .ifPresent(
            a ->
                barred(
                    where,
                    book.id() + " has " + a.most() + " appearances in " + a.days() + " days"));
  }

  private void innings(
      String where, Given.Child child, LocalDate day, RuleBook book, RuleBook.Year year) {
    int thirds =
        pitched(child, day.minusYears(1), day)
            .flatMapToDouble(o -> o.innings().stream())
            .mapToInt(ArmsCheck::thirds)
            .sum();
    if (year.innings().isPresent() && thirds >= THIRDS * year.innings().getAsInt()) {
      barred(where, book.id() + " has " + year.innings().getAsInt() + " innings in 12 months");
    }
  }

  /** Innings with thirds written .1 and .2, in thirds. */
  private static int thirds(double innings) {
    int whole = (int) innings;
    return THIRDS * whole + (int) Math.round((innings - whole) * TENTHS);
  }

  private NavigableMap<LocalDate, Integer> thrown(Given.Child child) {
    NavigableMap<LocalDate, Integer> thrown = new TreeMap<>();
    outings(child)
        .filter(o -> o.kind() != Outing.Kind.BULLPEN && o.pitches() > 0)
        .forEach(o -> thrown.merge(o.date(), o.pitches(), Integer::sum));
    return thrown;
  }

  private void resting(
      String where,
      Given.Child child,
      LocalDate day,
      String id,
      RuleBook.AgeBasis basis,
      NavigableMap<LocalDate, Integer> thrown) {
    thrown
        .headMap(day, false)
        .forEach(
            (date, pitches) -> {
              RuleBook book = given.book(id, date);
              int rest = book.restDays(basis.age(child.player().born(), date), pitches);
              if (!day.isAfter(date.plusDays(rest))) {
                barred(where, pitches + " pitches on " + date + " need " + rest + " days of rest");
              }
            });
  }

  private void inARow(
      String where, LocalDate day, RuleBook book, NavigableMap<LocalDate, Integer> thrown) {
    int row = 0;
    while (thrown.containsKey(day.minusDays(row + 1L))) {
      row++;
    }
    if (book.consecutiveDays().isPresent() && row >= book.consecutiveDays().getAsInt()) {
      barred(where, row + " days running before it, at most " + book.consecutiveDays().getAsInt());
    }
  }
}
