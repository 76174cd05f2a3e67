package org.belthigh.decide;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;

/**
 * What one player threw and caught, for all teams, as facts for the rules of the pack {@code arm}.
 */
final class ArmLog {
  private static final int THIRDS = 3;
  private static final int TENTHS = 10;
  private static final int MONTHS = 12;

  private final Player player;
  private final boolean softball;
  private final List<Outing> outings;
  private final List<Outing> pitched;
  private final List<Unread> unread;
  private final Optional<LocalDate> knownTo;
  private final Set<LocalDate> days;

  /**
   * @param outings of that player, none later than the day asked about
   * @param unread reports of any kind that may be about that player and could not be read
   */
  ArmLog(Player player, boolean softball, List<Outing> outings, List<Unread> unread) {
    this.player = player;
    this.softball = softball;
    this.outings = List.copyOf(outings);
    this.unread = List.copyOf(unread);
    this.pitched = outings.stream().filter(o -> o.kind().counts() && o.pitches() > 0).toList();
    this.knownTo = outings.stream().map(Outing::date).max(Comparator.naturalOrder());
    this.days = pitched.stream().map(Outing::date).collect(Collectors.toSet());
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
    return days.stream().max(Comparator.naturalOrder());
  }

  /** Whether anything that is asked of this player may change with the days. */
  boolean throwsAny() {
    return player.pitches() || !days.isEmpty();
  }

  /**
   * Facts of the player and of what was reported.
   *
   * @param on the day asked about, after which nothing is known
   * @param longest days back that a rule about rest or a few days may look
   */
  List<Object> facts(LocalDate on, int longest) {
    List<Object> facts = new ArrayList<>();
    facts.add(
        new Pitcher(player.id(), player.firstName(), player.born(), player.pitches(), softball));
    knownTo.ifPresent(
        date -> facts.add(new Heard(player.id(), date, (int) ChronoUnit.DAYS.between(date, on))));
    LocalDate since = since(on, longest);
    for (int row = 0; row < outings.size(); row++) {
      thrown(facts, row, outings.get(row), since);
      caught(facts, row, outings.get(row), since);
    }
    for (int row = 0; row < unread.size(); row++) {
      unread(facts, row, unread.get(row), on);
    }
    facts.add(year(on));
    return facts;
  }

  /** The first day that matters: no rule looks back behind it, and it cuts no days in a row. */
  private LocalDate since(LocalDate on, int longest) {
    LocalDate since = on.minusDays(longest);
    while (days.contains(since)) {
      since = since.minusDays(1);
    }
    return since;
  }

  private void thrown(List<Object> facts, int row, Outing outing, LocalDate since) {
    if (!outing.kind().counts() || outing.pitches() == 0) {
      return;
    }
    String id = player.id();
    LocalDate date = outing.date();
    facts.add(
        new Appearance(
            row, id, date, thirds(outing.innings()), outing.innings().isEmpty() ? 1 : 0));
    if (!date.isBefore(since)) {
      facts.add(new Outed(row, id, date, outing.pitches(), outing.beforeLastBatter()));
    }
  }

  private void caught(List<Object> facts, int row, Outing outing, LocalDate since) {
    int innings = outing.inningsCaught().orElse(0);
    if (innings > 0 && !outing.date().isBefore(since)) {
      facts.add(new Caught(row, player.id(), outing.date(), innings));
    }
  }

  /**
   * What cannot be read may have been an outing of any length, and a week's or a year's limit may
   * be used up by it: it counts until the file is put right.
   */
  private void unread(List<Object> facts, int row, Unread lost, LocalDate on) {
    facts.add(new Doubtful(player.id()));
    if (lost.what() == Unread.What.OUTING) {
      facts.add(new UnreadOuting(row, player.id(), lost.date().orElse(on)));
    }
  }

  /** Innings with thirds written .1 and .2, in thirds. */
  private static int thirds(OptionalDouble innings) {
    int tenths = (int) Math.round(innings.orElse(0) * TENTHS);
    return tenths / TENTHS * THIRDS + tenths % TENTHS;
  }

  /** The twelve calendar months that end with the one of {@code on}. */
  private ThrowingYear year(LocalDate on) {
    Set<YearMonth> used =
        outings.stream()
            .filter(o -> o.pitches() > 0 || o.inningsCaught().orElse(0) > 0)
            .map(o -> YearMonth.from(o.date()))
            .collect(Collectors.toSet());
    YearMonth last = YearMonth.from(on);
    int months = 0;
    int free = 0;
    int longest = 0;
    for (int back = MONTHS - 1; back >= 0; back--) {
      boolean threw = used.contains(last.minusMonths(back));
      months += threw ? 1 : 0;
      free = threw ? 0 : free + 1;
      longest = Math.max(longest, free);
    }
    return new ThrowingYear(player.id(), months, longest);
  }
}
