package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code explain --drill}: why not this drill. */
class ExplainDrillTest {
  @TempDir private static Path temp;
  private static String club;

  /** Without what a run of the demo keeps in history, which the answer looks back at. */
  @BeforeAll
  static void copy() throws IOException {
    club = Runs.cleanDemo(temp).toString();
  }

  private static Ran explain(String player, String drill, String... more) {
    List<String> line = new ArrayList<>(List.of("explain", club, player));
    line.addAll(List.of("--as-of", "2027-04-05", "--drill", drill));
    line.addAll(List.of(more));
    return Runs.run(line.toArray(String[]::new));
  }

  @Test
  void a_few_lines_say_it_for_practice_and_for_home() {
    List<String> lines = explain("p02", "tee-belt-high").out().lines().toList();

    assertThat(lines).hasSize(3);
    assertThat(lines.get(0))
        .isEqualTo("“Tee, belt-high” (tee-belt-high) for Lena, as of Mon, Apr 5");
    assertThat(lines.get(1))
        .startsWith("At practice on the field on Tue, Apr 6: Nothing speaks against the drill");
    assertThat(lines.get(2))
        .startsWith("At home on Wed, Apr 7: ")
        .contains("needs something that the roster does not name for this home: Tee.")
        .contains("Lena works on “Hard on side flips” at home");
    assertThat(String.join("", lines)).doesNotContainPattern("DRL-\\d|[{}]");
  }

  /** One for each thing that the question is asked about. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "p02; machine-near-and-far; It is not made for home.",
        "p02; machine-near-and-far; It is for hitters of 11 and up. Lena is 10.",
        "p02; count-round; comes “In, middle or away”, and Lena is not through with that yet.",
        "p02; zone-call; Lena has no swings left that day, and this drill has",
        "p23; front-toss-drive; does not swing for now, and it is done with a bat.",
        "p23; stand-in-call; At practice squads go from bat to bat, so this has to wait too.",
        "p10; spot-cards; sits out everything for now.",
        "p20; zone-call; “In, middle or away” was had less often of late (0 times, this one 1)."
      })
  void each_reason_is_said(String player, String drill, String says) {
    assertThat(explain(player, drill).out()).contains(says);
  }

  @Test
  void a_drill_goes_by_its_name_too() {
    assertThat(explain("p02", "tee, BELT-high").out()).contains("(tee-belt-high)");
    assertThat(explain("p02", "Tee, a la cintura").out()).contains("(tee-belt-high)");
  }

  @Test
  void with_all_the_rules_are_named() {
    assertThat(explain("p02", "tee-belt-high", "--all").out())
        .contains("rule DRL-005: A family has the gear that the roster names");
  }

  @Test
  void json_says_the_same() throws IOException {
    JsonNode json = explain("p02", "tee-belt-high", "--json").json();

    assertThat(json.get("drill").asText()).isEqualTo("tee-belt-high");
    assertThat(json.get("places").get(0).get("may_be_chosen").asBoolean()).isTrue();
    assertThat(json.get("places").get(0).get("before")).hasSize(3);
    assertThat(json.get("places").get(1).get("place").asText()).isEqualTo("home");
    assertThat(json.get("places").get(1).get("against").findValuesAsText("rule"))
        .contains("DRL-005", "DRL-012");
  }

  @Test
  void an_unknown_drill_is_answered_with_what_is_allowed() {
    Ran ran = explain("p02", "tee-belt-hgh");

    assertThat(ran.status()).isEqualTo(Belthigh.NOTHING_DONE);
    assertThat(ran.err())
        .isEqualTo(
            """
            drill 'tee-belt-hgh' is not in the curriculum belthigh-2027; a drill is named by its id or its name there.
            Maybe 'tee-belt-high' is meant.
            """);
  }

  @Test
  void without_a_practice_in_the_calendar_home_is_answered(@TempDir Path other) throws IOException {
    Path games = Runs.cleanDemo(other);
    Files.writeString(games.resolve("calendar.csv"), "date,group,kind\n2027-03-05,all,game\n");
    String said =
        Runs.run(
                "explain", games.toString(), "p02", "--as-of", "2027-04-05", "--drill", "zone-call")
            .out();

    assertThat(said)
        .contains("At practice: the calendar has none up to Sun, May 16.")
        .contains("At home on ");
  }
}
