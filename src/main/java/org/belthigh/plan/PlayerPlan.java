package org.belthigh.plan;

import java.util.List;
import java.util.Optional;

/**
 * One player's decisions, holds, days and sheets.
 *
 * @param decisions one per skill, in the order of the skills
 * @param days one entry for every date of the planned weeks
 * @param weeks the planned weeks, first to last
 * @param depends on what the weeks after the first depend; empty where nothing follows it
 * @param card the first week's
 * @param home one sheet per home day of the first week; empty where there is none
 * @param arms one entry for every date of the first week
 * @param log the first week's, blank
 * @param year how many months of the sport are known
 * @param back what became of the plan that was handed out before; empty where none was
 * @param season so far; empty where no season report was asked for
 */
public record PlayerPlan(
    Label who,
    List<DecisionLine> decisions,
    List<HoldLine> holds,
    List<Day> days,
    List<PlannedWeek> weeks,
    Optional<Checkpoint> depends,
    Card card,
    List<HomeSheet> home,
    List<ArmLine> arms,
    OwnLog log,
    SportYear year,
    Optional<LookBack> back,
    Optional<SeasonReport> season) {
  public PlayerPlan {
    decisions = List.copyOf(decisions);
    holds = List.copyOf(holds);
    days = List.copyOf(days);
    weeks = List.copyOf(weeks);
    home = List.copyOf(home);
    arms = List.copyOf(arms);
  }

  /** This plan with a card that others may see: no cause of a hold on it. */
  public PlayerPlan inTheOpen() {
    return new PlayerPlan(
        who,
        decisions,
        holds,
        days,
        weeks,
        depends,
        card.inTheOpen(),
        home,
        arms,
        log,
        year,
        back,
        season);
  }
}
