package org.belthigh.plan;

import java.util.List;

/**
 * An age group's sheets of the first week.
 *
 * @param practices by date; the next practice where the first week has none
 * @param evaluation the next evaluation day, or a sheet without a day
 * @param emergency one a place
 * @param guides one for each language of the families
 */
public record GroupPlan(
    String id,
    String name,
    List<PracticeSheet> practices,
    ArmSheet arms,
    Overview overview,
    List<LogSheet> logs,
    EvaluationSheet evaluation,
    List<EmergencySheet> emergency,
    List<Guide> guides) {
  public GroupPlan {
    practices = List.copyOf(practices);
    logs = List.copyOf(logs);
    emergency = List.copyOf(emergency);
    guides = List.copyOf(guides);
  }
}
