package org.belthigh.decide;

import java.time.LocalDate;
import java.util.Map;

/**
 * Concluded by a rule of the pack {@code arm}: a day of pitching, seen by the edition in force on
 * it. Public only because the rules are built as a model of their own.
 *
 * @param age on that day: a birthday during the rest does not shorten it
 */
public record PitchedDay(
    String player, String name, Reckoned by, LocalDate date, int pitches, Edition edition, int age)
    implements Figure {
  /** The day of {@code thrown}, judged by {@code edition}. */
  public static PitchedDay of(Pitcher pitcher, Thrown thrown, Reckoned by, Edition edition) {
    return new PitchedDay(
        pitcher.player(),
        pitcher.name(),
        by,
        thrown.date(),
        thrown.pitches(),
        edition,
        edition.age(by.reckoning(), pitcher.born(), thrown.date()));
  }

  @Override
  public void fill(Map<String, Object> slots) {
    slots.put("player", name);
    slots.put("book", edition.name());
    slots.put("date", date);
    slots.put("pitches", pitches);
  }
}
