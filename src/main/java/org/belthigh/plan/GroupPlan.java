package org.belthigh.plan;

import java.util.List;

/**
 * An age group's sheets of the first week.
 *
 * @param practices by date; the next practice where the first week has none
 */
public record GroupPlan(
    String id,
    String name,
    List<PracticeSheet> practices,
    ArmSheet arms,
    Overview overview,
    List<LogSheet> logs) {
  public GroupPlan {
    practices = List.copyOf(practices);
    logs = List.copyOf(logs);
  }
}
