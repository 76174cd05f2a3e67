package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.Intake;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tournament of two days, two games a day; at ages 9 and 10 Pitch Smart 2018 allows 75 a day. */
class GameDaysTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate MONDAY = LocalDate.of(2027, 4, 5);
  private static final LocalDate SATURDAY = LocalDate.of(2027, 4, 10);
  private static final LocalDate SUNDAY = LocalDate.of(2027, 4, 11);

  @TempDir private Path folder;

  private Plan plan(String book, LocalDate from) throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Quarry Bend
        rule_book: %s
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """
            .formatted(book));
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group,pitches,catches,home_days
        a1,Ada,2017-01-05,R,u10,yes,no,mon tue wed thu fri sat sun
        c1,Cam,2017-02-05,R,u10,yes,no,mon tue wed thu fri sat sun
        e1,Eli,2017-02-05,R,u10,no,yes,mon tue wed thu fri sat sun
        """);
    Files.writeString(
        folder.resolve("calendar.csv"),
        """
        date,group,kind
        2027-04-06,u10,practice
        2027-04-10,u10,tournament
        2027-04-11,u10,tournament
        """);
    Files.writeString(
        folder.resolve("throws.csv"),
        """
        date,player,pitches,kind,game
        2027-04-04,a1,0,game,
        2027-04-04,c1,0,game,
        2027-04-10,a1,30,game,1
        2027-04-10,a1,9,bullpen,
        2027-04-10,a1,12,game,2
        2027-04-10,c1,75,game,2
        """);
    return new Planner(CATALOGUE)
        .plan(
            Intake.read(folder, CATALOGUE).upTo(from),
            new PlanRequest(from, 1, Set.of(), Set.of(), Optional.empty(), Optional.empty()));
  }

  private static List<ArmSheet.GameDay> days(Plan plan) {
    return plan.groups().get(0).arms().tournament();
  }

  private static ArmSheet.Game game(int number, int... pitches) {
    return new ArmSheet.Game(
        String.valueOf(number),
        pitches.length == 0 ? OptionalInt.empty() : OptionalInt.of(pitches[0]));
  }

  @Test
  void before_the_tournament_each_pitcher_has_four_empty_lines_a_day() throws Exception {
    List<ArmSheet.GameDay> days = days(plan("pitch-smart-2018", MONDAY));

    assertThat(days).extracting(ArmSheet.GameDay::day).containsExactly(SATURDAY, SUNDAY);
    assertThat(days)
        .allSatisfy(
            d -> {
              assertThat(d.pitchers()).extracting(p -> p.who().id()).containsExactly("a1", "c1");
              assertThat(d.pitchers())
                  .allSatisfy(
                      p -> {
                        assertThat(p.cell().pitches()).isEqualTo(75);
                        assertThat(p.games()).containsExactly(game(1), game(2), game(3), game(4));
                      });
            });
  }

  @Test
  void games_already_reported_are_filled_in_and_what_is_left_is_the_rest_of_the_day()
      throws Exception {
    ArmSheet.GameDay day = days(plan("pitch-smart-2018", SATURDAY)).get(0);

    ArmSheet.Pitcher ada = day.pitchers().get(0);
    assertThat(ada.games()).containsExactly(game(1, 30), game(2, 12), game(3), game(4));
    assertThat(ada.reported()).as("a bullpen is no game").isEqualTo(42);
    assertThat(ada.cell().pitches()).isEqualTo(75 - 42);
    assertThat(ada.knownTo()).hasValue(SATURDAY);
    ArmSheet.Pitcher cam = day.pitchers().get(1);
    assertThat(cam.games()).containsExactly(game(1), game(2, 75), game(3), game(4));
    assertThat(cam.cell().answer()).isEqualTo(ArmSheet.Answer.NO);
  }

  @Test
  void who_owes_rest_is_not_on_the_second_day() throws Exception {
    assertThat(days(plan("pitch-smart-2018", SATURDAY)).get(1).pitchers())
        .as("42 pitches owe two days, 75 four")
        .isEmpty();
  }

  @Test
  void a_book_that_bars_a_second_game_leaves_one_line_and_says_so() throws Exception {
    ArmSheet.GameDay day = days(plan("little-league-reg-vi", MONDAY)).get(0);

    assertThat(day.pitchers())
        .allSatisfy(
            p -> assertThat(p.games()).containsExactly(new ArmSheet.Game("", OptionalInt.empty())));
    assertThat(day.cautions()).anySatisfy(c -> assertThat(c.key()).isEqualTo("arm.games.once"));
  }

  @Test
  void nothing_is_planned_at_home_on_a_tournament_day_or_its_eve() throws Exception {
    Plan plan = plan("pitch-smart-2018", MONDAY);

    assertThat(plan.players())
        .allSatisfy(
            p ->
                assertThat(p.home())
                    .isNotEmpty()
                    .extracting(HomeSheet::date)
                    .doesNotContain(SATURDAY.minusDays(1), SATURDAY, SUNDAY));
  }
}
