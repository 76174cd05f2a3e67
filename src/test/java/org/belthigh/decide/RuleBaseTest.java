package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.belthigh.intake.Wellness;
import org.junit.jupiter.api.Test;

class RuleBaseTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 6);

  private static Report report(String player, Wellness.Kind kind) {
    return new Report(player, player, kind, DAY);
  }

  @Test
  void verdicts_come_by_rule_then_in_the_order_of_the_facts() {
    List<Verdict> verdicts =
        RuleBase.shared()
            .fire(
                List.of(
                    report("b", Wellness.Kind.ARM_PAIN),
                    report("a", Wellness.Kind.HEAD_INJURY),
                    report("a", Wellness.Kind.ARM_PAIN)));

    assertThat(verdicts)
        .filteredOn(HoldVerdict.class::isInstance)
        .extracting(v -> v.rule() + " " + ((HoldVerdict) v).open().player())
        .containsExactly("HLD-001 a", "HLD-002 b", "HLD-002 a", "HLD-003 b", "HLD-003 a");
  }

  @Test
  void the_same_facts_in_another_order_give_the_same_verdicts() {
    List<Report> facts = new ArrayList<>();
    for (Wellness.Kind kind : Wellness.Kind.values()) {
      facts.add(report("a", kind));
      facts.add(report("b", kind));
    }
    List<Verdict> forwards = RuleBase.shared().fire(facts);
    Collections.reverse(facts);

    assertThat(RuleBase.shared().fire(facts)).containsExactlyInAnyOrderElementsOf(forwards);
  }

  @Test
  void no_facts_give_no_verdicts() {
    assertThat(RuleBase.shared().fire(List.of())).isEmpty();
  }
}
