package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.belthigh.handout.kit.Pdf;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.handout.kit.Section;
import org.belthigh.model.Bats;
import org.belthigh.plan.GroupPlan;
import org.belthigh.plan.LogSheet;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlayerPlan;
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
      assertThat(says.matches("(?s).*\\b(5h|55h|6h=).*"))
          .as("%s: what is written after a swing, else it is taken for a take", sheet.drill().id())
          .isEqualTo(sheet.drill().swing());
      long both = sheet.players().stream().filter(p -> p.bats() == Bats.SWITCH).count();
      assertThat(both).isPositive();
      assertThat(says.split(": " + sides, -1)).hasSize((int) both + 1);
    }
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
