package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Event;
import org.belthigh.intake.OtherSport;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;

/**
 * Whoever is known to have more months of the sport in twelve than the guidance allows is remarked
 * on in the plan. Nothing is taken from months of which nothing is written.
 */
final class YearCheck {
  private static final int MONTHS = 12;
  private static final Pattern SAME_SPORT =
      Pattern.compile(
          "baseball|softball|t-ball|tee ball|b[eé]isbol|s[oó]ftbol",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private final ClubRecord record;
  private final FinishedPlan plan;
  private final Findings findings;
  private final Limits limits;

  YearCheck(ClubRecord record, FinishedPlan plan, Findings findings, Limits limits) {
    this.record = record;
    this.plan = plan;
    this.findings = findings;
    this.limits = limits;
  }

  void check(FinishedPlan.Person person) {
    YearMonth end = YearMonth.from(plan.last());
    YearMonth start = end.minusMonths(MONTHS - 1L);
    long months = months(person).stream().filter(m -> !m.isBefore(start)).count();
    int most = limits.whole("sport-months-per-year", person.age());
    if (months > most && !person.yearRemarked()) {
      findings.broken(
          person.id() + " " + start + " to " + end,
          months + " months of the sport are known, and nothing is said of it",
          "at most " + most + " months in twelve",
          limits.source("sport-months-per-year"));
    }
  }

  /** Whether the months that the plan says are those that the club folder knows of. */
  void said(FinishedPlan.Person person, JsonNode said) {
    YearMonth end = YearMonth.from(plan.last());
    YearMonth start = end.minusMonths(MONTHS - 1L);
    long known = months(person).stream().filter(m -> !m.isBefore(start)).count();
    same(person, said, "from", start.toString());
    same(person, said, "to", end.toString());
    same(person, said, "known", known + "");
    same(person, said, "most", limits.whole("sport-months-per-year", person.age()) + "");
  }

  private void same(FinishedPlan.Person person, JsonNode said, String key, String wanted) {
    if (!said.path(key).asText().equals(wanted)) {
      findings.fault(
          person.id() + ", sport_months",
          key + " is '" + said.path(key).asText() + "'",
          "by the club folder it is " + wanted);
    }
  }

  private Set<YearMonth> months(FinishedPlan.Person person) {
    Set<YearMonth> months = new TreeSet<>();
    Club club = record.club();
    LocalDate end = club.seasonLast().isBefore(plan.last()) ? club.seasonLast() : plan.last();
    if (!club.seasonFirst().isAfter(end)) {
      club.seasonFirst().datesUntil(end.plusDays(1)).map(YearMonth::from).forEach(months::add);
    }
    record.events().stream()
        .filter(e -> e.concerns(person.group()))
        .filter(e -> e.kind() != Event.Kind.BREAK && e.kind() != Event.Kind.OFF)
        .filter(e -> !e.date().isAfter(plan.last()))
        .forEach(e -> months.add(YearMonth.from(e.date())));
    person.days().stream()
        .filter(FinishedPlan.Dated::works)
        .forEach(d -> months.add(YearMonth.from(d.date())));
    for (Toss toss : record.tosses()) {
      add(months, person, toss.player(), toss.date());
    }
    for (Tally tally : record.tallies()) {
      add(months, person, tally.player(), tally.date());
    }
    for (Outing outing : record.outings()) {
      if (outing.pitches() + outing.inningsCaught().orElse(0) > 0) {
        add(months, person, outing.player(), outing.date());
      }
    }
    for (OtherSport other : record.otherSports()) {
      if (other.hours() > 0 && SAME_SPORT.matcher(other.what()).find()) {
        add(months, person, other.player(), other.date());
      }
    }
    months.removeIf(m -> m.isAfter(YearMonth.from(plan.last())));
    return months;
  }

  private static void add(
      Set<YearMonth> months, FinishedPlan.Person person, String player, LocalDate date) {
    if (player.equals(person.id())) {
      months.add(YearMonth.from(date));
    }
  }
}
