package org.belthigh.catalogue;

import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A published pitch-count table with the rules printed around it.
 *
 * @param id a table id of the safety reference, such as {@code pitch-smart-2018}
 * @param effectiveFrom first day in force; empty where the copy is undated
 * @param effectiveTo last day in force; empty while it is
 * @param status {@code confirmed}, {@code partly}; rows from memory are never applied as confirmed
 * @param bands by age, without gap or overlap, youngest first
 * @param consecutiveDays most pitching days in a row; empty where the book has no such rule
 * @param catcher the book's own catcher rules; empty where it has none
 * @param notes what a reader must know, in English
 */
public record RuleBook(
    String id,
    String organisation,
    String title,
    String edition,
    Optional<LocalDate> effectiveFrom,
    Optional<LocalDate> effectiveTo,
    AgeBasis ageBasis,
    List<String> sources,
    String status,
    List<Band> bands,
    OptionalInt consecutiveDays,
    Optional<CatcherRules> catcher,
    boolean finishTheBatter,
    List<String> notes) {

  public RuleBook {
    sources = List.copyOf(sources);
    bands = List.copyOf(bands);
    notes = List.copyOf(notes);
  }

  /** Which age picks the band. */
  public enum AgeBasis implements org.belthigh.model.Coded {
    /** Calendar age on the day of pitching. */
    ACTUAL {
      @Override
      public int age(LocalDate born, LocalDate day) {
        return yearsBetween(born, day);
      }

      @Override
      public AgeBasis other() {
        return LEAGUE_AGE;
      }
    },
    /**
     * Age on 31 August of the season's year (since 2018); on 30 April before. The season's year is
     * the year of the day of pitching. Source: {@code s09}.
     */
    LEAGUE_AGE {
      @Override
      public int age(LocalDate born, LocalDate day) {
        LocalDate cutOff =
            day.getYear() < 2018
                ? LocalDate.of(day.getYear(), Month.APRIL, 30)
                : LocalDate.of(day.getYear(), Month.AUGUST, 31);
        return yearsBetween(born, cutOff);
      }

      @Override
      public AgeBasis other() {
        return ACTUAL;
      }
    };

    /** Age in whole years of a player born on {@code born}, for pitching on {@code day}. */
    public abstract int age(LocalDate born, LocalDate day);

    /** The basis that other books go by. */
    public abstract AgeBasis other();

    private static int yearsBetween(LocalDate born, LocalDate day) {
      return Period.between(born, day).getYears();
    }
  }

  /**
   * Ages that share a row, both ends included.
   *
   * @param dailyMax most pitches in a day
   * @param rest by pitches thrown, without gap or overlap, fewest first
   */
  public record Band(int ageFrom, int ageTo, int dailyMax, List<RestRow> rest) {
    public Band {
      rest = List.copyOf(rest);
    }

    /** Whether {@code age} in whole years falls into this band. */
    public boolean holds(int age) {
      return age >= ageFrom && age <= ageTo;
    }
  }

  /**
   * Rest owed after so many pitches in a day.
   *
   * @param from fewest pitches
   * @param to most pitches; empty for no upper end
   * @param days full calendar days of rest; the pitching day is not one of them
   */
  public record RestRow(int from, OptionalInt to, int days) {
    /** Whether {@code pitches} falls into this row. */
    public boolean holds(int pitches) {
      return pitches >= from && (to.isEmpty() || pitches <= to.getAsInt());
    }
  }

  /**
   * Who may not catch after pitching, and the reverse, on one day.
   *
   * @param pitchesThatBarCatching this many pitches in a day end catching for that day (41)
   * @param inningsThatBarPitching caught in this many innings, no pitching that day (4)
   * @param returnPitches caught, then pitched this many: no return to catcher that day (21)
   * @param returnPitchesOlder the same for ages 15 and 16 (31)
   */
  public record CatcherRules(
      int pitchesThatBarCatching,
      int inningsThatBarPitching,
      int returnPitches,
      int returnPitchesOlder,
      String source) {
    private static final int OLDER_FROM = 15;

    /** The return figure for {@code age} in whole years. */
    public int returnBar(int age) {
      return age < OLDER_FROM ? returnPitches : returnPitchesOlder;
    }
  }

  /** The band for {@code age}; empty for an age without a table, which may not pitch. */
  public Optional<Band> band(int age) {
    return bands.stream().filter(b -> b.holds(age)).findFirst();
  }

  /**
   * Full calendar days of rest owed by a player who was {@code age} on the day of pitching.
   *
   * <p>Where the age's own band prints no row for so many pitches, or there is no band for the age,
   * the next older row is borrowed, and where none is left, the book's longest rest: the careful
   * reading of a gap, not the book's own words.
   *
   * @param pitches thrown that day, 0 or more; 0 owes nothing
   */
  public int restDays(int age, int pitches) {
    if (pitches == 0) {
      return 0;
    }
    return bands.stream()
        .filter(b -> b.ageTo() >= age)
        .flatMap(b -> b.rest().stream())
        .filter(row -> row.holds(pitches))
        .findFirst()
        .map(RestRow::days)
        .orElseGet(this::longestRest);
  }

  /** The most days of rest that any row asks for. */
  public int longestRest() {
    return bands.stream()
        .flatMap(b -> b.rest().stream())
        .mapToInt(RestRow::days)
        .max()
        .orElseThrow();
  }

  /** Whether the book's own dates cover {@code day}. */
  public boolean inForce(LocalDate day) {
    return effectiveFrom.filter(day::isBefore).isEmpty()
        && effectiveTo.filter(day::isAfter).isEmpty();
  }
}
