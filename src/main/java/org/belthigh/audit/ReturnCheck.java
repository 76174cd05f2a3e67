package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import org.belthigh.intake.ClubRecord;

/**
 * Less in the first days after a head injury or a sore arm or back was cleared: a lighter week's
 * share of the swings of a day and of all these days, of the tosses at home and of the home days.
 *
 * <p>Every clearance by somebody who may give it counts, whether or not the complaint was written
 * down.
 */
final class ReturnCheck {
  private static final String LIGHTER = "lighter-share";
  private static final String DAYS = "days-after-clearance";
  private static final String PER_WEEK = "swings-per-week";

  /** Guards a share against the last binary digit. */
  private static final double ROUNDING = 1e-9;

  private final FinishedPlan plan;
  private final Findings findings;
  private final Limits limits;
  private final Ages ages;
  private final ClubRecord record;

  ReturnCheck(FinishedPlan plan, Findings findings, Limits limits, Ages ages, ClubRecord record) {
    this.plan = plan;
    this.findings = findings;
    this.limits = limits;
    this.ages = ages;
    this.record = record;
  }

  void check(FinishedPlan.Person person) {
    HealthDays health =
        new HealthDays(
            record.wellness().stream().filter(w -> w.player().equals(person.id())).toList());
    health.clearedUpTo(plan.from()).forEach(cleared -> check(person, cleared));
  }

  private void check(FinishedPlan.Person person, HealthDays.Ended cleared) {
    LocalDate end = cleared.on().plusDays(limits.whole(DAYS, person.age()));
    List<FinishedPlan.Dated> days =
        person.days().stream()
            .filter(d -> !d.date().isBefore(cleared.on()) && d.date().isBefore(end))
            .toList();
    String after = " within the days after the clearance of " + cleared.kind().id();
    int sum = 0;
    for (FinishedPlan.Dated day : days) {
      int age = ages.on(person, day.date());
      String where = person.id() + " " + day.date();
      most(where, day.allSwings(), "swings" + after, share("swings-per-session", age));
      sum += day.allSwings();
      if (day.allSwings() > 0) {
        most(where, sum, "swings together" + after, share(PER_WEEK, age));
      }
      if (day.atHome()) {
        int tosses = day.items().stream().mapToInt(FinishedPlan.Work::reps).sum();
        most(where, tosses, "tosses at home" + after, share("home-tosses", age));
      }
    }
    homeDays(person, days, after);
  }

  private void homeDays(FinishedPlan.Person person, List<FinishedPlan.Dated> days, String after) {
    for (int w = 0; w < plan.weeks(); w++) {
      LocalDate first = plan.from().plusDays((long) Week.DAYS * w);
      int home =
          (int)
              days.stream()
                  .filter(d -> d.atHome() && d.works())
                  .filter(d -> !d.date().isBefore(first))
                  .filter(d -> d.date().isBefore(first.plusDays(Week.DAYS)))
                  .count();
      most(
          person.id() + " week of " + first,
          home,
          "home days" + after,
          limits.whole("lighter-home-days", person.age()));
    }
  }

  private int share(String id, int age) {
    return (int) (limits.at(LIGHTER, age) * limits.whole(id, age) + ROUNDING);
  }

  private void most(String where, int found, String what, int most) {
    if (found > most) {
      findings.broken(
          where,
          found + " " + what,
          "a lighter week's share: at most " + most,
          limits.source(DAYS));
    }
  }
}
