package org.belthigh.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;

/**
 * The holds that a child's health reports call for in the planned weeks: those of what is open on
 * the first day, and of what is dated inside the weeks and not held for already.
 */
final class HealthDue {
  private static final String EVERYTHING = HoldCheck.EVERYTHING;
  private static final String THROWING = "throwing";
  private static final String SWINGING = "swinging";
  private static final String LOST = "HLD-009";
  private static final String THAT_DAY = "HLD-007";

  private record Speaks(String rule, String kind) {}

  private static final Map<Wellness.Kind, List<Speaks>> RULES =
      Map.of(
          Wellness.Kind.HEAD_INJURY, List.of(new Speaks("HLD-001", EVERYTHING)),
          Wellness.Kind.ARM_PAIN,
              List.of(new Speaks("HLD-002", THROWING), new Speaks("HLD-003", SWINGING)),
          Wellness.Kind.BACK_PAIN,
              List.of(new Speaks("HLD-004", THROWING), new Speaks("HLD-005", SWINGING)),
          Wellness.Kind.ILLNESS, List.of(new Speaks("HLD-006", EVERYTHING)),
          Wellness.Kind.OTHER_PAIN,
              List.of(new Speaks("HLD-010", THROWING), new Speaks("HLD-011", SWINGING)));

  private final LocalDate from;
  private final LocalDate last;

  /** For weeks from {@code from} to {@code last}, both included. */
  HealthDue(LocalDate from, LocalDate last) {
    this.from = from;
    this.last = last;
  }

  /**
   * @param unread health reports that may be this child's and could not be read
   */
  List<HoldDue> of(HealthDays health, List<Unread> unread) {
    List<HoldDue> due = new ArrayList<>();
    List<HealthDays.Open> open = health.openAt(from);
    open.forEach(o -> due.addAll(open(o)));
    health.begunAfter(from, last).stream()
        .filter(o -> open.stream().noneMatch(before -> before.kind() == o.kind()))
        .forEach(o -> due.addAll(open(o)));
    restedDays(health, open).forEach(due::add);
    lost(unread).forEach(due::add);
    return due;
  }

  private static List<HoldDue> open(HealthDays.Open open) {
    return RULES.get(open.kind()).stream()
        .map(s -> due(s.kind(), s.rule(), open.since(), Optional.empty(), open.kind().id()))
        .toList();
  }

  /** Something that hurts stops all on its own day, if that is a planned one. */
  private List<HoldDue> restedDays(HealthDays health, List<HealthDays.Open> open) {
    boolean openNow = open.stream().anyMatch(o -> o.kind() == Wellness.Kind.OTHER_PAIN);
    return health.complaints(Wellness.Kind.OTHER_PAIN).stream()
        .filter(d -> d.isAfter(from) ? !d.isAfter(last) : d.equals(from) && openNow)
        .map(d -> due(EVERYTHING, THAT_DAY, d, Optional.of(d), Wellness.Kind.OTHER_PAIN.id()))
        .toList();
  }

  /** Each day up to the first one of which a report was lost; after it, the first day alone. */
  private List<HoldDue> lost(List<Unread> unread) {
    TreeSet<LocalDate> days = new TreeSet<>();
    unread.forEach(u -> days.add(u.date().orElse(from)));
    List<LocalDate> held = new ArrayList<>(days.headSet(from, true));
    if (held.isEmpty()) {
      days.subSet(from, false, last, true).stream().limit(1).forEach(held::add);
    }
    return held.stream()
        .map(d -> due(EVERYTHING, LOST, d, Optional.empty(), "a report that cannot be read"))
        .toList();
  }

  private static HoldDue due(
      String kind, String rule, LocalDate from, Optional<LocalDate> until, String why) {
    return new HoldDue(kind, Optional.of(rule), from, until, why);
  }
}
