package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.AgeBand;
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

  /** What is followed by days with less. */
  private static final List<Wellness.Kind> EASED_BACK =
      List.of(Wellness.Kind.HEAD_INJURY, Wellness.Kind.ARM_PAIN, Wellness.Kind.BACK_PAIN);

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

  /**
   * The stops in force on {@code from}, and those that begin after it, up to {@code last}, by what
   * is dated later. Nothing that is dated after {@code from} loosens a stop.
   */
  public List<Hold> within(ClubRecord record, LocalDate from, LocalDate last) {
    List<Hold> holds = new ArrayList<>(of(record, from));
    for (LocalDate day : from.plusDays(1).datesUntil(last.plusDays(1)).toList()) {
      ClubRecord reported = reportedOn(record, day);
      if (!reported.wellness().isEmpty() || !reported.unread().isEmpty()) {
        of(reported, day).stream()
            .filter(h -> holds.stream().noneMatch(covers(h)))
            .forEach(holds::add);
      }
    }
    return List.copyOf(holds);
  }

  /**
   * Who was cleared not long before {@code on}, by player. Every clearance counts that may end such
   * a complaint, whether or not the complaint was written down.
   */
  public Map<String, Comeback> comebacks(ClubRecord record, LocalDate on) {
    int days = (int) catalogue.parameter("days-after-clearance").on(on).at(AgeBand.AGE_7_8);
    return record.upTo(on).wellness().stream()
        .filter(w -> EASED_BACK.stream().anyMatch(w::ends))
        .map(w -> new Comeback(w.player(), w.date(), w.date().plusDays(days - 1L)))
        .filter(c -> c.on(on))
        .collect(
            Collectors.toMap(
                Comeback::player,
                c -> c,
                BinaryOperator.maxBy(Comparator.comparing(Comeback::cleared))));
  }

  /** What holds and is dated on {@code day}. */
  private static ClubRecord reportedOn(ClubRecord record, LocalDate day) {
    return record.withReports(
        record.outings(),
        record.wellness().stream().filter(w -> w.kind().holds() && w.date().equals(day)).toList(),
        record.unread().stream().filter(u -> u.date().filter(day::equals).isPresent()).toList());
  }

  /** Whether a stop stands for {@code hold} already, for the same cause and without an end. */
  private static Predicate<Hold> covers(Hold hold) {
    return other ->
        other.player().equals(hold.player())
            && other.kind() == hold.kind()
            && other.cause().equals(hold.cause())
            && other.until().isEmpty();
  }

  private static boolean of(Player player, Verdict verdict) {
    String held =
        verdict instanceof HoldVerdict hold
            ? hold.complaint().player()
            : verdict instanceof LostVerdict lost ? lost.report().player() : "";
    return held.equals(player.id());
  }

  /** Reports that are about this player and could not be read. */
  private static List<LostReport> lost(ClubRecord known, Player player, LocalDate on) {
    return known.unread().stream()
        .filter(u -> u.what() == Unread.What.WELLNESS)
        .filter(u -> u.player().filter(player.id()::equals).isPresent())
        .map(u -> new LostReport(player.id(), player.firstName(), u.date().orElse(on)))
        .distinct()
        .sorted(Comparator.comparing(LostReport::date))
        .toList();
  }

  /** Adds the complaint of that kind which is not over, and what was to end it and does not. */
  private static void addFacts(
      Player player, Wellness.Kind kind, List<Wellness> rows, LocalDate on, List<Object> facts) {
    List<LocalDate> open = open(kind, rows);
    if (open.isEmpty()) {
      return;
    }
    LocalDate last = open.get(open.size() - 1);
    facts.add(complaint(player, kind, open.get(0), last, Optional.empty()));
    if (kind == Wellness.Kind.OTHER_PAIN && last.equals(on)) {
      facts.add(complaint(player, kind, on, on, Optional.of(on)));
    }
    facts.addAll(idle(player, kind, rows, open));
  }

  private static Complaint complaint(
      Player player,
      Wellness.Kind kind,
      LocalDate first,
      LocalDate last,
      Optional<LocalDate> until) {
    return new Complaint(player.id(), kind, first, last, until, player.firstName());
  }

  /** Days of the reports that no row of a later day has ended, in order. */
  private static List<LocalDate> open(Wellness.Kind kind, List<Wellness> rows) {
    Optional<LocalDate> ended =
        rows.stream().filter(r -> r.ends(kind)).map(Wellness::date).max(Comparator.naturalOrder());
    return rows.stream()
        .filter(r -> r.kind() == kind)
        .map(Wellness::date)
        .filter(day -> ended.filter(day::isBefore).isEmpty())
        .distinct()
        .sorted()
        .toList();
  }

  private static List<IdleClearance> idle(
      Player player, Wellness.Kind kind, List<Wellness> rows, List<LocalDate> open) {
    return rows.stream()
        .filter(r -> !r.kind().holds() && !r.date().isBefore(open.get(0)))
        .flatMap(r -> why(r, kind, open).stream().map(why -> idle(player, kind, r, why)))
        .distinct()
        .sorted(
            Comparator.comparing(IdleClearance::date)
                .thenComparing(IdleClearance::why)
                .thenComparing(c -> c.by().map(Enum::ordinal).orElse(-1)))
        .toList();
  }

  private static IdleClearance idle(
      Player player, Wellness.Kind kind, Wellness row, IdleClearance.Why why) {
    Optional<Wellness.Role> by = row.by().filter(role -> why == IdleClearance.Why.ROLE);
    return new IdleClearance(player.id(), kind, why, by, row.date(), player.firstName());
  }

  /**
   * Why {@code row} does not end what is {@code open}; empty where it has nothing to do with it.
   */
  private static Optional<IdleClearance.Why> why(
      Wellness row, Wellness.Kind kind, List<LocalDate> open) {
    if (row.meantFor(kind) && !row.ends(kind)) {
      return Optional.of(IdleClearance.Why.ROLE);
    }
    if (row.kind() == Wellness.Kind.SYMPTOM_FREE && !row.ends(kind)) {
      return Optional.of(IdleClearance.Why.SYMPTOM_FREE);
    }
    return open.contains(row.date()) && row.endsAny()
        ? Optional.of(IdleClearance.Why.SAME_DAY)
        : Optional.empty();
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
        Phrase.of("hold.ends." + complaint.kind().id()),
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
    Phrase says = Phrase.of(verdict.rule(), "player", clearance.name(), "date", clearance.date());
    return new Reason(
        verdict.rule(),
        clearance.by().map(by -> says.with("by", Phrase.of("role." + by.id()))).orElse(says));
  }
}
