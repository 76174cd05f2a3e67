package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.Intake;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the auditor says that outings owe, by Pitch Smart 2018 for a child of 10: no day of rest for
 * 1 to 20 pitches, one for 21 to 35, two for 36 to 50, three for 51 to 65, four from 66. What is
 * heavy is ours, common practice.
 */
class ArmsOwedTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate FROM = LocalDate.of(2027, 4, 12);
  private static final Limits LIMITS = new Limits(CATALOGUE, FROM);
  private static final int HEAVY_PITCHES = LIMITS.whole("heavy-pitches", 10);
  private static final int HEAVY_INNINGS = LIMITS.whole("heavy-innings-caught", 10);

  @TempDir private Path folder;

  private final FinishedPlan.Person ada =
      new FinishedPlan.Person("a1", "u10", 10, List.of(), List.of(), List.of(), false);
  private final FinishedPlan.Person sol =
      new FinishedPlan.Person("s1", "soft", 10, List.of(), List.of(), List.of(), false);

  private ArmsOwed owed(String... outings) throws Exception {
    return owedUnder("rule_book: pitch-smart-2018", outings);
  }

  private ArmsOwed owedUnder(String rules, String... outings) throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Two Arms
        %s
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
          - {id: soft, name: Softball, age: [9, 10], sport: softball}
        """
            .formatted(rules));
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group,pitches
        a1,Ada,2017-01-05,R,u10,yes
        b1,Bo,2017-02-05,R,u10,yes
        s1,Sol,2017-02-05,R,soft,yes
        """);
    Files.writeString(
        folder.resolve("throws.csv"),
        "date,player,pitches,kind,innings_caught,game\n" + String.join("\n", outings) + "\n");
    return new ArmsOwed(CATALOGUE, LIMITS, Optional.of(Intake.read(folder, CATALOGUE).upTo(FROM)));
  }

  private static LocalDate april(int day) {
    return LocalDate.of(2027, 4, day);
  }

  @Test
  void rest_is_full_days_after_the_day_of_pitching_by_the_table() throws Exception {
    ArmsOwed owed =
        owed("2027-03-20,a1,20,game,,", "2027-04-01,a1,21,game,,", "2027-04-05,a1,66,game,,");

    assertThat(owed.rests(ada))
        .containsExactly(
            new ArmsOwed.Rest(april(2), april(2), 21, "pitch-smart-2018"),
            new ArmsOwed.Rest(april(6), april(9), 66, "pitch-smart-2018"));
  }

  @Test
  void both_ends_of_a_rest_are_rest_and_the_days_around_it_are_not() {
    ArmsOwed.Rest rest = new ArmsOwed.Rest(april(6), april(9), 66, "pitch-smart-2018");

    assertThat(rest.on(april(5))).isFalse();
    assertThat(rest.on(april(6))).isTrue();
    assertThat(rest.on(april(9))).isTrue();
    assertThat(rest.on(april(10))).isFalse();
  }

  @Test
  void games_of_one_day_count_together_and_bullpens_start_no_rest() throws Exception {
    ArmsOwed owed =
        owed("2027-04-03,a1,18,game,,1", "2027-04-03,a1,18,game,,2", "2027-04-07,a1,60,bullpen,,");

    assertThat(owed.rests(ada))
        .containsExactly(new ArmsOwed.Rest(april(4), april(5), 36, "pitch-smart-2018"));
    assertThat(owed.pitched(ada, april(3))).isTrue();
    assertThat(owed.pitched(ada, april(4))).isFalse();
    assertThat(owed.pitched(ada, april(7))).as("a bullpen is no pitching day").isFalse();
  }

  @Test
  void a_report_of_zero_owes_nothing_and_another_childs_pitches_are_not_counted() throws Exception {
    ArmsOwed owed = owed("2027-04-05,a1,0,game,,", "2027-04-05,b1,70,game,,");

    assertThat(owed.rests(ada)).isEmpty();
    assertThat(owed.pitched(ada, april(5))).isFalse();
    assertThat(owed.fewerSwings(ada, april(6))).isFalse();
  }

  @Test
  void softball_has_no_table_and_a_plan_without_its_club_folder_no_log() throws Exception {
    ArmsOwed owed = owed("2027-04-05,s1,70,game,,", "2027-04-05,a1,70,game,,");

    assertThat(owed.rests(sol)).isEmpty();
    assertThat(owed.rests(ada)).hasSize(1);
    ArmsOwed without = new ArmsOwed(CATALOGUE, LIMITS, Optional.empty());
    assertThat(without.rests(ada)).isEmpty();
    assertThat(without.pitched(ada, april(5))).isFalse();
    assertThat(without.fewerSwings(ada, april(6))).isFalse();
  }

  @Test
  void every_book_of_the_club_is_read_in_the_edition_of_that_day_with_the_clubs_own_rest()
      throws Exception {
    ArmsOwed owed =
        owedUnder(
            """
            rule_book: [pitch-smart-2014, little-league-reg-vi]
            stricter: {rest_days_add: 1}""",
            "2027-04-05,a1,36,game,,");

    assertThat(owed.rests(ada))
        .as("two days by either table, and one more of the club's own")
        .extracting(ArmsOwed.Rest::last)
        .containsExactly(april(8), april(8));
    assertThat(owed.rests(ada))
        .extracting(ArmsOwed.Rest::book)
        .containsExactly("pitch-smart-2018", "little-league-reg-vi");
  }

  @Test
  void swings_are_fewer_on_rest_days_and_on_the_day_after_a_heavy_load() throws Exception {
    int half = HEAVY_PITCHES / 2;
    ArmsOwed owed =
        owed(
            "2027-03-22,a1," + half + ",bullpen,,",
            "2027-03-22,a1," + (HEAVY_PITCHES - half) + ",bullpen,,",
            "2027-03-26,a1," + (HEAVY_PITCHES - 1) + ",bullpen,,",
            "2027-03-30,a1,0,game," + HEAVY_INNINGS + ",",
            "2027-04-02,a1,0,game," + (HEAVY_INNINGS - 1) + ",",
            "2027-04-05,a1,36,game,,");

    assertThat(owed.fewerSwings(ada, LocalDate.of(2027, 3, 22))).as("the day itself").isFalse();
    assertThat(owed.fewerSwings(ada, LocalDate.of(2027, 3, 23))).as("heavy together").isTrue();
    assertThat(owed.fewerSwings(ada, LocalDate.of(2027, 3, 24))).isFalse();
    assertThat(owed.fewerSwings(ada, LocalDate.of(2027, 3, 27))).as("one less").isFalse();
    assertThat(owed.fewerSwings(ada, LocalDate.of(2027, 3, 31))).as("caught much").isTrue();
    assertThat(owed.fewerSwings(ada, april(3))).as("caught an inning less").isFalse();
    assertThat(owed.fewerSwings(ada, april(7))).as("the second rest day").isTrue();
    assertThat(owed.fewerSwings(ada, april(8))).isFalse();
  }
}
