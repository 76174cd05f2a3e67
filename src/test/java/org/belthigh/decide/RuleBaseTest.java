package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Wellness;
import org.junit.jupiter.api.Test;

class RuleBaseTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 6);

  private static Complaint complaint(String player, Wellness.Kind kind) {
    return new Complaint(player, kind, DAY, DAY, Optional.empty(), player);
  }

  @Test
  void verdicts_come_by_rule_then_in_the_order_of_the_facts() {
    List<Verdict> verdicts =
        RuleBase.shared()
            .fire(
                List.of(
                    complaint("b", Wellness.Kind.ARM_PAIN),
                    complaint("a", Wellness.Kind.HEAD_INJURY),
                    complaint("a", Wellness.Kind.ARM_PAIN)));

    assertThat(verdicts)
        .extracting(v -> v.rule() + " " + ((HoldVerdict) v).complaint().player())
        .containsExactly("HLD-001 a", "HLD-002 b", "HLD-002 a", "HLD-003 b", "HLD-003 a");
  }

  @Test
  void the_same_facts_in_another_order_give_the_same_verdicts() {
    List<Complaint> facts = new ArrayList<>();
    for (Wellness.Kind kind : Wellness.Kind.values()) {
      facts.add(complaint("a", kind));
      facts.add(complaint("b", kind));
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
