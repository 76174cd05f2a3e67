package org.belthigh.plan;

import java.util.List;

/**
 * One player's decisions, holds, days and sheets.
 *
 * @param decisions one per skill, in the order of the skills
 * @param days one entry for every date of the planned weeks
 * @param card the first week's
 * @param home one sheet per home day of the first week; empty where there is none
 * @param year how many months of the sport are known
 */
public record PlayerPlan(
    Label who,
    List<DecisionLine> decisions,
    List<HoldLine> holds,
    List<Day> days,
    Card card,
    List<HomeSheet> home,
    SportYear year) {
  public PlayerPlan {
    decisions = List.copyOf(decisions);
    holds = List.copyOf(holds);
    days = List.copyOf(days);
    home = List.copyOf(home);
  }

  /** This plan with a card that others may see: no cause of a hold on it. */
  public PlayerPlan inTheOpen() {
    return new PlayerPlan(who, decisions, holds, days, card.inTheOpen(), home, year);
  }
}
