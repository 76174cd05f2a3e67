package org.belthigh.handout;

import java.util.List;
import org.belthigh.handout.kit.Section;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** Stands in until the team's prints are drawn. */
final class ArmPrint {
  private ArmPrint() {}

  static List<Section> of(Plan plan, GroupPlan group, Words words) {
    return List.of();
  }
}
