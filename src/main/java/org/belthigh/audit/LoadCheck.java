package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.ClubRecord;

/**
 * The whole child: swings of a day and of any seven days, days with swings, days of hitting, free
 * days, hours of all sport, and how far the swings of a week rise.
 *
 * <p>Any seven days are looked at, those before the first planned day among them, at the calendar
 * age on the first of them. A club's calendar alone may break a limit; then nothing is planned on
 * top of it.
 */
final class LoadCheck {
  private static final int MINUTES = 60;
  private static final int LOOK_BACK = 4;

  private final FinishedPlan plan;
  private final Findings findings;
  private final Limits limits;
  private final Ages ages;
  private final Optional<Sport> sport;
  private final ArmsOwed owed;

  LoadCheck(
      FinishedPlan plan,
      Findings findings,
      Limits limits,
      Ages ages,
      Optional<ClubRecord> record,
      ArmsOwed owed) {
    this.plan = plan;
    this.findings = findings;
    this.limits = limits;
    this.ages = ages;
    this.sport = record.map(r -> new Sport(r, plan));
    this.owed = owed;
  }

  void check(FinishedPlan.Person person) {
    person.days().forEach(day -> day(person, day));
    LocalDate first = plan.from().minusDays(Week.DAYS - 1L);
    for (LocalDate d = first; !d.isAfter(plan.last()); d = d.plusDays(1)) {
      Week week = Week.of(person, d);
      if (week.works()) {
        week(person, week);
      }
    }
    sport.ifPresent(s -> rise(person, s));
  }

  private void day(FinishedPlan.Person person, FinishedPlan.Dated day) {
    int age = ages.on(person, day.date());
    String where = person.id() + " " + day.date();
    most(where, day.allSwings(), "swings in a day", "swings-per-session", age);
    if (owed.fewerSwings(person, day.date())) {
      int fewer =
          (int)
              Math.floor(
                  limits.at("swings-share-after-pitching", age)
                      * limits.at("swings-per-session", age));
      if (day.allSwings() > fewer) {
        findings.broken(
            where,
            day.allSwings() + " swings while the arm rests",
            "at age " + age + " at most " + fewer + " on such a day",
            limits.source("swings-share-after-pitching"));
      }
    }
    if (day.atHome()) {
      most(where, day.allMinutes(), "minutes at home", "home-minutes", age);
      int tosses = day.items().stream().mapToInt(FinishedPlan.Work::reps).sum();
      most(where, tosses, "tosses at home", "home-tosses", age);
    }
  }

  private void week(FinishedPlan.Person person, Week week) {
    int age = ages.on(person, week.first());
    String where = person.id() + " " + week.first() + " and the six days after";
    most(where, week.swings(), "swings", "swings-per-week", age);
    most(where, week.count(d -> d.allSwings() > 0), "days with swings", "swing-days-per-week", age);
    most(
        where, week.count(FinishedPlan.Dated::works), "hitting days", "hitting-days-per-week", age);
    int free = (int) days(week).stream().filter(d -> !busy(person, week, d)).count();
    if (free < limits.whole("free-days-per-week", age)) {
      findings.broken(
          where,
          free + " free days",
          "at least " + limits.whole("free-days-per-week", age) + " without any organised sport",
          limits.source("free-days-per-week"));
    }
    double minutes =
        days(week).stream()
            .mapToDouble(
                d -> week.homeMinutes(d) + sport.map(s -> s.minutes(person, d)).orElse(0.0))
            .sum();
    double hours = age * limits.at("hours-per-week-per-year-of-age", age);
    if (minutes > MINUTES * hours) {
      findings.broken(
          where,
          minutes / MINUTES + " hours of organised sport",
          "at age " + age + " at most " + hours,
          limits.source("hours-per-week-per-year-of-age"));
    }
  }

  private static List<LocalDate> days(Week week) {
    return week.first().datesUntil(week.first().plusDays(Week.DAYS)).toList();
  }

  private boolean busy(FinishedPlan.Person person, Week week, LocalDate day) {
    return sport
        .map(s -> week.works(day) || s.minutes(person, day) > 0)
        .orElseGet(() -> week.away(day));
  }

  private void most(String where, int found, String what, String id, int age) {
    int most = limits.whole(id, age);
    if (found > most) {
      findings.broken(
          where, found + " " + what, "at age " + age + " at most " + most, limits.source(id));
    }
  }

  private void rise(FinishedPlan.Person person, Sport record) {
    List<Optional<Integer>> weeks = new ArrayList<>();
    for (int w = -LOOK_BACK; w < 0; w++) {
      LocalDate first = plan.from().plusDays((long) Week.DAYS * w);
      int start = limits.whole("swings-week-start", ages.on(person, first));
      weeks.add(record.played(person, first, start));
    }
    for (int w = 0; w < plan.weeks(); w++) {
      Week week = Week.of(person, plan.from().plusDays((long) Week.DAYS * w));
      int age = ages.on(person, week.first());
      int allowed = allowed(weeks.subList(w, w + LOOK_BACK), age);
      if (week.swings() > allowed) {
        findings.broken(
            person.id() + " week of " + week.first(),
            week.swings() + " swings",
            "a week rises to "
                + allowed
                + ", a tenth above the mean of the weeks played or the starting allowance",
            limits.source("swings-week-rise"));
      }
      boolean practised = week.count(d -> d.allSwings() > 0 && !d.atHome()) > 0;
      weeks.add(practised ? Optional.of(week.swings()) : Optional.empty());
    }
  }

  private int allowed(List<Optional<Integer>> lastFour, int age) {
    int start = limits.whole("swings-week-start", age);
    if (lastFour.subList(LOOK_BACK / 2, LOOK_BACK).stream().allMatch(Optional::isEmpty)) {
      return start;
    }
    List<Integer> played = lastFour.stream().flatMap(Optional::stream).toList();
    double mean = played.stream().mapToInt(n -> n).sum() / (double) played.size();
    double risen = mean + mean * limits.at("swings-week-rise", age);
    return Math.max(start, (int) (risen + 1e-6));
  }
}
