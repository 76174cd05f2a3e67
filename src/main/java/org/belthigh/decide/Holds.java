package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Phrase;

/** The safety stops that follow from {@code wellness.csv}. Pitchers' rest days: {@link Arms}. */
public final class Holds {
  private static final List<Wellness.Kind> COMPLAINTS =
      List.of(
          Wellness.Kind.HEAD_INJURY,
          Wellness.Kind.ARM_PAIN,
          Wellness.Kind.BACK_PAIN,
          Wellness.Kind.ILLNESS,
          Wellness.Kind.OTHER_PAIN);

  private final Catalogue catalogue;

  /** Sources come from {@code catalogue}. */
  public Holds(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The stops in force on {@code on}, by what was reported up to the end of that day; in roster
   * order, then by rule. Sore arms and backs give two: throwing and swinging.
   */
  public List<Hold> of(ClubRecord record, LocalDate on) {
    ClubRecord known = record.upTo(on);
    Map<String, List<Wellness>> reports =
        known.wellness().stream().collect(Collectors.groupingBy(Wellness::player));
    List<Object> facts = new ArrayList<>();
    for (Player player : record.players()) {
      List<Wellness> rows =
          reports.getOrDefault(player.id(), List.of()).stream()
              .sorted(Comparator.comparing(Wellness::date))
              .toList();
      COMPLAINTS.forEach(kind -> addFacts(player, kind, rows, on, facts));
      facts.addAll(lost(known, player, on));
    }
    List<Verdict> verdicts = RuleBase.shared().fire(facts);
    return record.players().stream()
        .flatMap(p -> verdicts.stream().filter(v -> of(p, v)).map(v -> hold(v, verdicts)))
        .toList();
  }

  private static boolean of(Player player, Verdict verdict) {
    String held =
        verdict instanceof HoldVerdict hold
            ? hold.complaint().player()
            : verdict instanceof LostVerdict lost ? lost.report().player() : "";
    return held.equals(player.id());
  }

  /** Reports that may be about this player and could not be read. */
  private static List<LostReport> lost(ClubRecord known, Player player, LocalDate on) {
    return known.unread().stream()
        .filter(u -> u.what() == Unread.What.WELLNESS)
        .filter(u -> u.concerns(player.id()))
        .map(u -> new LostReport(player.id(), player.firstName(), u.date().orElse(on)))
        .distinct()
        .toList();
  }

  /** Adds the complaint of that kind which is not over on {@code on}, and idle clearances of it. */
  private static void addFacts(
      Player player, Wellness.Kind kind, List<Wellness> rows, LocalDate on, List<Object> facts) {
    List<LocalDate> reports =
        rows.stream().filter(r -> r.kind() == kind).map(Wellness::date).toList();
    List<LocalDate> open = open(kind, reports, lastEnd(kind, rows));
    if (!open.isEmpty()) {
      LocalDate first = open.get(0);
      LocalDate last = open.get(open.size() - 1);
      facts.add(
          new Complaint(player.id(), kind, first, last, Optional.empty(), player.firstName()));
      facts.addAll(idle(player, kind, rows, first));
    } else if (reports.contains(on)) {
      facts.add(new Complaint(player.id(), kind, on, on, Optional.of(on), player.firstName()));
    }
  }

  /** The reports that nobody has ended. Other pain is over by itself the next day. */
  private static List<LocalDate> open(
      Wellness.Kind kind, List<LocalDate> reports, Optional<LocalDate> ended) {
    if (kind == Wellness.Kind.OTHER_PAIN) {
      return List.of();
    }
    return reports.stream().filter(day -> ended.map(day::isAfter).orElse(true)).toList();
  }

  private static Optional<LocalDate> lastEnd(Wellness.Kind kind, List<Wellness> rows) {
    return rows.stream()
        .filter(r -> Clearances.ends(r, kind))
        .map(Wellness::date)
        .max(Comparator.naturalOrder());
  }

  private static List<IdleClearance> idle(
      Player player, Wellness.Kind kind, List<Wellness> rows, LocalDate first) {
    return rows.stream()
        .filter(r -> Clearances.tries(r, kind) && !Clearances.ends(r, kind))
        .filter(r -> !r.date().isBefore(first) && r.by().isPresent())
        .map(
            r ->
                new IdleClearance(
                    player.id(), kind, r.by().orElseThrow(), r.date(), player.firstName()))
        .toList();
  }

  private Hold hold(Verdict verdict, List<Verdict> all) {
    return verdict instanceof LostVerdict lost ? hold(lost) : hold((HoldVerdict) verdict, all);
  }

  private Hold hold(LostVerdict lost) {
    LostReport report = lost.report();
    return new Hold(
        report.player(),
        lost.kind(),
        report.date(),
        Optional.empty(),
        new Reason(
            lost.rule(), Phrase.of(lost.rule(), "player", report.name(), "date", report.date())),
        catalogue.rule(lost.rule()).source(),
        Phrase.of("hold.ends.lost"),
        Optional.empty(),
        List.of());
  }

  private Hold hold(HoldVerdict held, List<Verdict> all) {
    Complaint complaint = held.complaint();
    return new Hold(
        complaint.player(),
        held.kind(),
        complaint.first(),
        complaint.until(),
        new Reason(
            held.rule(),
            Phrase.of(held.rule(), "player", complaint.name(), "date", complaint.last())),
        catalogue.rule(held.rule()).source(),
        Clearances.whoEnds(complaint.kind()),
        Optional.of(complaint.kind()),
        notes(complaint, all));
  }

  private static List<Reason> notes(Complaint complaint, List<Verdict> all) {
    return all.stream()
        .filter(v -> v instanceof ClearanceVerdict)
        .map(v -> (ClearanceVerdict) v)
        .filter(v -> v.clearance().player().equals(complaint.player()))
        .filter(v -> v.clearance().kind() == complaint.kind())
        .map(Holds::note)
        .toList();
  }

  private static Reason note(ClearanceVerdict verdict) {
    IdleClearance clearance = verdict.clearance();
    return new Reason(
        verdict.rule(),
        Phrase.of(
            verdict.rule(),
            "player",
            clearance.name(),
            "date",
            clearance.date(),
            "by",
            Phrase.of("role." + clearance.by().id())));
  }
}
