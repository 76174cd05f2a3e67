package org.belthigh.handout;

import java.util.Locale;
import org.belthigh.handout.kit.Paper;
import org.belthigh.handout.kit.Section;
import org.belthigh.handout.kit.Style;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PracticeSheet;
import org.belthigh.words.Words;

/** Stands in until the team's prints are drawn. */
final class PracticePrint {
  private PracticePrint() {}

  static Section of(Plan plan, GroupPlan group, PracticeSheet sheet, Words words) {
    return Section.of(
        Paper.parse(plan.paper()),
        Style.CLIPBOARD,
        Locale.forLanguageTag(plan.language()),
        words.say("footer.practice", plan.language()),
        flow -> flow.h1(group.name() + " " + sheet.date()));
  }
}
