package org.belthigh.catalogue;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Numbers of a club's own, each at least as strict as its rule books. They only tighten: over a
 * number that is stricter already they change nothing.
 *
 * @param dailyMax most pitches in a day, by age
 * @param weeklyMax most pitches in any seven days, by age
 * @param restDaysAdded full calendar days on top of the rest that a rule book asks for, 0 or more
 * @param daysInARow most pitching days in a row; empty where the club says nothing
 */
public record Stricter(
    List<Limit> dailyMax, List<Limit> weeklyMax, int restDaysAdded, OptionalInt daysInARow) {
  /** A club without numbers of its own. */
  public static final Stricter NONE = new Stricter(List.of(), List.of(), 0, OptionalInt.empty());

  /** The source that such a number is shown with. */
  public static final String SOURCE = "club-own";

  public Stricter {
    dailyMax = List.copyOf(dailyMax);
    weeklyMax = List.copyOf(weeklyMax);
    if (restDaysAdded < 0) {
      throw new IllegalArgumentException("Rest is never taken off, but added " + restDaysAdded);
    }
  }

  /** At most so many pitches at ages from {@code ageFrom} to {@code ageTo}, both included. */
  public record Limit(int ageFrom, int ageTo, int pitches) {
    private boolean holds(int age) {
      return age >= ageFrom && age <= ageTo;
    }

    /**
     * The first age at which this limit is above what is allowed anyway.
     *
     * @param allowed the most pitches at an age; empty where nothing limits them
     */
    public OptionalInt loosens(IntFunction<OptionalInt> allowed) {
      return IntStream.rangeClosed(ageFrom, ageTo)
          .filter(age -> allowed.apply(age).stream().anyMatch(most -> pitches > most))
          .findFirst();
    }
  }

  /** Whether the club has no number of its own. */
  public boolean isNone() {
    return equals(NONE);
  }

  /**
   * {@code book} with every number of the club that is stricter in place of the book's.
   *
   * @param club who is named for it
   */
  public RuleBook over(RuleBook book, String club) {
    return new RuleBook(
        book.id(),
        book.series(),
        club,
        book.title(),
        book.edition(),
        book.effectiveFrom(),
        book.effectiveTo(),
        book.ageBasis(),
        List.of(SOURCE),
        book.status(),
        book.bands().stream().flatMap(b -> over(b).stream()).toList(),
        least(book.consecutiveDays(), daysInARow),
        book.appearances(),
        book.sameDay(),
        book.catcher(),
        book.avoidCatching(),
        book.finishTheBatter(),
        book.years(),
        book.limits(),
        book.notes());
  }

  /** {@code band}, age by age, with every number of the club that is stricter in place of its. */
  public List<RuleBook.Band> over(RuleBook.Band band) {
    return ages(band).mapToObj(age -> over(band, age)).toList();
  }

  private static IntStream ages(RuleBook.Band band) {
    return IntStream.rangeClosed(band.ageFrom(), band.ageTo());
  }

  private RuleBook.Band over(RuleBook.Band band, int age) {
    return new RuleBook.Band(
        age,
        age,
        least(OptionalInt.of(band.dailyMax()), at(dailyMax, age)).getAsInt(),
        least(band.weeklyMax(), at(weeklyMax, age)),
        band.rest().stream().map(this::over).toList());
  }

  private RuleBook.RestRow over(RuleBook.RestRow row) {
    return new RuleBook.RestRow(row.from(), row.to(), row.days() + restDaysAdded, row.confirmed());
  }

  private static OptionalInt at(List<Limit> limits, int age) {
    return limits.stream().filter(l -> l.holds(age)).mapToInt(Limit::pitches).min();
  }

  private static OptionalInt least(OptionalInt one, OptionalInt other) {
    return IntStream.concat(one.stream(), other.stream()).min();
  }
}
