package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.intake.Wellness;

/**
 * The health of one child, walked day by day: what is open at the end of each day on which
 * something was reported.
 *
 * <p>A day is lived in one order whatever order its rows stand in: first the words that end
 * complaints of earlier days, then the complaints of the day itself. So a complaint of a
 * clearance's own day is open at its end, and only a row of a later date ends it.
 */
final class HealthDays {
  private static final Set<Wellness.Role> DOCTORS =
      EnumSet.of(
          Wellness.Role.PHYSICIAN,
          Wellness.Role.PHYSICIAN_ASSISTANT,
          Wellness.Role.NURSE_PRACTITIONER,
          Wellness.Role.ATHLETIC_TRAINER);

  private static final Set<Wellness.Kind> GRAVE =
      EnumSet.of(Wellness.Kind.HEAD_INJURY, Wellness.Kind.ARM_PAIN, Wellness.Kind.BACK_PAIN);

  private final TreeMap<LocalDate, List<Wellness>> days = new TreeMap<>();

  /**
   * @param rows of one child, in any order
   */
  HealthDays(List<Wellness> rows) {
    rows.forEach(r -> days.computeIfAbsent(r.date(), d -> new ArrayList<>()).add(r));
  }

  /** An open complaint: its kind, and the first and the last of its days that nobody has ended. */
  record Open(Wellness.Kind kind, LocalDate since, LocalDate last) {
    private Open upTo(Open later) {
      return new Open(kind, since, later.last);
    }
  }

  /** What ends nothing, and why the child's sheets say so: the rule, the day, and whose word. */
  record Idle(String rule, LocalDate date, Optional<Wellness.Role> by) {}

  /** A grave complaint whose clearance was given, and when. */
  record Ended(Wellness.Kind kind, LocalDate on) {}

  /** What is open at the end of {@code day}. */
  List<Open> openAt(LocalDate day) {
    return walk(day);
  }

  /**
   * Complaints after {@code day} and up to {@code last}; none of them has been ended yet then.
   * Empty where {@code last} lies before {@code day}, as a plan with a wrong date may ask.
   */
  List<Open> begunAfter(LocalDate day, LocalDate last) {
    if (last.isBefore(day)) {
      return List.of();
    }
    Map<Wellness.Kind, Open> first = new EnumMap<>(Wellness.Kind.class);
    days.subMap(day, false, last, true)
        .forEach(
            (date, rows) ->
                rows.stream()
                    .map(Wellness::kind)
                    .filter(Wellness.Kind::holds)
                    .forEach(kind -> first.putIfAbsent(kind, new Open(kind, date, date))));
    return List.copyOf(first.values());
  }

  /**
   * Clearances of head, arm or back up to {@code day} by whoever may give them, whether or not the
   * complaint was written down.
   */
  List<Ended> clearedUpTo(LocalDate day) {
    List<Ended> cleared = new ArrayList<>();
    days.headMap(day, true)
        .forEach(
            (date, rows) ->
                rows.forEach(
                    row ->
                        GRAVE.stream()
                            .filter(kind -> ends(row, kind))
                            .forEach(kind -> cleared.add(new Ended(kind, date)))));
    return cleared;
  }

  /** The dates of every complaint of {@code kind}. */
  List<LocalDate> complaints(Wellness.Kind kind) {
    return days.values().stream()
        .flatMap(List::stream)
        .filter(r -> r.kind() == kind)
        .map(Wellness::date)
        .distinct()
        .toList();
  }

  private List<Open> walk(LocalDate last) {
    Map<Wellness.Kind, Open> open = new EnumMap<>(Wellness.Kind.class);
    days.headMap(last, true)
        .forEach(
            (date, rows) -> {
              for (Wellness row : rows) {
                for (Wellness.Kind kind : Set.copyOf(open.keySet())) {
                  if (ends(row, kind)) {
                    open.remove(kind);
                  }
                }
              }
              rows.stream()
                  .map(Wellness::kind)
                  .filter(Wellness.Kind::holds)
                  .forEach(kind -> open.merge(kind, new Open(kind, date, date), Open::upTo));
            });
    return List.copyOf(open.values());
  }

  /** The words up to {@code day} that were to end what is open then, and do not. */
  List<Idle> idleAt(LocalDate day, Open open) {
    List<Idle> idle = new ArrayList<>();
    days.subMap(open.since(), true, day, true)
        .forEach(
            (date, rows) ->
                rows.stream()
                    .filter(r -> !r.kind().holds())
                    .forEach(r -> idle(r, open.kind()).ifPresent(idle::add)));
    return idle;
  }

  private Optional<Idle> idle(Wellness row, Wellness.Kind kind) {
    if (ends(row, kind)) {
      return reported(kind, row.date()) ? Optional.of(sameDay(row)) : Optional.empty();
    }
    if (row.kind() == Wellness.Kind.SYMPTOM_FREE) {
      return Optional.of(new Idle("HLD-012", row.date(), Optional.empty()));
    }
    if (row.clears().equals(Optional.of(kind))) {
      return Optional.of(new Idle("HLD-008", row.date(), row.by()));
    }
    boolean endsAny = Arrays.stream(Wellness.Kind.values()).anyMatch(k -> ends(row, k));
    return endsAny && reported(kind, row.date()) ? Optional.of(sameDay(row)) : Optional.empty();
  }

  private static Idle sameDay(Wellness row) {
    return new Idle("HLD-013", row.date(), Optional.empty());
  }

  private boolean reported(Wellness.Kind kind, LocalDate day) {
    return days.get(day).stream().anyMatch(r -> r.kind() == kind);
  }

  /** The last of the days with less after the latest clearance up to {@code day}, if it is none. */
  Optional<LocalDate> backUntil(LocalDate day, int days) {
    return clearedUpTo(day).stream()
        .map(Ended::on)
        .max(LocalDate::compareTo)
        .map(on -> on.plusDays(days - 1L))
        .filter(last -> !last.isBefore(day));
  }

  private static boolean ends(Wellness row, Wellness.Kind kind) {
    if (row.kind() == Wellness.Kind.SYMPTOM_FREE) {
      return !GRAVE.contains(kind);
    }
    return row.kind() == Wellness.Kind.CLEARED
        && row.clears().equals(Optional.of(kind))
        && row.by().filter(mayEnd(kind)::contains).isPresent();
  }

  /** Whose word ends a complaint of {@code kind}, as the page of the club folder has it. */
  static Set<Wellness.Role> mayEnd(Wellness.Kind kind) {
    Set<Wellness.Role> roles =
        GRAVE.contains(kind) ? EnumSet.copyOf(DOCTORS) : EnumSet.allOf(Wellness.Role.class);
    if (kind == Wellness.Kind.ARM_PAIN || kind == Wellness.Kind.BACK_PAIN) {
      roles.add(Wellness.Role.PHYSICAL_THERAPIST);
    }
    return roles;
  }
}
