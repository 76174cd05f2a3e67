package org.belthigh.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;

/**
 * What the pack {@code arm} says of some players on the day asked about, and on each day after it
 * until nothing is left that days alone bring to an end.
 */
final class ArmRun {
  private final RuleBase rules;
  private final LocalDate on;
  private final ArmTables tables;
  private final int askAfter;
  private final Map<String, List<Hold>> holds;
  private final List<ArmLog> logs;
  private final Set<Object> facts = new LinkedHashSet<>();
  private final Map<String, List<LocalDate>> days = new HashMap<>();
  private final Map<Asked, List<ArmVerdict>> verdicts = new HashMap<>();
  private final Map<String, Set<Verdict>> others = new HashMap<>();

  private record Asked(String player, Reckoning reckoning, LocalDate day) {}

  private ArmRun(
      RuleBase rules,
      ClubRecord known,
      List<Player> players,
      LocalDate on,
      List<Editions> books,
      int askAfter,
      List<Hold> holds) {
    this.rules = rules;
    this.on = on;
    this.tables = new ArmTables(books);
    this.askAfter = askAfter;
    this.holds = holds.stream().collect(Collectors.groupingBy(Hold::player));
    Map<String, List<Outing>> outings =
        known.outings().stream().collect(Collectors.groupingBy(Outing::player));
    this.logs =
        players.stream().map(p -> log(known, p, outings.getOrDefault(p.id(), List.of()))).toList();
  }

  /**
   * Runs {@code rules}.
   *
   * @param players who is asked about
   * @param askAfter days without a report after which a pitcher is asked about first
   * @param holds the stops in force on {@code on}
   */
  static ArmRun of(
      RuleBase rules,
      ClubRecord record,
      List<Player> players,
      LocalDate on,
      List<Editions> books,
      int askAfter,
      List<Hold> holds) {
    ArmRun run = new ArmRun(rules, record.upTo(on), players, on, books, askAfter, holds);
    run.ask();
    return run;
  }

  private static ArmLog log(ClubRecord known, Player player, List<Outing> outings) {
    return new ArmLog(
        player,
        known.club().group(player.group()).softball(),
        outings,
        known.unread().stream().filter(u -> u.concerns(player.id())).toList());
  }

  /** Asks about the next days of whoever still waits for a day to come, for a year at most. */
  private void ask() {
    Map<ArmLog, List<LocalDate>> asked = new LinkedHashMap<>();
    for (ArmLog log : logs) {
      LocalDate last = log.throwsAny() ? firstLast(log) : on;
      asked.put(log, on.datesUntil(last.plusDays(1)).toList());
    }
    while (!asked.isEmpty()) {
      fire(asked);
      Map<ArmLog, List<LocalDate>> next = new LinkedHashMap<>();
      for (Map.Entry<ArmLog, List<LocalDate>> one : asked.entrySet()) {
        List<LocalDate> more = more(one.getKey(), one.getValue());
        if (!more.isEmpty()) {
          next.put(one.getKey(), more);
        }
      }
      asked = next;
    }
  }

  /** Far enough for most: where nothing was thrown of late, no rest is owed. */
  private LocalDate firstLast(ArmLog log) {
    boolean lately =
        log.lastPitched().filter(d -> !d.isBefore(on.minusDays(tables.longest()))).isPresent();
    return on.plusDays(lately ? tables.longest() : tables.reach());
  }

  /**
   * The days to ask about after {@code asked}; none where no wait reaches over the last of them.
   */
  private List<LocalDate> more(ArmLog log, List<LocalDate> asked) {
    String player = log.player().id();
    LocalDate last = asked.get(asked.size() - 1);
    LocalDate end = on.plusYears(1);
    return waits(player, last) && last.isBefore(end)
        ? last.plusDays(1).datesUntil(end.plusDays(1)).toList()
        : List.of();
  }

  private boolean waits(String player, LocalDate day) {
    return tables.reckonings().stream()
        .flatMap(r -> verdicts(player, r, day).stream())
        .anyMatch(v -> v.waits() != ArmVerdict.Waits.NOTHING);
  }

  private void fire(Map<ArmLog, List<LocalDate>> asked) {
    List<Object> now = new ArrayList<>(tables.facts());
    now.add(new Today(on));
    now.add(new AskAfter(askAfter));
    Set<LocalDate> dates = new LinkedHashSet<>();
    asked.forEach(
        (log, own) -> {
          days.computeIfAbsent(log.player().id(), p -> new ArrayList<>()).addAll(own);
          now.addAll(log.facts(on, tables.longest()));
          now.addAll(stops(log));
          own.forEach(day -> now.add(new AskedDay(log.player().id(), day)));
          dates.addAll(own);
        });
    now.stream().filter(Outed.class::isInstance).forEach(o -> dates.add(((Outed) o).date()));
    dates.forEach(day -> now.add(new OnDay(day)));
    rules.fire(now).forEach(this::keep);
    facts.addAll(now);
    asked.forEach((log, own) -> own.forEach(day -> requireAnswers(log, day)));
  }

  private List<Stopped> stops(ArmLog log) {
    return holds.getOrDefault(log.player().id(), List.of()).stream()
        .filter(Hold::stopsThrowing)
        .map(h -> new Stopped(h.player(), h.from(), h.until().orElse(LocalDate.MAX)))
        .toList();
  }

  private void keep(Verdict verdict) {
    if (verdict instanceof ArmVerdict arm) {
      Question about = arm.about();
      Asked asked = new Asked(about.player(), about.by().reckoning(), about.day());
      verdicts.computeIfAbsent(asked, k -> new ArrayList<>()).add(arm);
    } else if (verdict instanceof ReportVerdict report) {
      other(report.about().player(), report);
    } else if (verdict instanceof DayVerdict day) {
      other(day.about().player(), day);
    } else if (verdict instanceof YearVerdict year) {
      other(year.about().player(), year);
    }
  }

  private void other(String player, Verdict verdict) {
    others.computeIfAbsent(player, p -> new LinkedHashSet<>()).add(verdict);
  }

  /** Every day, book and reckoning ends with a yes or a no: silence is never taken for a yes. */
  private void requireAnswers(ArmLog log, LocalDate day) {
    for (Object fact : tables.facts()) {
      if (fact instanceof Reckoned by
          && verdicts(log.player().id(), by.reckoning(), day).stream()
              .filter(v -> v.about().by().equals(by))
              .map(ArmVerdict::effect)
              .noneMatch(
                  e -> e == ArmVerdict.Effect.MAY_PITCH || e == ArmVerdict.Effect.NO_PITCHING)) {
        throw new IllegalStateException(
            "No rule says whether player " + log.player().id() + " may pitch on " + day);
      }
    }
  }

  /** What the rules were given. */
  List<Object> facts() {
    return List.copyOf(facts);
  }

  LocalDate on() {
    return on;
  }

  /** In roster order. */
  List<ArmLog> logs() {
    return logs;
  }

  /** Whether a book of the club leaves out pitches to the last batter. */
  boolean lastBatterAsked() {
    return tables.lastBatter();
  }

  /** The days that were judged, the day asked about first. */
  List<LocalDate> days(String player) {
    return days.get(player);
  }

  /** All books' verdicts, by rule. */
  List<ArmVerdict> verdicts(String player, Reckoning reckoning, LocalDate day) {
    return verdicts.getOrDefault(new Asked(player, reckoning, day), List.of());
  }

  private <T extends Verdict> Stream<T> others(String player, Class<T> kind) {
    return others.getOrDefault(player, Set.of()).stream().filter(kind::isInstance).map(kind::cast);
  }

  /** What there is to ask first. */
  List<ReportVerdict> reports(String player) {
    return others(player, ReportVerdict.class).toList();
  }

  /** Days over the limit whose rest is not over, oldest first, in the order of the books. */
  List<DayVerdict> overLimit(String player) {
    return others(player, DayVerdict.class)
        .sorted(
            Comparator.comparing((DayVerdict v) -> v.about().date())
                .thenComparing(v -> v.about().by().order()))
        .toList();
  }

  /** Too little time off in the last twelve months. */
  List<YearVerdict> years(String player) {
    return others(player, YearVerdict.class).toList();
  }
}
