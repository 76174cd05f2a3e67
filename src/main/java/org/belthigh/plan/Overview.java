package org.belthigh.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.decide.Outcome;
import org.belthigh.model.Phrase;

/**
 * One coordinator, one age group.
 *
 * @param rows a row a player
 * @param totals how many decisions of each kind
 * @param setAside what was wrong in the input, as messages say it
 */
public record Overview(List<Row> rows, Map<Outcome, Integer> totals, List<String> setAside) {
  public Overview {
    rows = List.copyOf(rows);
    totals = Map.copyOf(totals);
    setAside = List.copyOf(setAside);
  }

  /**
   * One player.
   *
   * @param holds what is on hold and from when free, without the cause
   * @param look why the player needs a look this week; empty where not
   * @param why "why isn't X moving on?", one line for each skill that is not moving up
   * @param year how many months of the sport are known
   */
  public record Row(
      Label who,
      List<DecisionLine> decisions,
      List<Phrase> holds,
      Optional<Phrase> look,
      List<Phrase> why,
      SportYear year) {
    public Row {
      decisions = List.copyOf(decisions);
      holds = List.copyOf(holds);
      why = List.copyOf(why);
    }
  }
}
