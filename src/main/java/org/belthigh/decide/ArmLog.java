package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;

/**
 * What one player threw and caught, day by day, for all teams together, and what a rule book makes
 * of it. All the arithmetic of the pack {@code arm} is here.
 */
final class ArmLog {
  private final Player player;
  private final boolean softball;
  private final Optional<LocalDate> knownTo;
  private final NavigableMap<LocalDate, Integer> pitches;
  private final NavigableMap<LocalDate, Integer> toLastBatter;
  private final NavigableMap<LocalDate, Integer> caught;

  /**
   * @param outings of any player, none later than the day asked about
   */
  ArmLog(Player player, boolean softball, List<Outing> outings) {
    this.player = player;
    this.softball = softball;
    List<Outing> own = outings.stream().filter(o -> o.player().equals(player.id())).toList();
    this.knownTo = own.stream().map(Outing::date).max(Comparator.naturalOrder());
    this.pitches = byDay(own, o -> o.kind().counts() ? o.pitches() : 0);
    this.toLastBatter = byDay(own, o -> o.kind().counts() ? toLastBatter(o) : 0);
    this.caught = byDay(own, o -> o.inningsCaught().orElse(0));
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

  /**
   * Pitches up to the first one to the last batter faced: min(total, before the last batter + 1).
   * Fits every published example of {@code s08}; the formula is ours.
   */
  private static int toLastBatter(Outing outing) {
    return outing.beforeLastBatter().isPresent()
        ? Math.min(outing.pitches(), outing.beforeLastBatter().getAsInt() + 1)
        : outing.pitches();
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
   * The facts of {@code day} under {@code book}.
   *
   * @param held whether a stop on throwing is in force that day
   * @param unreadable whether an outing of the player could not be read
   */
  ArmDay day(RuleBook book, Reckoning reckoning, LocalDate day, boolean held, boolean unreadable) {
    int age = basis(book, reckoning).age(player.born(), day);
    Optional<RuleBook.Band> band = book.band(age);
    Optional<RuleBook.CatcherRules> catcher = book.catcher();
    return new ArmDay(
        player.id(),
        player.firstName(),
        book.organisation(),
        book.id(),
        reckoning,
        day,
        age,
        player.pitches(),
        softball,
        book.inForce(day),
        band.isPresent(),
        rest(book, reckoning, day),
        inARow(day),
        book.consecutiveDays().orElse(ArmDay.NONE),
        thrown(book, reckoning).getOrDefault(day, 0),
        band.map(RuleBook.Band::dailyMax).orElse(0),
        caught.getOrDefault(day, 0),
        catcher.map(RuleBook.CatcherRules::inningsThatBarPitching).orElse(ArmDay.NONE),
        catcher.map(RuleBook.CatcherRules::pitchesThatBarCatching).orElse(ArmDay.NONE),
        catcher.map(c -> c.returnBar(age)).orElse(ArmDay.NONE),
        held,
        unreadable);
  }

  /** What is owed on {@code day} for the outings before it: the rest that ends last. */
  ArmDay.Rest rest(RuleBook book, Reckoning reckoning, LocalDate day) {
    return thrown(book, reckoning).headMap(day).entrySet().stream()
        .map(e -> rest(book, reckoning, e.getKey(), e.getValue()))
        .max(Comparator.comparing(ArmDay.Rest::over).thenComparing(ArmDay.Rest::outing))
        .orElse(ArmDay.Rest.NOT_OWED);
  }

  private ArmDay.Rest rest(RuleBook book, Reckoning reckoning, LocalDate day, int thrown) {
    // the age on the day of pitching: a birthday during the rest does not shorten it
    int age = basis(book, reckoning).age(player.born(), day);
    return ArmDay.Rest.after(day, thrown, book.restDays(age, thrown));
  }

  private NavigableMap<LocalDate, Integer> thrown(RuleBook book, Reckoning reckoning) {
    return reckoning == Reckoning.LAST_BATTER && book.finishTheBatter() ? toLastBatter : pitches;
  }

  private static RuleBook.AgeBasis basis(RuleBook book, Reckoning reckoning) {
    return reckoning == Reckoning.OTHER_AGE ? book.ageBasis().other() : book.ageBasis();
  }

  private int inARow(LocalDate day) {
    int days = 0;
    while (pitches.containsKey(day.minusDays(days + 1L))) {
      days++;
    }
    return days;
  }

  /** The days up to and on {@code on} whose rest is not over by then, against the book's limit. */
  List<PitchedDay> recent(RuleBook book, LocalDate on) {
    return pitches.headMap(on, true).entrySet().stream()
        .filter(e -> rest(book, Reckoning.BOOK, e.getKey(), e.getValue()).over().isAfter(on))
        .map(e -> pitched(book, e.getKey(), e.getValue()))
        .toList();
  }

  private PitchedDay pitched(RuleBook book, LocalDate day, int thrown) {
    int age = book.ageBasis().age(player.born(), day);
    int limit = book.band(age).map(RuleBook.Band::dailyMax).orElse(0);
    return new PitchedDay(player.id(), player.firstName(), book.organisation(), day, thrown, limit);
  }
}
