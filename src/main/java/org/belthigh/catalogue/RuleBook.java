package org.belthigh.catalogue;

import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.belthigh.model.Coded;

/**
 * A published pitch-count table with the rules printed around it.
 *
 * @param id a table id of the safety reference, such as {@code pitch-smart-2018}
 * @param series what editions of one book share, such as {@code pitch-smart}; empty for a book of
 *     which one edition is known
 * @param effectiveFrom first day in force; empty where the copy is undated
 * @param effectiveTo last day in force; empty while it is
 * @param status how much of it was seen in a source text
 * @param bands by age, without gap or overlap, youngest first; none in a book that is {@link
 *     Status#OPEN}
 * @param consecutiveDays most pitching days in a row; empty where the book has no such rule
 * @param appearances most appearances in a few days; empty where the book has no such rule
 * @param sameDay what it says of a second game on one day
 * @param catcher the book's own catcher rules; empty where it has none
 * @param avoidCatching whether it advises pitchers against catching as well
 * @param finishTheBatter which pitches the league leaves out of its own count
 * @param years what it says of twelve months, by age; empty where it says nothing
 * @param limits other numbers, each for a rule that reads it by name
 * @param notes what a reader must know, in English
 */
public record RuleBook(
    String id,
    Optional<String> series,
    String organisation,
    String title,
    String edition,
    Optional<LocalDate> effectiveFrom,
    Optional<LocalDate> effectiveTo,
    AgeBasis ageBasis,
    List<String> sources,
    Status status,
    List<Band> bands,
    OptionalInt consecutiveDays,
    Optional<Appearances> appearances,
    SameDay sameDay,
    Optional<CatcherRules> catcher,
    boolean avoidCatching,
    LegalCount finishTheBatter,
    List<Year> years,
    List<Limit> limits,
    List<String> notes) {

  public RuleBook {
    sources = List.copyOf(sources);
    bands = List.copyOf(bands);
    years = List.copyOf(years);
    limits = List.copyOf(limits);
    notes = List.copyOf(notes);
  }

  /** How much of a book was seen in a source text. */
  public enum Status implements Coded {
    CONFIRMED,
    /** Some rows are from memory; the next confirmed row stands in for each. */
    PARTLY,
    /** That the book exists was read, and no number: nobody pitches by it. */
    OPEN
  }

  /** What a book says of a second game on one day. */
  public enum SameDay implements Coded {
    /** Nothing that was read. */
    UNSAID,
    ALLOWED,
    SHOULD_NOT,
    NOT_ALLOWED
  }

  /** What a league's own count leaves out; the plan always counts every pitch. */
  public enum LegalCount implements Coded {
    EVERY_PITCH {
      @Override
      public int of(int pitches, OptionalInt beforeLastBatter, int dailyMax) {
        return pitches;
      }
    },
    /**
     * Pitches after the first one to the last batter. Fits every published example of {@code s08};
     * the formula is ours.
     */
    TO_LAST_BATTER {
      @Override
      public int of(int pitches, OptionalInt beforeLastBatter, int dailyMax) {
        return beforeLastBatter.isPresent()
            ? Math.min(pitches, beforeLastBatter.getAsInt() + 1)
            : pitches;
      }
    },
    /** Pitches above the daily maximum, where the last batter was begun below it. */
    BOOKED_AT_MAXIMUM {
      @Override
      public int of(int pitches, OptionalInt beforeLastBatter, int dailyMax) {
        return beforeLastBatter.isPresent() && beforeLastBatter.getAsInt() < dailyMax
            ? Math.min(pitches, dailyMax)
            : pitches;
      }
    };

    /**
     * The pitches of one outing that the league counts.
     *
     * @param pitches all that were thrown
     * @param beforeLastBatter those before the last batter; empty where not reported
     * @param dailyMax the most pitches of a day at the pitcher's age
     */
    public abstract int of(int pitches, OptionalInt beforeLastBatter, int dailyMax);
  }

  /**
   * At most so many appearances as pitcher in any so many days running. Each row of the log is one:
   * leaving and coming back in the same game counts twice.
   */
  public record Appearances(int most, int days) {}

  /**
   * What a book says of twelve months, for ages from {@code ageFrom} to {@code ageTo}.
   *
   * @param innings most innings pitched; empty where no number is given
   * @param monthsOff months of the twelve without throwing
   * @param inARow of these, so many running
   */
  public record Year(
      int ageFrom, int ageTo, OptionalInt innings, int monthsOff, int inARow, String source) {
    /** Whether {@code age} in whole years falls into this group. */
    public boolean holds(int age) {
      return age >= ageFrom && age <= ageTo;
    }
  }

  /**
   * Another number of the book, for a rule that reads it by its name.
   *
   * @param what its name, such as a rule's entry lists it: {@code Limit.NAME}
   * @param ageFrom youngest age, in whole years
   * @param ageTo oldest age
   * @param days the stretch of days over which it is counted; 1 for a single day
   * @param most the number
   */
  public record Limit(String what, int ageFrom, int ageTo, int days, int most, String source) {}

  /** Which age picks the band. */
  public enum AgeBasis implements Coded {
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
    },
    /**
     * The division a player is in. A club folder knows no division, so it is taken from the
     * calendar age, which is never above it.
     */
    DIVISION {
      @Override
      public int age(LocalDate born, LocalDate day) {
        return yearsBetween(born, day);
      }

      @Override
      public AgeBasis other() {
        return LEAGUE_AGE;
      }
    },
    /** School grade, taken from the calendar age for the same reason. */
    HIGH_SCHOOL {
      @Override
      public int age(LocalDate born, LocalDate day) {
        return yearsBetween(born, day);
      }

      @Override
      public AgeBasis other() {
        return LEAGUE_AGE;
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
   * @param weeklyMax most pitches in any seven days; empty where the book has no such rule
   * @param rest by pitches thrown, without gap or overlap, fewest first
   */
  public record Band(
      int ageFrom, int ageTo, int dailyMax, OptionalInt weeklyMax, List<RestRow> rest) {
    public Band {
      rest = List.copyOf(rest);
    }

    /** Whether {@code age} in whole years falls into this band. */
    public boolean holds(int age) {
      return age >= ageFrom && age <= ageTo;
    }

    /** The same numbers up to an older age. */
    public Band upTo(int older) {
      return new Band(ageFrom, older, dailyMax, weeklyMax, rest);
    }
  }

  /**
   * Rest owed after so many pitches in a day.
   *
   * @param from fewest pitches
   * @param to most pitches; empty for no upper end
   * @param days full calendar days of rest; the pitching day is not one of them
   * @param confirmed false where the row's own days are not: {@code days} are then those of the
   *     next confirmed row, which asks for as much or more
   */
  public record RestRow(int from, OptionalInt to, int days, boolean confirmed) {
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
   * @param returnPitchesOlder the same for the ages {@code olderFrom} to {@code olderTo} (31)
   * @param olderFrom first age of the higher figure (15)
   * @param olderTo last age of it (16); any other age goes by the stricter one
   */
  public record CatcherRules(
      int pitchesThatBarCatching,
      int inningsThatBarPitching,
      int returnPitches,
      int returnPitchesOlder,
      int olderFrom,
      int olderTo,
      String source) {
    /** The return figure for {@code age} in whole years. */
    public int returnBar(int age) {
      return age >= olderFrom && age <= olderTo ? returnPitchesOlder : returnPitches;
    }
  }

  /** The band for {@code age}; empty for an age without a table, which may not pitch. */
  public Optional<Band> band(int age) {
    return bands.stream().filter(b -> b.holds(age)).findFirst();
  }

  /** Most pitches in a day at {@code age}; empty for an age without a table. */
  public OptionalInt dailyMax(int age) {
    return band(age).stream().mapToInt(Band::dailyMax).findFirst();
  }

  /** Most pitches in any seven days at {@code age}; empty where the book has no such rule. */
  public OptionalInt weeklyMax(int age) {
    return band(age).map(Band::weeklyMax).orElse(OptionalInt.empty());
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

  /** Whether {@link #restDays} rests on a confirmed row of the age's own band. */
  public boolean printsRest(int age, int pitches) {
    return pitches == 0
        || band(age).stream()
            .flatMap(b -> b.rest().stream())
            .anyMatch(row -> row.confirmed() && row.holds(pitches));
  }

  /** What the book says of twelve months at {@code age}. */
  public Optional<Year> year(int age) {
    return years.stream().filter(y -> y.holds(age)).findFirst();
  }

  /** The most days of rest that any row asks for; 0 in a book without numbers. */
  public int longestRest() {
    return bands.stream().flatMap(b -> b.rest().stream()).mapToInt(RestRow::days).max().orElse(0);
  }

  /** Ids of all sources that anything in the book rests on. */
  public List<String> allSources() {
    return Stream.of(
            sources.stream(),
            catcher.map(CatcherRules::source).stream(),
            years.stream().map(Year::source),
            limits.stream().map(Limit::source))
        .flatMap(ids -> ids)
        .toList();
  }

  /** Whether the book's own dates cover {@code day}. */
  public boolean inForce(LocalDate day) {
    return effectiveFrom.filter(day::isBefore).isEmpty()
        && effectiveTo.filter(day::isAfter).isEmpty();
  }
}
