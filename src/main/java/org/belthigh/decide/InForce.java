package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;

/**
 * Concluded by rules of the pack {@code arm}: the edition of a book by which a day is judged.
 * Public only because the rules are built as a model of their own.
 */
public record InForce(LocalDate day, String books, Edition edition) implements Figure {
  /** That {@code edition} counts on {@code day}. */
  public static InForce on(LocalDate day, Edition edition) {
    return new InForce(day, edition.books(), edition);
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("day", day);
    slots.put("book", edition.name());
    slots.put("edition", edition.title());
  }
}
