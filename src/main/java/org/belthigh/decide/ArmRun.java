package org.belthigh.decide;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;

/**
 * One run of the pack {@code arm}: every player, under every book and reckoning, on the day asked
 * about and on each day after it on which rest may still be owed.
 */
final class ArmRun {
  /** A run of pitching days that ends on the day asked about keeps a pitcher back for one more. */
  private static final int DAYS_AFTER = 2;

  private static final int WEEK = 7;

  private final LocalDate on;
  private final List<Editions> books;
  private final List<Hold> holds;
  private final ClubRecord known;
  private final List<ArmLog> logs;
  private final Map<String, List<LocalDate>> days = new HashMap<>();
  private final Map<Asked, List<ArmVerdict>> verdicts = new HashMap<>();
  private final Map<String, List<ReportVerdict>> reports = new HashMap<>();
  private final Map<String, List<DayVerdict>> overLimit = new HashMap<>();
  private final Map<String, List<YearVerdict>> years = new HashMap<>();
  private final List<Object> facts;

  private record Asked(String player, Reckoning reckoning, LocalDate day) {}

  private ArmRun(
      ClubRecord known, LocalDate on, List<Editions> books, int askAfter, List<Hold> holds) {
    this.known = known;
    this.on = on;
    this.books = books;
    this.holds = holds;
    Map<String, List<Outing>> outings =
        known.outings().stream().collect(Collectors.groupingBy(Outing::player));
    this.logs =
        known.players().stream().map(p -> log(p, outings.getOrDefault(p.id(), List.of()))).toList();
    this.facts = List.copyOf(gathered(askAfter));
  }

  /**
   * Runs {@code rules}.
   *
   * @param askAfter days without a report after which a pitcher is asked about first
   * @param holds the stops in force on {@code on}
   */
  static ArmRun of(
      RuleBase rules,
      ClubRecord record,
      LocalDate on,
      List<Editions> books,
      int askAfter,
      List<Hold> holds) {
    ArmRun run = new ArmRun(record.upTo(on), on, books, askAfter, holds);
    rules.fire(run.facts).forEach(run::keep);
    run.facts.stream().filter(ArmDay.class::isInstance).forEach(f -> run.requireAnswer((ArmDay) f));
    return run;
  }

  private List<Object> gathered(int askAfter) {
    List<Object> gathered = new ArrayList<>();
    for (ArmLog log : logs) {
      gathered.addAll(days(log));
      gathered.add(lastReport(log, askAfter));
      year(log).ifPresent(gathered::add);
      books.forEach(book -> gathered.addAll(log.recent(book, on)));
    }
    return gathered;
  }

  /** What the rules were given. */
  List<Object> facts() {
    return facts;
  }

  private ArmLog log(Player player, List<Outing> outings) {
    boolean softball = known.club().group(player.group()).softball();
    List<Unread> lost = unread(Unread.What.OUTING).filter(u -> u.concerns(player.id())).toList();
    return new ArmLog(player, softball, outings, lost);
  }

  private List<ArmDay> days(ArmLog log) {
    List<ArmDay> facts = new ArrayList<>();
    boolean throwsAny = log.player().pitches() || log.lastPitched().isPresent();
    LocalDate last = throwsAny ? last(log) : on;
    List<LocalDate> own = on.datesUntil(last.plusDays(1)).toList();
    days.put(log.player().id(), own);
    for (LocalDate day : own) {
      for (Editions book : books) {
        for (Reckoning reckoning : Reckoning.values()) {
          if (reckoning != Reckoning.LAST_BATTER || lastBatterAsked()) {
            facts.add(log.day(book, reckoning, day, held(log, day), unreadable(log)));
          }
        }
      }
    }
    return facts;
  }

  /** The last day that can still be a day of rest, and a day on which it is over. */
  private LocalDate last(ArmLog log) {
    LocalDate last = on.plusDays(DAYS_AFTER);
    for (Editions book : books) {
      last = later(last, on.plusDays(reach(book.book())));
      for (Reckoning reckoning : Reckoning.values()) {
        last = later(last, log.rest(book, reckoning, on.plusDays(1)).over());
      }
    }
    return later(last, inningsOver(log));
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  /** How many days after the last outing a rule of the book may still bar pitching. */
  private static int reach(RuleBook book) {
    boolean weekly = book.bands().stream().anyMatch(b -> b.weeklyMax().isPresent());
    return Math.max(
        weekly ? WEEK : 0, book.appearances().map(RuleBook.Appearances::days).orElse(0));
  }

  /** The first day on which the innings of twelve months leave room again. */
  private LocalDate inningsOver(ArmLog log) {
    LocalDate end = on.plusYears(1);
    return on.datesUntil(end).filter(day -> roomForInnings(log, day)).findFirst().orElse(end);
  }

  private boolean roomForInnings(ArmLog log, LocalDate day) {
    return books.stream()
        .flatMap(
            book ->
                Stream.of(Reckoning.BOOK, Reckoning.OTHER_AGE)
                    .map(r -> log.day(book, r, day, false, false)))
        .noneMatch(ArmDay::inningsFull);
  }

  /** The arm's last twelve months, by the first book of the club that asks for months off. */
  private Optional<ThrowingYear> year(ArmLog log) {
    return books.stream()
        .map(book -> book.on(on))
        .filter(book -> !log.softball())
        .flatMap(
            book ->
                book.year(book.ageBasis().age(log.player().born(), on)).stream()
                    .map(rule -> log.year(rule, book.organisation(), on)))
        .findFirst();
  }

  private boolean held(ArmLog log, LocalDate day) {
    return holds.stream()
        .filter(h -> h.player().equals(log.player().id()))
        .anyMatch(h -> h.stopsThrowing() && h.holds(day));
  }

  /**
   * Whether an outing that may be the player's could not be read. It may have been of any length,
   * and a week's or a year's limit may be used up by it: it bars until the file is put right.
   */
  private boolean unreadable(ArmLog log) {
    return unread(Unread.What.OUTING).anyMatch(u -> u.concerns(log.player().id()));
  }

  /** Whether a report that may still hold the player on the day asked about could not be read. */
  private boolean lost(ArmLog log) {
    return known.unread().stream().anyMatch(u -> u.concerns(log.player().id()));
  }

  private Stream<Unread> unread(Unread.What what) {
    return known.unread().stream().filter(u -> u.what() == what);
  }

  private LastReport lastReport(ArmLog log, int askAfter) {
    Optional<LocalDate> knownTo = log.knownTo();
    LocalDate date = knownTo.orElse(on);
    return new LastReport(
        log.player().id(),
        log.player().firstName(),
        log.player().pitches(),
        knownTo.isPresent(),
        date,
        (int) ChronoUnit.DAYS.between(date, on),
        askAfter,
        lost(log));
  }

  private void keep(Verdict verdict) {
    if (verdict instanceof ArmVerdict arm) {
      ArmDay about = arm.about();
      Asked asked = new Asked(about.player(), about.reckoning(), about.day());
      verdicts.computeIfAbsent(asked, k -> new ArrayList<>()).add(arm);
    } else if (verdict instanceof ReportVerdict report) {
      reports.computeIfAbsent(report.about().player(), k -> new ArrayList<>()).add(report);
    } else if (verdict instanceof DayVerdict day) {
      overLimit.computeIfAbsent(day.about().player(), k -> new ArrayList<>()).add(day);
    } else if (verdict instanceof YearVerdict year) {
      years.computeIfAbsent(year.about().player(), k -> new ArrayList<>()).add(year);
    }
  }

  /** Every day and book ends with a yes or with a no: silence is never taken for a yes. */
  private void requireAnswer(ArmDay fact) {
    boolean answered =
        verdicts(fact.player(), fact.reckoning(), fact.day()).stream()
            .filter(v -> v.about().equals(fact))
            .map(ArmVerdict::effect)
            .anyMatch(e -> e == ArmVerdict.Effect.MAY_PITCH || e == ArmVerdict.Effect.NO_PITCHING);
    if (!answered) {
      throw new IllegalStateException(
          "No rule says whether player " + fact.player() + " may pitch on " + fact.day());
    }
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
    return books.stream()
        .flatMap(e -> e.newestFirst().stream())
        .anyMatch(b -> b.finishTheBatter() != RuleBook.LegalCount.EVERY_PITCH);
  }

  /** The days that were judged, the day asked about first. */
  List<LocalDate> days(String player) {
    return days.get(player);
  }

  /** All books' verdicts, by rule. */
  List<ArmVerdict> verdicts(String player, Reckoning reckoning, LocalDate day) {
    return verdicts.getOrDefault(new Asked(player, reckoning, day), List.of());
  }

  /** What there is to ask first. */
  List<ReportVerdict> reports(String player) {
    return reports.getOrDefault(player, List.of());
  }

  /** Days over the limit whose rest is not over, oldest first. */
  List<DayVerdict> overLimit(String player) {
    return overLimit.getOrDefault(player, List.of()).stream()
        .sorted(Comparator.comparing(v -> v.about().date()))
        .toList();
  }

  /** Too little time off in the last twelve months. */
  List<YearVerdict> years(String player) {
    return years.getOrDefault(player, List.of());
  }
}
