package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Drill;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.handout.kit.Section;
import org.belthigh.model.Bats;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;
import org.belthigh.plan.DrillText;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.LogSheet;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Log sheets say where each spot is, how the drill is typed, and leave room for a side. */
class LogSheetTest {
  @ParameterizedTest
  @CsvSource({
    "letter, en, L / R, high 7 8 9 belt 4 5 6 low 1 2 3, next to the hitter",
    "a4, es, I / D, alta 7 8 9 cintura 4 5 6 baja 1 2 3, junto a quien batea"
  })
  void each_log_sheet_can_be_typed_by_somebody_who_was_not_there(
      String paper, String language, String sides, String spots, String near) {
    Plan plan = SamplePlans.demo(1, Set.of("u10"), Set.of(), paper, Optional.of(language));
    GroupPlan group = plan.groups().get(0);
    List<Section> logs = LogPrint.of(plan, group, SamplePlans.WORDS);

    assertThat(logs).hasSize(group.logs().size()).isNotEmpty();
    for (int i = 0; i < logs.size(); i++) {
      LogSheet sheet = group.logs().get(i);
      byte[] pdf = Pdf.of(logs.get(i), "Log", Locale.forLanguageTag(language), plan.from());
      String says = PdfLint.words(pdf);
      assertThat(logs.get(i).pageCount()).isEqualTo(1);
      assertThat(PdfLint.faults(pdf)).isEmpty();
      assertThat(says).contains(spots, near, sheet.drill().id());
      assertThat(says.matches("(?s).*\\b(5h|45h|6h=).*"))
          .as("%s: what is written after a swing, else it is taken for a take", sheet.drill().id())
          .isEqualTo(sheet.drill().swing());
      long both = sheet.players().stream().filter(p -> p.bats() == Bats.SWITCH).count();
      assertThat(both).isPositive();
      assertThat(says.split(": " + sides, -1)).hasSize((int) both + 1);
    }
  }

  /** A sheet for each drill that says to write something down, and none where it says not to. */
  @Test
  void whatever_a_practice_asks_to_be_written_down_has_a_sheet() {
    Plan plan = SamplePlans.demo(2, Set.of("u10", "u12"), Set.of(), "letter", Optional.of("en"));
    Set<String> asked =
        SamplePlans.CATALOGUE.curricula().values().stream()
            .flatMap(c -> c.drills().values().stream())
            .filter(Drill::logged)
            .map(Drill::id)
            .collect(Collectors.toSet());

    for (GroupPlan group : plan.groups()) {
      assertThat(group.logs())
          .map(log -> log.drill().id())
          .containsExactlyElementsOf(
              group.practices().stream()
                  .flatMap(p -> p.usualDrills().stream())
                  .map(DrillText::id)
                  .distinct()
                  .filter(asked::contains)
                  .toList());
    }
  }

  /** A spot without a letter behind it is a take, so a sheet for swings must ask for the letter. */
  @Test
  void a_sheet_on_which_the_spot_and_the_swing_count_says_how_both_are_written() {
    Plan plan = SamplePlans.demo(2, Set.of(), Set.of(), "letter", Optional.of("en"));
    Map<String, Drill> drills =
        SamplePlans.CATALOGUE.curricula().values().stream()
            .flatMap(c -> c.drills().values().stream())
            .collect(Collectors.toMap(Drill::id, d -> d, (a, b) -> a));
    Set<String> seen = new TreeSet<>();

    for (LogSheet sheet : plan.groups().stream().flatMap(g -> g.logs().stream()).toList()) {
      Drill drill = drills.get(sheet.drill().id());
      if (drill.skill() == Skill.CHOOSE) {
        seen.add("choose");
        assertThat(sheet.typed().key()).isEqualTo("log.typed.choose");
        assertThat(sheet.marks())
            .map(Phrase::key)
            .containsExactly("log.choose.let-go", "log.choose.swung");
      } else if (drill.kind() == DrillKind.ZONE_CALL) {
        seen.add(drill.swing() ? "call and swing" : "call");
        assertThat(sheet.typed().key())
            .isEqualTo("log.typed.zone-call" + (drill.swing() ? "-swing" : ""));
      }
    }
    assertThat(seen).contains("choose", "call and swing");
  }

  @ParameterizedTest
  @CsvSource({"letter, en, L / R", "a4, es, I / D"})
  void the_log_of_one_player_has_a_place_for_the_side_of_a_switch_hitter_alone(
      String paper, String language, String sides) {
    Plan plan = SamplePlans.demo(1, Set.of("u10"), Set.of(), paper, Optional.of(language));
    for (PlayerPlan player : plan.players()) {
      if (!player.log().drills().isEmpty()) {
        Section log =
            OwnLogPrint.of(plan, player, new Voice(SamplePlans.WORDS, language), "Footer");
        byte[] pdf = Pdf.of(log, "Log", Locale.forLanguageTag(language), plan.from());
        String says = PdfLint.words(pdf);
        assertThat(says.contains(sides)).isEqualTo(player.who().bats() == Bats.SWITCH);
        assertThat(PdfLint.faults(pdf)).isEmpty();
      }
    }
  }
}
