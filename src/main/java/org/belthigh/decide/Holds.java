package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.WhoEnds;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Phrase;

/** The safety stops that follow from {@code wellness.csv}. Pitchers' rest days: {@link Arms}. */
public final class Holds {
  private static final String DAYS_AFTER = "days-after-clearance";

  private final Catalogue catalogue;
  private final RuleBase rules;

  /** Sources come from {@code catalogue}. */
  public Holds(Catalogue catalogue) {
    this(catalogue, RuleBase.shared());
  }

  /** The stops that other rules would lead to. */
  Holds(Catalogue catalogue, RuleBase rules) {
    this.catalogue = catalogue;
    this.rules = rules;
  }

  /**
   * The stops in force on {@code on}, by what was reported up to the end of that day; in roster
   * order, then by rule. Sore arms and backs give two: throwing and swinging.
   */
  public List<Hold> of(ClubRecord record, LocalDate on) {
    List<Verdict> verdicts = verdicts(record, on);
    List<Hold> holds = new ArrayList<>();
    for (Player player : record.players()) {
      Map<String, List<HoldVerdict>> stops = new TreeMap<>();
      List<LostVerdict> lost = new ArrayList<>();
      for (Verdict verdict : verdicts) {
        if (verdict instanceof HoldVerdict stop && stop.open().player().equals(player.id())) {
          stops.computeIfAbsent(stop.rule(), rule -> new ArrayList<>()).add(stop);
        } else if (verdict instanceof LostVerdict l && l.report().player().equals(player.id())) {
          lost.add(l);
        }
      }
      Stream.concat(
              stops.values().stream().map(stop -> hold(stop, verdicts)),
              lost.stream().map(this::hold))
          .sorted(Comparator.comparing(hold -> hold.because().rule()))
          .forEach(holds::add);
    }
    return List.copyOf(holds);
  }

  /** All that the rules conclude of the reports up to the end of {@code on}, by rule. */
  List<Verdict> verdicts(ClubRecord record, LocalDate on) {
    return rules.fire(facts(record, on));
  }

  /** What was reported up to the end of {@code on}, and who may end what. */
  List<Object> facts(ClubRecord record, LocalDate on) {
    ClubRecord known = record.upTo(on);
    List<Object> facts = new ArrayList<>(whoEnds());
    facts.add(new HealthAsked(on));
    catalogue
        .parameter(DAYS_AFTER)
        .ifAny(on)
        .ifPresent(days -> facts.add(new ComebackDays((int) days.at(AgeBand.AGE_7_8))));
    Map<String, List<Wellness>> reports =
        known.wellness().stream().collect(Collectors.groupingBy(Wellness::player));
    for (Player player : record.players()) {
      reports
          .getOrDefault(player.id(), List.of())
          .forEach(row -> facts.add(fact(player.firstName(), row)));
      facts.addAll(lost(known, player, on));
    }
    return facts;
  }

  private List<Object> whoEnds() {
    WhoEnds table = catalogue.whoEnds();
    List<Object> facts = new ArrayList<>();
    for (Wellness.Kind kind : Wellness.Kind.values()) {
      Stream.of(Wellness.Role.values())
          .filter(role -> table.ends(kind.id(), role.id()))
          .forEach(role -> facts.add(new MayEnd(kind, Optional.of(role))));
      if (table.ends(kind.id(), WhoEnds.SYMPTOM_FREE)) {
        facts.add(new SymptomFreeEnds(kind));
      }
      if (table.easedBack(kind.id())) {
        facts.add(new EasedBack(kind));
      }
    }
    return facts;
  }

  private static Object fact(String name, Wellness row) {
    return switch (row.kind()) {
      case CLEARED ->
          new Clearance(row.player(), name, row.clears().orElse(row.kind()), row.by(), row.date());
      case SYMPTOM_FREE -> new SymptomFree(row.player(), name, row.date());
      default -> new Report(row.player(), name, row.kind(), row.date());
    };
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
   *
   * @throws IllegalArgumentException if our number of days has no value on that day
   */
  public Map<String, Comeback> comebacks(ClubRecord record, LocalDate on) {
    Objects.requireNonNull(catalogue.parameter(DAYS_AFTER).on(on));
    return verdicts(record, on).stream()
        .filter(ComebackVerdict.class::isInstance)
        .map(v -> ((ComebackVerdict) v).comeback())
        .collect(Collectors.toMap(Comeback::player, c -> c));
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

  /** Reports that may be about this player and could not be read. */
  private static List<LostReport> lost(ClubRecord known, Player player, LocalDate on) {
    return known.unread().stream()
        .filter(u -> u.what() == Unread.What.WELLNESS)
        .filter(u -> u.concerns(player.id()))
        .map(u -> new LostReport(player.id(), player.firstName(), u.date().orElse(on)))
        .distinct()
        .sorted(Comparator.comparing(LostReport::date))
        .toList();
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

  /** One stop for all the open reports of a kind: from the first on, and said of the latest. */
  private Hold hold(List<HoldVerdict> stops, List<Verdict> all) {
    List<Open> open =
        stops.stream().map(HoldVerdict::open).sorted(Comparator.comparing(Open::date)).toList();
    HoldVerdict stop = stops.get(0);
    Open first = open.get(0);
    Open last = open.get(open.size() - 1);
    return new Hold(
        first.player(),
        stop.kind(),
        first.date(),
        Optional.of(last.date()).filter(day -> stop.thatDayAlone()),
        new Reason(
            stop.rule(), Phrase.of(stop.rule(), "player", first.name(), "date", last.date())),
        catalogue.rule(stop.rule()).source(),
        Phrase.of("hold.ends." + first.kind().id()),
        Optional.of(first.kind()),
        notes(first, all));
  }

  /** The words that were to end what is open, and do not. */
  private static List<Reason> notes(Open open, List<Verdict> all) {
    return all.stream()
        .filter(ClearanceVerdict.class::isInstance)
        .map(ClearanceVerdict.class::cast)
        .filter(v -> v.player().equals(open.player()) && v.kind() == open.kind())
        .sorted(
            Comparator.comparing(ClearanceVerdict::rule)
                .thenComparing(ClearanceVerdict::date)
                .thenComparing(v -> v.by().map(Enum::ordinal).orElse(-1)))
        .map(Holds::note)
        .toList();
  }

  private static Reason note(ClearanceVerdict word) {
    Phrase says = Phrase.of(word.rule(), "player", word.name(), "date", word.date());
    return new Reason(
        word.rule(),
        word.by().map(by -> says.with("by", Phrase.of("role." + by.id()))).orElse(says));
  }
}
