package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;
import org.belthigh.catalogue.Stricter;

/**
 * Concluded by a rule of the pack {@code arm}: may the player pitch and catch on the day, by the
 * edition of one book that counts then? Public only because the rules are built as a model of their
 * own.
 *
 * @param age in whole years on the day, by that edition and reckoning
 */
public record Question(
    String player,
    String name,
    boolean listed,
    boolean softball,
    LocalDate day,
    Reckoned by,
    Edition edition,
    int age)
    implements Figure {
  /** What {@code edition} is asked about the day. */
  public static Question of(Pitcher pitcher, LocalDate day, Reckoned by, Edition edition) {
    return new Question(
        pitcher.player(),
        pitcher.name(),
        pitcher.listed(),
        pitcher.softball(),
        day,
        by,
        edition,
        edition.age(by.reckoning(), pitcher.born(), day));
  }

  /** The day before the one that is asked about. */
  public LocalDate dayBefore() {
    return day.minusDays(1);
  }

  /** The same day a year before. */
  public LocalDate aYearBefore() {
    return day.minusYears(1);
  }

  /** Whether the numbers are the club's own stricter ones, not the book's. */
  boolean ofTheClub() {
    return edition.source().equals(Stricter.SOURCE);
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("player", name);
    slots.put("book", edition.name());
    slots.put("edition", edition.title());
    slots.put("day", day);
    slots.put("age", age);
  }
}
