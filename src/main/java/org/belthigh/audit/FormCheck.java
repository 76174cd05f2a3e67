package org.belthigh.audit;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;

/** Each date once, sums that add up, one decision a skill, known words. */
final class FormCheck {
  private static final Set<String> SKILLS = Set.of("see", "choose", "drive", "send");
  private static final Set<String> PLACES = Set.of("field", "cage", "home", "rest");

  private final FinishedPlan plan;
  private final Findings findings;

  FormCheck(FinishedPlan plan, Findings findings) {
    this.plan = plan;
    this.findings = findings;
  }

  void check(FinishedPlan.Person person) {
    decisions(person);
    dates(person);
    person.days().forEach(day -> day(person.id() + " " + day.date(), day));
  }

  private void decisions(FinishedPlan.Person person) {
    Set<String> decided = new HashSet<>();
    for (String skill : person.skills()) {
      if (!decided.add(skill)) {
        findings.fault(person.id(), "a second decision for " + skill, "one decision a skill");
      }
    }
    if (!decided.equals(SKILLS)) {
      findings.fault(
          person.id(),
          "decisions for " + decided.stream().sorted().toList(),
          "each player has one for see, choose, drive and send");
    }
  }

  private void dates(FinishedPlan.Person person) {
    Set<LocalDate> dates = new HashSet<>();
    for (FinishedPlan.Dated day : person.days()) {
      if (!dates.add(day.date())) {
        findings.fault(
            person.id() + " " + day.date(), "the date stands twice", "each date stands once");
      }
      if (day.date().isBefore(plan.from()) || day.date().isAfter(plan.last())) {
        findings.fault(
            person.id() + " " + day.date(),
            "the date is not planned",
            "dates are " + plan.from() + " to " + plan.last());
      }
    }
    for (LocalDate d = plan.from(); !d.isAfter(plan.last()); d = d.plusDays(1)) {
      if (!dates.contains(d)) {
        findings.fault(person.id(), "no entry for " + d, "every date of the planned weeks has one");
      }
    }
  }

  private void day(String where, FinishedPlan.Dated day) {
    sum(where, "minutes", day.minutes(), day.items(), FinishedPlan.Work::minutes);
    sum(where, "swings", day.swings(), day.items(), FinishedPlan.Work::swings);
    if (!PLACES.contains(day.place())) {
      findings.fault(where, "the place is '" + day.place() + "'", "places are " + PLACES);
    }
    if (day.place().equals("rest") && day.works()) {
      findings.fault(where, "work on a day of rest", "a day of rest has no work");
    }
    if (day.throwing() > 0) {
      findings.fault(
          where,
          day.throwing() + " full-effort throws are planned",
          "a hitting plan asks for no throws, least of all on a rest day");
    }
    for (FinishedPlan.Work work : day.items()) {
      if (work.swings() > work.reps()) {
        findings.fault(
            where,
            work.drill() + " has " + work.swings() + " swings of " + work.reps() + " tosses",
            "there are no more swings than tosses");
      }
    }
  }

  private void sum(
      String where,
      String what,
      int said,
      List<FinishedPlan.Work> items,
      ToIntFunction<FinishedPlan.Work> part) {
    int sum = items.stream().mapToInt(part).sum();
    if (sum != said) {
      findings.fault(
          where,
          what + " is " + said + ", its items add up to " + sum,
          "a day's " + what + " are the sum of its items'");
    }
  }
}
