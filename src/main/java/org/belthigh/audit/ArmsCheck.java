package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
    PitchBars.Answer answer =
        new PitchBars(given, child.player().born(), outings(child).toList()).on(day);
    answer.bars().forEach(why -> barred(where, why));
    answer
        .left()
        .forEach(
            (book, most) -> {
              if (left > most) {
                given.broken(where, left + " pitches are left", book + " leaves " + most);
              }
            });
  }

  private void barred(String where, String why) {
    given.broken(where, "the child may pitch", why);
  }
}
