package org.belthigh.lab;

import static java.util.Comparator.comparing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.belthigh.model.Place;

/**
 * What is simulated: who hits, how much, and how well it is written down.
 *
 * @param crossing the week in which a learner reaches the mark, 2 to 12; 0 for any other hitter
 * @param tossesADay counted tosses of each kind on a day, 1 or more
 * @param misread chance that a label is written down as another one, 0 to 1; which one is left to
 *     chance. A zone has nine other labels, a hit one, a field seven
 * @param rhythm the days on which tosses are seen
 */
public record Scenario(Hitter hitter, int crossing, int tossesADay, double misread, Rhythm rhythm) {
  /** First Monday of the simulated season. */
  static final LocalDate FIRST = LocalDate.of(2027, 3, 1);

  /** Weeks of a season. */
  static final int WEEKS = 12;

  private static final int TUESDAY = 1;
  private static final int THURSDAY = 3;
  private static final int SATURDAY = 5;
  private static final int MANY_DAYS = 200;

  /** When and where tosses are seen. */
  public enum Rhythm {
    /** Two practices a week. */
    FIELD,
    /** Two practices a week, and as many tosses again on one day at home. */
    FIELD_AND_HOME,
    /** Every day for half a year; with one toss a day the test is looked at after each toss. */
    DAILY
  }

  /** The days of each rhythm, oldest first. */
  private static final Map<Rhythm, List<Day>> DAYS =
      Map.of(
          Rhythm.FIELD,
          days(List.of(weekly(TUESDAY, Place.FIELD), weekly(THURSDAY, Place.FIELD))),
          Rhythm.FIELD_AND_HOME,
          days(
              List.of(
                  weekly(TUESDAY, Place.FIELD),
                  weekly(THURSDAY, Place.FIELD),
                  weekly(SATURDAY, Place.HOME))),
          Rhythm.DAILY,
          IntStream.range(0, MANY_DAYS).mapToObj(i -> day(i, Place.FIELD)).toList());

  public Scenario {
    boolean learns = hitter == Hitter.LEARNING;
    if (learns ? crossing < 2 || crossing > WEEKS : crossing != 0) {
      throw new IllegalArgumentException(
          "crossing must be 2 to 12 for a learner and 0 for others, but is " + crossing);
    }
    if (tossesADay < 1 || !(misread >= 0 && misread <= 1)) {
      throw new IllegalArgumentException(
          "tossesADay must be 1 or more and misread 0 to 1, not " + tossesADay + ", " + misread);
    }
  }

  /** A careful logger at two practices a week. */
  public static Scenario of(Hitter hitter, int tossesADay) {
    return new Scenario(hitter, 0, tossesADay, 0, Rhythm.FIELD);
  }

  /** A learner who reaches the mark in week {@code crossing}. */
  public static Scenario learning(int crossing, int tossesADay) {
    return new Scenario(Hitter.LEARNING, crossing, tossesADay, 0, Rhythm.FIELD);
  }

  /** The same with a logger who misreads that often. */
  public Scenario misread(double chance) {
    return new Scenario(hitter, crossing, tossesADay, chance, rhythm);
  }

  /** The same on other days. */
  public Scenario on(Rhythm other) {
    return new Scenario(hitter, crossing, tossesADay, misread, other);
  }

  /** A day with tosses. */
  record Day(LocalDate date, int week, Place place) {}

  private static Stream<Day> weekly(int weekday, Place place) {
    return IntStream.range(0, WEEKS).mapToObj(w -> day(7 * w + weekday, place));
  }

  private static Day day(int since, Place place) {
    return new Day(FIRST.plusDays(since), 1 + since / 7, place);
  }

  private static List<Day> days(List<Stream<Day>> days) {
    return days.stream().flatMap(s -> s).sorted(comparing(Day::date)).toList();
  }

  /** The days with tosses, oldest first. */
  List<Day> days() {
    return DAYS.get(rhythm);
  }

  /** Counted days up to and including {@code date}. */
  int daysUntil(LocalDate date) {
    return (int) days().stream().filter(d -> !d.date().isAfter(date)).count();
  }

  /** The Mondays on which decisions are looked at; only the last where no other look is needed. */
  List<LocalDate> looks() {
    if (rhythm == Rhythm.DAILY) {
      return List.of(FIRST.plusDays(MANY_DAYS));
    }
    List<LocalDate> looks = new ArrayList<>();
    for (int week = 1; week <= WEEKS; week++) {
      // a proof keeps its day, so later looks tell it too; a firm-up is seen only when looked for
      boolean needed = week == 1 || week == WEEKS || !hitter.atFloor();
      if (needed && (hitter != Hitter.LEARNING || week == WEEKS)) {
        looks.add(FIRST.plusWeeks(week));
      }
    }
    return looks;
  }

  /** A number of its own for the seed. */
  long salt() {
    long salt = hitter.ordinal();
    salt = 31 * salt + crossing;
    salt = 101 * salt + tossesADay;
    salt = 1009 * salt + Math.round(1000 * misread);
    return 7 * salt + rhythm.ordinal();
  }
}
