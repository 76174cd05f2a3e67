package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

/** Seven days of one player, from {@code first}. */
record Week(LocalDate first, List<FinishedPlan.Dated> days) {
  static final int DAYS = 7;

  static Week of(FinishedPlan.Person person, LocalDate first) {
    LocalDate end = first.plusDays(DAYS);
    return new Week(
        first,
        person.days().stream()
            .filter(d -> !d.date().isBefore(first) && d.date().isBefore(end))
            .toList());
  }

  int count(Predicate<FinishedPlan.Dated> what) {
    return (int) days.stream().filter(what).count();
  }

  int swings() {
    return days.stream().mapToInt(FinishedPlan.Dated::allSwings).sum();
  }

  boolean works() {
    return days.stream().anyMatch(FinishedPlan.Dated::works);
  }

  /** Whether the work of {@code day} is part of it. */
  boolean works(LocalDate day) {
    return days.stream().anyMatch(d -> d.date().equals(day) && d.works());
  }

  /** Minutes of home work on {@code day}, which no event covers. */
  int homeMinutes(LocalDate day) {
    return days.stream()
        .filter(d -> d.date().equals(day) && d.atHome())
        .mapToInt(FinishedPlan.Dated::allMinutes)
        .sum();
  }

  /** Whether the plan itself says that something is on. */
  boolean away(LocalDate day) {
    return days.stream().anyMatch(d -> d.date().equals(day) && !d.place().equals("rest"));
  }
}
