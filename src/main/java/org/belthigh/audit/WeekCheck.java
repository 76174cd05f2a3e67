package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.intake.Event;

/**
 * What the plan says of its weeks and days: which are lighter and why, that all after the first is
 * provisional, on what it depends, and that each day says what it is.
 */
final class WeekCheck {
  private static final Set<String> KINDS =
      Set.of("usual", "lighter", "before-tournament", "easy", "time-off", "back");
  private static final String USUAL = "usual";
  private static final String TIME_OFF = "time-off";
  private static final String BACK = "back";

  private final Given given;

  WeekCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    weeks(child);
    boolean later = false;
    for (JsonNode day : child.said().path("days")) {
      day(child, day);
      later |= second(day) && !day.path("items").isEmpty();
    }
    boolean depends = !child.said().path("depends_on").asText("").isBlank();
    boolean says = depends && !child.said().path("depends_on").isNull();
    boolean due = later || (given.plan().weeks() > 1 && waits(child));
    if (due && !says) {
      given.fault(
          child.id(),
          "nothing says on what the later weeks depend",
          "after the first week a plan is provisional, and says so");
    }
    if (!due && says) {
      given.fault(
          child.id(),
          "depends_on says '" + child.said().path("depends_on").asText() + "'",
          "no later weeks depend on anything");
    }
  }

  /** Whether somebody's word must end a hold before the child swings again. */
  private static boolean waits(Given.Child child) {
    boolean waits = false;
    for (JsonNode hold : child.said().path("holds")) {
      waits |= !hold.path("kind").asText().equals("throwing") && !hold.hasNonNull("until");
    }
    return waits;
  }

  private boolean second(JsonNode day) {
    return Given.date(day, "date")
        .filter(d -> !d.isBefore(given.plan().from().plusDays(Week.DAYS)))
        .isPresent();
  }

  private void weeks(Given.Child child) {
    JsonNode weeks = child.said().path("weeks");
    if (weeks.size() != given.plan().weeks()) {
      given.fault(
          child.id(), weeks.size() + " weeks are named", given.plan().weeks() + " are planned");
      return;
    }
    for (int w = 0; w < weeks.size(); w++) {
      week(child, weeks.get(w), given.plan().from().plusDays((long) Week.DAYS * w));
    }
  }

  private void week(Given.Child child, JsonNode week, LocalDate first) {
    String where = child.id() + " week of " + first;
    String kind = week.path("kind").asText();
    if (!week.path("first").asText().equals(first.toString())) {
      given.fault(where, "it begins on " + week.path("first").asText(), "weeks follow each other");
    }
    if (!KINDS.contains(kind)) {
      given.fault(
          where, "the week is '" + kind + "'", "weeks are " + KINDS.stream().sorted().toList());
    }
    boolean says = week.hasNonNull("says") && !week.path("says").asText().isBlank();
    if (says == kind.equals(USUAL)) {
      given.fault(
          where,
          "the week is " + kind + " and " + (says ? "something" : "nothing") + " is said of it",
          "a week that is other than usual says how");
    }
    offOrBack(where, child, kind, first);
    Optional<String> less = less(child, first);
    if (kind.equals(USUAL) && less.isPresent()) {
      given.fault(where, "the week is called usual", less.get());
    }
    boolean lessSaid = kind.equals("lighter") || kind.equals("before-tournament");
    if (lessSaid && less.isEmpty()) {
      given.fault(where, "the week is called " + kind, "nothing makes it lighter");
    }
  }

  /** Weeks outside the season, and those that begin within the days after a clearance. */
  private void offOrBack(String where, Given.Child child, String kind, LocalDate first) {
    TimeOffDays off = new TimeOffDays(given, child.player().group());
    boolean timeOff = off.week(first);
    if (timeOff != kind.equals(TIME_OFF)) {
      given.fault(where, "the week is called " + kind, off.season());
    }
    int days = given.limits().whole("days-after-clearance", child.player().ageOn(first));
    boolean back =
        given
            .health(child)
            .backUntil(given.plan().from(), days)
            .filter(last -> !last.isBefore(first))
            .isPresent();
    if (!timeOff && back != kind.equals(BACK)) {
      given.fault(
          where,
          "the week is called " + kind,
          back ? "it begins within the days after a clearance" : "no clearance makes it so");
    }
  }

  /** Why a week has less in it: the fourth of the season, or a tournament is near. */
  private Optional<String> less(Given.Child child, LocalDate first) {
    int before =
        given.limits().whole("lighter-days-before-tournament", child.player().ageOn(first));
    LocalDate season = given.record().club().seasonFirst();
    int every = given.limits().whole("lighter-week-every", child.player().ageOn(first));
    for (LocalDate d = first; d.isBefore(first.plusDays(Week.DAYS)); d = d.plusDays(1)) {
      long week = Math.floorDiv(d.toEpochDay() - season.toEpochDay(), (long) Week.DAYS);
      if (week >= 0 && week % every == every - 1) {
        return Optional.of("each week of number " + every + " in a season is lighter");
      }
      LocalDate day = d;
      boolean near =
          !tournament(child, d)
              && d.plusDays(1)
                  .datesUntil(d.plusDays(before + 1L))
                  .anyMatch(e -> tournament(child, e));
      if (near) {
        return Optional.of("a tournament follows on " + day);
      }
    }
    return Optional.empty();
  }

  private boolean tournament(Given.Child child, LocalDate day) {
    return given.events(child.player().group(), day).stream()
        .anyMatch(e -> e.kind() == Event.Kind.TOURNAMENT);
  }

  private void day(Given.Child child, JsonNode day) {
    String where = Given.at(child, day);
    if (second(day) != day.path("provisional").asBoolean()) {
      given.fault(
          where,
          "provisional is " + day.path("provisional").asBoolean(),
          "all after the first week is provisional, and no more");
    }
    if (!day.hasNonNull("note") || day.path("note").asText().isBlank()) {
      given.fault(where, "nothing says what the day is", "each day has its note");
    }
    Given.date(day, "date").ifPresent(date -> place(where, child, day, date));
    TimeOffDays off = new TimeOffDays(given, child.player().group());
    if (!day.path("items").isEmpty() && Given.date(day, "date").filter(off::on).isPresent()) {
      given.broken(where, "hitting work on a day off from the sport", off.season());
    }
  }

  /** Where the day is spent: as the calendar has it, and rest or home where that has nothing. */
  private void place(String where, Given.Child child, JsonNode day, LocalDate date) {
    String place = day.path("place").asText();
    List<Event> events = given.events(child.player().group(), date);
    boolean away = place.equals("field") || place.equals("cage");
    boolean off =
        events.stream().allMatch(e -> e.kind() == Event.Kind.BREAK || e.kind() == Event.Kind.OFF);
    boolean assumed = new Sport(given.record(), given.plan()).assumed(child.person(), date);
    if (away && off && !assumed) {
      given.fault(where, "the place is " + place, "the calendar has nothing on that day");
    }
  }
}
