package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Unread;

/**
 * Nothing that a hold of the plan forbids is planned, and every hold that the club folder calls for
 * is there: open complaints, reports that cannot be read, and the rest of pitchers.
 */
final class HoldCheck {
  static final String EVERYTHING = "everything";
  private static final String SWINGING = "swinging";
  private static final String THROWING = "throwing";
  private static final String COMMON = "common-practice";
  private static final Set<String> KINDS = Set.of(EVERYTHING, SWINGING, THROWING);

  private final Findings findings;
  private final Limits limits;
  private final Optional<ClubRecord> record;
  private final ArmsOwed owed;

  HoldCheck(Findings findings, Limits limits, Optional<ClubRecord> record, ArmsOwed owed) {
    this.findings = findings;
    this.limits = limits;
    this.record = record;
    this.owed = owed;
  }

  void check(FinishedPlan plan, FinishedPlan.Person person) {
    for (FinishedPlan.Held hold : person.holds()) {
      if (!KINDS.contains(hold.kind())) {
        findings.fault(
            person.id(), "a hold on '" + hold.kind() + "'", "holds are on " + sorted(KINDS));
      }
      person.days().stream().filter(d -> hold.on(d.date())).forEach(d -> obeyed(person, hold, d));
    }
    record.ifPresent(
        r -> {
          complaints(plan, person, r);
          rests(plan, person);
        });
  }

  private static List<String> sorted(Set<String> words) {
    return words.stream().sorted().toList();
  }

  private void obeyed(FinishedPlan.Person person, FinishedPlan.Held hold, FinishedPlan.Dated day) {
    boolean broken =
        switch (hold.kind()) {
          case SWINGING -> day.allSwings() > 0;
          case THROWING -> day.throwing() > 0;
          default -> day.works() || day.throwing() > 0;
        };
    if (broken) {
      findings.fault(
          person.id() + " " + day.date(),
          "work that the hold on " + hold.kind() + " forbids",
          "held from " + hold.from() + hold.until().map(u -> " to " + u).orElse(" until ended"));
    }
  }

  /** Lost reports, and complaints that are open on the first day or begin inside the weeks. */
  private void complaints(FinishedPlan plan, FinishedPlan.Person person, ClubRecord known) {
    known.unread().stream()
        .filter(u -> u.what() == Unread.What.WELLNESS && u.concerns(person.id()))
        .map(u -> u.date().filter(plan.from()::isBefore).orElse(plan.from()))
        .filter(day -> !day.isAfter(plan.last()))
        .min(LocalDate::compareTo)
        .ifPresent(
            day -> {
              String lost = "a health report that cannot be read";
              wanted(person, day, lost, SWINGING, COMMON);
              wanted(person, day, lost, THROWING, COMMON);
            });
    HealthDays health = health(person, known);
    for (HealthDays.Open open : health.openAt(plan.from())) {
      stops(person, plan.from(), open);
    }
    for (HealthDays.Open open : health.begunAfter(plan.from(), plan.last())) {
      stops(person, open.since(), open);
    }
    health.endedUpTo(plan.from()).forEach(ended -> gently(person, ended));
  }

  private static HealthDays health(FinishedPlan.Person person, ClubRecord known) {
    return new HealthDays(
        known.wellness().stream().filter(w -> w.player().equals(person.id())).toList());
  }

  private void stops(FinishedPlan.Person person, LocalDate day, HealthDays.Open open) {
    String what = open.kind().id() + " of " + open.since();
    switch (open.kind()) {
      case ARM_PAIN, BACK_PAIN -> {
        wanted(person, day, what, THROWING, "s20");
        wanted(person, day, what, SWINGING, COMMON);
      }
      case OTHER_PAIN -> {
        wanted(person, day, what, THROWING, COMMON);
        wanted(person, day, what, SWINGING, COMMON);
      }
      default -> wanted(person, day, what, EVERYTHING, COMMON);
    }
  }

  private void wanted(
      FinishedPlan.Person person, LocalDate day, String cause, String kind, String source) {
    if (person.holds().stream().noneMatch(h -> h.stops(kind) && h.covers(day, LocalDate.MAX))) {
      findings.broken(
          person.id() + " " + day,
          "no open hold on " + kind + " for " + cause,
          "it stops until a person who may end it ends it",
          limits.name(source));
    }
  }

  /** The week from a clearance on has no more than a day of a lighter week. */
  private void gently(FinishedPlan.Person person, HealthDays.Ended ended) {
    LocalDate end = ended.on().plusDays(Week.DAYS);
    person.days().stream()
        .filter(d -> !d.date().isBefore(ended.on()) && d.date().isBefore(end))
        .forEach(d -> gently(person, ended, d));
  }

  private void gently(FinishedPlan.Person person, HealthDays.Ended ended, FinishedPlan.Dated day) {
    double share = limits.at("lighter-share", person.age());
    int swings = (int) (share * limits.whole("swings-per-session", person.age() + 1));
    if (day.allSwings() > swings) {
      findings.broken(
          person.id() + " " + day.date(),
          day.allSwings() + " swings in the week after " + ended.kind().id() + " was cleared",
          "at most " + swings + ", a lighter week's share",
          limits.name(COMMON));
    }
  }

  /**
   * Rest is held from the day after the last outing: a rest that was broken is reported, not held.
   */
  private void rests(FinishedPlan plan, FinishedPlan.Person person) {
    boolean pitchedToday = owed.pitched(person, plan.from());
    LocalDate next = pitchedToday ? plan.from().plusDays(1) : plan.from();
    for (ArmsOwed.Rest rest : owed.rests(person)) {
      LocalDate first = rest.first().isBefore(next) ? next : rest.first();
      if (!first.isAfter(rest.last())
          && person.holds().stream()
              .noneMatch(h -> h.stops(THROWING) && h.covers(first, rest.last()))) {
        findings.broken(
            person.id() + " " + first,
            "no hold on throwing after " + rest.pitches() + " pitches",
            "no throwing up to " + rest.last(),
            rest.book());
      }
    }
  }
}
