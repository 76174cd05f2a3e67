package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import org.belthigh.model.Problem;

/**
 * Everything the prints of one run say, and nothing they would have to look up.
 *
 * @param paper {@code letter} or {@code a4}
 * @param language the club's own language, for sheets that are not a family's
 * @param from first day that is planned
 * @param weeks 1 to 16
 * @param curriculum id and version, as the footer says them
 * @param ruleBooks ids of the rule books in use, which say the edition, such as {@code
 *     pitch-smart-2018}
 * @param players in roster order
 * @param groups in the club's order
 * @param setAside what was wrong in the input
 */
public record Plan(
    String club,
    String paper,
    String language,
    LocalDate from,
    int weeks,
    String curriculum,
    List<String> ruleBooks,
    List<PlayerPlan> players,
    List<GroupPlan> groups,
    List<Problem> setAside) {
  public Plan {
    ruleBooks = List.copyOf(ruleBooks);
    players = List.copyOf(players);
    groups = List.copyOf(groups);
    setAside = List.copyOf(setAside);
  }
}
