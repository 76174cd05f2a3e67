package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;

/**
 * One player's date.
 *
 * @param provisional whether it lies after the next checkpoint and may change
 * @param note why the day is as it is, such as a game or a rest day
 */
public record Day(
    LocalDate date, Place place, List<Item> items, boolean provisional, Optional<Phrase> note) {
  public Day {
    items = List.copyOf(items);
  }

  /** Planned hitting work. */
  public int minutes() {
    return items.stream().mapToInt(Item::minutes).sum();
  }

  /** Planned full swings. */
  public int swings() {
    return items.stream().mapToInt(Item::swings).sum();
  }

  /** Full-effort throws that the plan asks for: none, ever; hitting plans ask for no throwing. */
  public int throwsAsked() {
    return 0;
  }
}
