package org.belthigh.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;

/**
 * Nothing that a hold of the plan forbids is planned, and every hold that the club folder calls for
 * is there: open complaints, reports that cannot be read, and the rest of pitchers.
 */
final class HoldCheck {
  static final String EVERYTHING = "everything";
  private static final String SWINGING = "swinging";
  private static final String THROWING = "throwing";
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

  private void complaints(FinishedPlan plan, FinishedPlan.Person person, ClubRecord known) {
    boolean lost =
        known.unread().stream()
            .anyMatch(
                u ->
                    u.what() == Unread.What.WELLNESS
                        && u.player().filter(person.id()::equals).isPresent());
    if (lost) {
      wanted(plan, person, "a health report that cannot be read", EVERYTHING, "common-practice");
    }
    List<Wellness> rows =
        known.wellness().stream().filter(w -> w.player().equals(person.id())).toList();
    for (Wellness row : rows) {
      boolean open =
          row.kind().holds()
              && row.kind() != Wellness.Kind.OTHER_PAIN
              && rows.stream().noneMatch(r -> !r.date().isBefore(row.date()) && ends(r, row));
      if (open) {
        stops(plan, person, row);
      }
      if (row.kind() == Wellness.Kind.OTHER_PAIN && row.date().equals(plan.from())) {
        restOfDay(plan, person, row);
      }
    }
  }

  /**
   * The day of the clearance belongs to it; whoever may give it stands in the club folder's page.
   */
  private static boolean ends(Wellness row, Wellness complaint) {
    boolean mild =
        complaint.kind() == Wellness.Kind.ILLNESS || complaint.kind() == Wellness.Kind.OTHER_PAIN;
    return (row.kind() == Wellness.Kind.SYMPTOM_FREE && mild)
        || (row.kind() == Wellness.Kind.CLEARED
            && row.clears().filter(k -> k == complaint.kind()).isPresent()
            && row.by().filter(r -> may(r, complaint.kind())).isPresent());
  }

  private static boolean may(Wellness.Role role, Wellness.Kind kind) {
    boolean clinician =
        switch (role) {
          case PHYSICIAN, PHYSICIAN_ASSISTANT, NURSE_PRACTITIONER, ATHLETIC_TRAINER -> true;
          default -> false;
        };
    return switch (kind) {
      case HEAD_INJURY -> clinician;
      case ARM_PAIN, BACK_PAIN -> clinician || role == Wellness.Role.PHYSICAL_THERAPIST;
      default -> true;
    };
  }

  private void stops(FinishedPlan plan, FinishedPlan.Person person, Wellness row) {
    String what = row.kind().id() + " of " + row.date();
    switch (row.kind()) {
      case ARM_PAIN, BACK_PAIN -> {
        wanted(plan, person, what, THROWING, "s20");
        wanted(plan, person, what, SWINGING, "common-practice");
      }
      default -> wanted(plan, person, what, EVERYTHING, "common-practice");
    }
  }

  private void restOfDay(FinishedPlan plan, FinishedPlan.Person person, Wellness row) {
    if (person.holds().stream()
        .noneMatch(h -> h.stops(EVERYTHING) && h.covers(plan.from(), plan.from()))) {
      findings.broken(
          person.id() + " " + plan.from(),
          "no hold for " + row.kind().id() + " of that day",
          "it stops the day",
          limits.name("common-practice"));
    }
  }

  private void wanted(
      FinishedPlan plan, FinishedPlan.Person person, String cause, String kind, String source) {
    if (person.holds().stream()
        .noneMatch(h -> h.stops(kind) && h.covers(plan.from(), LocalDate.MAX))) {
      findings.broken(
          person.id() + " " + plan.from(),
          "no open hold on " + kind + " for " + cause,
          "it stops until a person who may end it ends it",
          limits.name(source));
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
