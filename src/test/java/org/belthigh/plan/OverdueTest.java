package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.history.Handed;
import org.belthigh.history.History;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;

class OverdueTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  private static final DrillChoice CHOICE =
      new DrillChoice(
          CatalogueLoader.load().orThrow().curricula().get("belthigh-2027"), Map.of(), false);

  private static Handed week(int week, String... drills) {
    LocalDate from = FIRST.plusWeeks(week);
    return new Handed(
        from,
        Stream.of(drills).map(d -> new Handed.Session(from, "a1", "field", d, 12, 0, 8)).toList(),
        List.of());
  }

  private static List<Skill> overdue(Handed... plans) {
    return Overdue.of(History.of(List.of(plans)), "a1", FIRST, CHOICE);
  }

  @Test
  void a_skill_is_due_after_two_weeks_without_it_the_longest_wait_first() {
    assertThat(
            overdue(
                week(0, "zone-call", "countdown"),
                week(1, "zone-call", "quick-choice"),
                week(2, "zone-call", "quick-choice")))
        .containsExactly(Skill.SEND, Skill.DRIVE);
  }

  @Test
  void nothing_is_due_after_one_week() {
    assertThat(overdue(week(0, "zone-call", "countdown"))).isEmpty();
  }

  @Test
  void a_week_without_work_counts_neither_way() {
    assertThat(overdue(week(0, "zone-call", "countdown", "field-call"), week(1), week(2)))
        .isEmpty();
  }

  @Test
  void last_season_does_not_count() {
    assertThat(overdue(week(-40, "zone-call"), week(-39, "zone-call"))).isEmpty();
  }

  @Test
  void a_drill_that_the_curriculum_no_longer_has_is_no_skill() {
    assertThat(overdue(week(0, "gone"), week(1, "gone"))).isEmpty();
  }
}
