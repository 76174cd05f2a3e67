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
import org.belthigh.intake.Wellness;

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

  private final Given given;

  ArmsCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    Set<LocalDate> dates = new HashSet<>();
    for (JsonNode arm : child.said().path("arms")) {
      Given.date(arm, "date").ifPresent(dates::add);
      Given.date(arm, "date").ifPresent(day -> day(child, arm, day));
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

  private void day(Given.Child child, JsonNode arm, LocalDate day) {
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
    if (held(child, day) && !answer.equals(NO_THROWING)) {
      given.broken(where, "the answer is " + answer, "a hold stops throwing on that day");
    }
    if ((held(child, day) || answer.equals(NO_THROWING)) && arm.path("may_catch").asBoolean()) {
      given.broken(where, "the child may catch", "who may not throw may not catch");
    }
    knownTo(where, child, arm);
    if (may) {
      free(where, child, day, left);
    }
  }

  private boolean held(Given.Child child, LocalDate day) {
    HealthDays health =
        new HealthDays(
            given.whole().wellness().stream().filter(w -> w.player().equals(child.id())).toList());
    LocalDate from = given.plan().from();
    return Stream.concat(health.openAt(from).stream(), health.begunAfter(from, day).stream())
            .map(HealthDays.Open::kind)
            .anyMatch(Wellness.Kind::holds)
        || lost(Unread.What.WELLNESS, child);
  }

  private boolean lost(Unread.What what, Given.Child child) {
    return given.record().unread().stream()
        .anyMatch(u -> u.what() == what && u.concerns(child.id()));
  }

  private void knownTo(String where, Given.Child child, JsonNode arm) {
    String known = last(child).map(LocalDate::toString).orElse("null");
    if (!arm.path("known_to").asText("null").equals(known)) {
      given.fault(
          where, "known_to is " + arm.path("known_to"), "the last outing reported is of " + known);
    }
  }

  private Optional<LocalDate> last(Given.Child child) {
    return outings(child).map(Outing::date).max(LocalDate::compareTo);
  }

  private Stream<Outing> outings(Given.Child child) {
    return given.record().outings().stream().filter(o -> o.player().equals(child.id()));
  }

  private void free(String where, Given.Child child, LocalDate day, int left) {
    if (!child.player().pitches()) {
      barred(where, "the roster has the child as no pitcher");
    }
    if (lost(Unread.What.OUTING, child)) {
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

  private RuleBook edition(String id, LocalDate day) {
    RuleBook named = given.catalogue().ruleBook(id);
    RuleBook book =
        given.catalogue().editions(named).stream()
            .filter(b -> b.inForce(day))
            .findFirst()
            .orElse(named);
    return given.record().club().stricter().over(book, given.record().club().name());
  }

  private void book(
      String where,
      Given.Child child,
      LocalDate day,
      int left,
      String id,
      RuleBook.AgeBasis basis) {
    RuleBook book = edition(id, day);
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
    boolean caught =
        outings(child).anyMatch(o -> o.date().equals(day) && o.inningsCaught().orElse(0) > 0);
    if (caught && book.avoidCatching()) {
      barred(where, book.id() + " advises against catching and pitching on one day");
    }
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
              RuleBook book = edition(id, date);
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
