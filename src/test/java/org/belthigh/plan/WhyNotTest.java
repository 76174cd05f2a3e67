package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.history.History;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The answer to "why not this drill?" fits the plan that is made on that day. */
class WhyNotTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Planner PLANNER = new Planner(CATALOGUE);

  private static ClubRecord demo() throws Exception {
    return Intake.read(Path.of("demo-players"), CATALOGUE);
  }

  private static Plan plan(ClubRecord record, LocalDate from) {
    return PLANNER.plan(
        record, new PlanRequest(from, 6, Set.of(), Set.of(), Optional.empty(), Optional.empty()));
  }

  private static DrillAnswer answer(
      ClubRecord record, PlayerPlan player, String drill, LocalDate on) {
    return PLANNER.whyNot(record, player.who().id(), drill, on, History.none());
  }

  private static List<Item> items(PlayerPlan player, LocalDate day) {
    return player.days().stream()
        .filter(d -> d.date().equals(day))
        .flatMap(d -> d.items().stream())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"2027-03-08", "2027-04-05", "2027-05-03"})
  void what_is_planned_at_home_comes_first(String from) throws Exception {
    LocalDate on = LocalDate.parse(from);
    ClubRecord record = demo();
    int looked = 0;
    for (PlayerPlan player : plan(record, on).players()) {
      LocalDate home = answer(record, player, "zone-call", on).home().day();
      for (Item item : items(player, home)) {
        DrillAnswer.Setting answer = answer(record, player, item.drill(), on).home();
        looked++;
        assertThat(answer.against()).as(player.who().id()).isEmpty();
        assertThat(answer.notes())
            .as(player.who().id())
            .extracting(Phrase::key)
            .containsExactly("why-not.comes-first");
      }
    }
    assertThat(looked).isGreaterThan(10);
  }

  @ParameterizedTest
  @ValueSource(strings = "2027-04-05")
  void nothing_speaks_against_what_is_planned_at_the_next_practice(String from) throws Exception {
    LocalDate on = LocalDate.parse(from);
    ClubRecord record = demo();
    int looked = 0;
    for (PlayerPlan player : plan(record, on).players()) {
      Optional<Day> practice =
          player.days().stream()
              .filter(d -> !d.items().isEmpty() && d.place() != Place.HOME)
              .filter(d -> d.date().isBefore(on.plusDays(7)))
              .findFirst();
      for (Item item : practice.map(Day::items).orElse(List.of())) {
        DrillAnswer answer = answer(record, player, item.drill(), on);
        looked++;
        assertThat(answer.practice().orElseThrow().against())
            .as(player.who().id() + " " + item.drill())
            .isEmpty();
      }
    }
    assertThat(looked).isGreaterThan(10);
  }
}
