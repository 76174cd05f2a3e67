package org.belthigh.plan;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.model.Phrase;

/**
 * The twelve calendar months up to the last planned one, by what is known of one player's baseball
 * or softball. A month of which nothing was written down is not known to be free: it is not
 * counted, and the remark says so.
 *
 * @param first the first of the twelve
 * @param last the twelfth
 * @param known months with baseball in them; 0 to 12
 * @param most what the published guidance allows; 1 to 12
 * @param source of the guidance, as sheets name it
 */
public record SportYear(YearMonth first, YearMonth last, int known, int most, String source) {
  private static final int MONTHS = 12;

  /** Words by which {@code other.csv} names the same sport for another team. */
  private static final List<String> SAME_SPORT =
      List.of("baseball", "softball", "t-ball", "tee ball", "béisbol", "beisbol", "sóftbol");

  public SportYear {
    if (known < 0 || known > MONTHS || most < 1 || most > MONTHS) {
      throw new IllegalArgumentException("Months of a year: " + known + " of " + most);
    }
  }

  /**
   * What is known of {@code player}: the club's season and calendar, drill logs, outings of every
   * team, baseball among the other sport, and the days of the plan itself.
   *
   * @param record as known on the first planned day
   * @param days what is planned
   */
  static SportYear of(
      ClubRecord record,
      Season season,
      Player player,
      Collection<Day> days,
      PlanRequest request,
      Doses doses) {
    YearMonth last = YearMonth.from(request.last());
    YearMonth first = last.minusMonths(MONTHS - 1L);
    Set<YearMonth> known = new HashSet<>();
    Stream.of(
            record.club().seasonFirst().datesUntil(record.club().seasonLast().plusDays(1)),
            season.sportDays(),
            days.stream().filter(d -> !d.items().isEmpty()).map(Day::date),
            written(record, player.id()))
        .flatMap(s -> s)
        .filter(d -> !d.isAfter(request.last()))
        .map(YearMonth::from)
        .filter(m -> !m.isBefore(first))
        .forEach(known::add);
    return new SportYear(
        first,
        last,
        known.size(),
        doses.sportMonthsPerYear(player.ageOn(request.from())),
        doses.sportMonthsSource());
  }

  /** Days on which a file of the club has this player at the sport. */
  private static Stream<LocalDate> written(ClubRecord record, String player) {
    return Stream.of(
            record.tosses().stream().filter(t -> t.player().equals(player)).map(t -> t.date()),
            record.tallies().stream().filter(t -> t.player().equals(player)).map(t -> t.date()),
            record.outings().stream()
                .filter(o -> o.player().equals(player) && played(o))
                .map(Outing::date),
            record.otherSports().stream()
                .filter(o -> o.player().equals(player) && o.hours() > 0 && sameSport(o.what()))
                .map(o -> o.date()))
        .flatMap(s -> s);
  }

  /** A report of no pitches may stand for a game that was rained out. */
  private static boolean played(Outing outing) {
    return outing.pitches() > 0 || outing.inningsCaught().orElse(0) > 0;
  }

  private static boolean sameSport(String what) {
    String lower = what.toLowerCase(Locale.ROOT);
    return SAME_SPORT.stream().anyMatch(lower::contains);
  }

  /** Whether more months are known than the guidance allows. */
  public boolean passed() {
    return known > most;
  }

  /** What to tell the coordinator; empty where the guidance is not known to be passed. */
  public Optional<Phrase> remark() {
    return passed()
        ? Optional.of(
            Phrase.of(
                "year.passed",
                "known",
                known,
                "first",
                first.atDay(1),
                "last",
                last.atDay(1),
                "most",
                most))
        : Optional.empty();
  }
}
