package org.belthigh.decide;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;

/**
 * What one player threw and caught, day by day, for all teams together, and what a rule book makes
 * of it. All the arithmetic of the pack {@code arm} is here.
 */
final class ArmLog {
  private static final int WEEK = 7;
  private static final int THIRDS = 3;
  private static final int TENTHS = 10;
  private static final int MONTHS = 12;

  private final Player player;
  private final boolean softball;
  private final List<Outing> outings;
  private final List<Outing> pitched;
  private final List<Unread> lost;
  private final Optional<LocalDate> knownTo;
  private final NavigableMap<LocalDate, Integer> pitches;
  private final NavigableMap<LocalDate, Integer> caught;

  /**
   * @param outings of that player, none later than the day asked about
   * @param lost outings that may be that player's and could not be read
   */
  ArmLog(Player player, boolean softball, List<Outing> outings, List<Unread> lost) {
    this.player = player;
    this.softball = softball;
    this.outings = List.copyOf(outings);
    this.lost = List.copyOf(lost);
    this.pitched = outings.stream().filter(o -> o.kind().counts() && o.pitches() > 0).toList();
    this.knownTo = outings.stream().map(Outing::date).max(Comparator.naturalOrder());
    this.pitches = byDay(pitched, Outing::pitches);
    this.caught = byDay(outings, o -> o.inningsCaught().orElse(0));
  }

  private static NavigableMap<LocalDate, Integer> byDay(
      List<Outing> outings, ToIntFunction<Outing> count) {
    NavigableMap<LocalDate, Integer> sums = new TreeMap<>();
    for (Outing outing : outings) {
      int counted = count.applyAsInt(outing);
      if (counted > 0) {
        sums.merge(outing.date(), counted, Integer::sum);
      }
    }
    return sums;
  }

  Player player() {
    return player;
  }

  boolean softball() {
    return softball;
  }

  /** Last day of which anything was reported. */
  Optional<LocalDate> knownTo() {
    return knownTo;
  }

  /** Last day with a counted pitch. */
  Optional<LocalDate> lastPitched() {
    return pitches.isEmpty() ? Optional.empty() : Optional.of(pitches.lastKey());
  }

  /**
   * The facts of {@code day} under a rule book.
   *
   * @param held whether a stop on throwing is in force that day
   * @param unreadable whether an outing of the player could not be read
   */
  ArmDay day(
      Editions editions, Reckoning reckoning, LocalDate day, boolean held, boolean unreadable) {
    RuleBook book = editions.on(day);
    int age = age(book, reckoning, day);
    NavigableMap<LocalDate, Integer> thrown = thrown(editions, reckoning);
    Optional<RuleBook.CatcherRules> catcher = book.catcher();
    return new ArmDay(
        player.id(),
        player.firstName(),
        book.organisation(),
        book.edition(),
        !book.id().equals(editions.book().id()),
        book.sources().stream().findFirst().orElse(""),
        reckoning,
        day,
        age,
        player.pitches(),
        softball,
        book.inForce(day),
        book.status() == RuleBook.Status.OPEN,
        book.band(age).isPresent(),
        rest(editions, reckoning, day),
        inARow(day),
        book.consecutiveDays().orElse(ArmDay.NONE),
        thrown.getOrDefault(day, 0),
        book.dailyMax(age).orElse(0),
        week(book.weeklyMax(age), thrown, day),
        book.appearances().map(a -> appearances(a, day)).orElse(ArmDay.Count.NO_LIMIT),
        innings(book.year(age), day),
        book.sameDay(),
        caught.getOrDefault(day, 0),
        catcher.map(RuleBook.CatcherRules::inningsThatBarPitching).orElse(ArmDay.NONE),
        catcher.map(RuleBook.CatcherRules::pitchesThatBarCatching).orElse(ArmDay.NONE),
        catcher.map(c -> c.returnBar(age)).orElse(ArmDay.NONE),
        book.avoidCatching(),
        held,
        unreadable);
  }

  /** What is owed on {@code day} for the outings before it: the rest that ends last. */
  ArmDay.Rest rest(Editions editions, Reckoning reckoning, LocalDate day) {
    return thrown(editions, reckoning).headMap(day).entrySet().stream()
        .map(e -> rest(editions.on(e.getKey()), reckoning, e.getKey(), e.getValue()))
        .max(Comparator.comparing(ArmDay.Rest::over).thenComparing(ArmDay.Rest::outing))
        .orElse(ArmDay.Rest.NOT_OWED);
  }

  private ArmDay.Rest rest(RuleBook book, Reckoning reckoning, LocalDate day, int thrown) {
    // the age on the day of pitching: a birthday during the rest does not shorten it
    int age = age(book, reckoning, day);
    return ArmDay.Rest.after(day, thrown, book.restDays(age, thrown), book.printsRest(age, thrown));
  }

  private NavigableMap<LocalDate, Integer> thrown(Editions editions, Reckoning reckoning) {
    return reckoning == Reckoning.LAST_BATTER
        ? byDay(pitched, o -> legalCount(editions.on(o.date()), o))
        : pitches;
  }

  private int legalCount(RuleBook book, Outing outing) {
    int dailyMax =
        book.dailyMax(age(book, Reckoning.LAST_BATTER, outing.date())).orElse(outing.pitches());
    return book.finishTheBatter().of(outing.pitches(), outing.beforeLastBatter(), dailyMax);
  }

  private int age(RuleBook book, Reckoning reckoning, LocalDate day) {
    RuleBook.AgeBasis basis = book.ageBasis();
    return (reckoning == Reckoning.OTHER_AGE ? basis.other() : basis).age(player.born(), day);
  }

  private int inARow(LocalDate day) {
    int days = 0;
    while (pitches.containsKey(day.minusDays(days + 1L))) {
      days++;
    }
    return days;
  }

  private static ArmDay.Count week(
      OptionalInt most, NavigableMap<LocalDate, Integer> thrown, LocalDate day) {
    int so =
        thrown.subMap(day.minusDays(WEEK), false, day, true).values().stream()
            .mapToInt(Integer::intValue)
            .sum();
    return new ArmDay.Count(so, most.orElse(ArmDay.NONE), 0);
  }

  /** Every row of the log is an appearance, two games or two turns in one game alike. */
  private ArmDay.Count appearances(RuleBook.Appearances rule, LocalDate day) {
    long so = within(pitched, day.minusDays(rule.days()), day).count();
    return new ArmDay.Count((int) so, rule.most(), 0);
  }

  private ArmDay.Count innings(Optional<RuleBook.Year> year, LocalDate day) {
    int most =
        year.map(RuleBook.Year::innings).orElse(OptionalInt.empty()).stream()
            .map(innings -> innings * THIRDS)
            .findFirst()
            .orElse(ArmDay.NONE);
    LocalDate before = day.minusYears(1);
    int so = within(pitched, before, day).flatMapToInt(o -> thirds(o.innings()).stream()).sum();
    long unwritten = within(pitched, before, day).filter(o -> o.innings().isEmpty()).count();
    long unread = lost.stream().filter(u -> u.date().filter(before::isAfter).isEmpty()).count();
    return new ArmDay.Count(so, most, (int) ((so > 0 ? unwritten : 0) + unread));
  }

  /** Innings with thirds written .1 and .2, in thirds. */
  private static OptionalInt thirds(OptionalDouble innings) {
    if (innings.isEmpty()) {
      return OptionalInt.empty();
    }
    int tenths = (int) Math.round(innings.getAsDouble() * TENTHS);
    return OptionalInt.of(tenths / TENTHS * THIRDS + tenths % TENTHS);
  }

  private static Stream<Outing> within(List<Outing> outings, LocalDate before, LocalDate last) {
    return outings.stream().filter(o -> o.date().isAfter(before) && !o.date().isAfter(last));
  }

  /** The twelve calendar months that end with the one of {@code on}. */
  ThrowingYear year(RuleBook.Year rule, String book, LocalDate on) {
    YearMonth last = YearMonth.from(on);
    int months = 0;
    int free = 0;
    int longest = 0;
    for (int back = MONTHS - 1; back >= 0; back--) {
      boolean used = threwIn(last.minusMonths(back));
      months += used ? 1 : 0;
      free = used ? 0 : free + 1;
      longest = Math.max(longest, free);
    }
    return new ThrowingYear(
        player.id(),
        player.firstName(),
        book,
        months,
        MONTHS - rule.monthsOff(),
        longest,
        rule.inARow());
  }

  private boolean threwIn(YearMonth month) {
    return outings.stream()
        .filter(o -> YearMonth.from(o.date()).equals(month))
        .anyMatch(o -> o.pitches() > 0 || o.inningsCaught().orElse(0) > 0);
  }

  /** The days up to and on {@code on} whose rest is not over by then, against the book's limit. */
  List<PitchedDay> recent(Editions editions, LocalDate on) {
    return pitches.headMap(on, true).entrySet().stream()
        .filter(
            e ->
                rest(editions.on(e.getKey()), Reckoning.BOOK, e.getKey(), e.getValue())
                    .over()
                    .isAfter(on))
        .flatMap(e -> pitched(editions.on(e.getKey()), e.getKey(), e.getValue()).stream())
        .toList();
  }

  /** The day against the limit; none where no number is confirmed. */
  private Optional<PitchedDay> pitched(RuleBook book, LocalDate day, int thrown) {
    if (book.status() == RuleBook.Status.OPEN) {
      return Optional.empty();
    }
    int limit = book.dailyMax(age(book, Reckoning.BOOK, day)).orElse(0);
    return Optional.of(
        new PitchedDay(player.id(), player.firstName(), book.organisation(), day, thrown, limit));
  }
}
