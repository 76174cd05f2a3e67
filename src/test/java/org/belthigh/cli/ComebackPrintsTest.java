package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.belthigh.plan.PlanRequest;
import org.junit.jupiter.api.Test;

/**
 * Every print of a club in which a child was cleared the day before: the packet, which others see,
 * has fewer words for that child than its own card, and that is no fault.
 */
class ComebackPrintsTest {
  @Test
  void all_prints_of_a_child_who_comes_back_are_sound() {
    PrintedClub printed =
        PrintedClub.all(
            TinyClub.CATALOGUE,
            TinyClub.record(),
            new PlanRequest(
                LocalDate.of(2027, 4, 5),
                2,
                Set.of(),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                true));

    assertThat(printed.json.path("players").findValuesAsText("kind"))
        .as("a child in the first week after a clearance")
        .contains("back");
    assertThat(printed.said()).isEmpty();
  }
}
