package org.belthigh.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.model.Phrase;

/**
 * One coordinator, one age group.
 *
 * @param later who has reports dated after the plan's day, without a cause; the first thing said
 * @param rows a row a player
 * @param ahead what is other than usual in the weeks ahead, for the whole group
 * @param provisional from when on the weeks are provisional; empty where nothing follows the first
 * @param totals how many decisions of each kind
 * @param marks how far two people who marked the same tosses agree; empty where nobody did
 * @param setAside what was wrong in the input, as messages say it
 */
public record Overview(
    List<Phrase> later,
    List<Row> rows,
    List<Phrase> ahead,
    Optional<Phrase> provisional,
    Map<Outcome, Integer> totals,
    Optional<Phrase> marks,
    List<String> setAside) {
  public Overview {
    later = List.copyOf(later);
    ahead = List.copyOf(ahead);
    rows = List.copyOf(rows);
    totals = Map.copyOf(totals);
    setAside = List.copyOf(setAside);
  }

  /**
   * One player.
   *
   * @param holds what is on hold and from when free, without the cause
   * @param look why the player needs a look this week; empty where not
   * @param why why each skill is where it is, and how sure that is
   * @param unseen names the skills of which nothing was seen; empty where there are none
   * @param depends on what the weeks after the first depend; empty where nothing follows it
   * @param year how many months of the sport are known
   * @param back what became of the plan that was handed out before; empty where none was
   */
  public record Row(
      Label who,
      List<DecisionLine> decisions,
      List<Phrase> holds,
      Optional<Phrase> look,
      List<Why> why,
      Optional<Phrase> unseen,
      Optional<Phrase> depends,
      SportYear year,
      Optional<LookBack> back) {
    public Row {
      decisions = List.copyOf(decisions);
      holds = List.copyOf(holds);
      why = List.copyOf(why);
    }
  }

  /**
   * One skill of one player.
   *
   * @param sentence the reason, and what would settle it
   * @param readings the shares behind it; none where too little was seen, or nobody judges
   */
  public record Why(Phrase sentence, List<Evidence.Reading> readings) {
    public Why {
      readings = List.copyOf(readings);
    }
  }
}
