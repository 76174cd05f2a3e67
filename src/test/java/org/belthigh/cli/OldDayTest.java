package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.PlannedWeek;
import org.belthigh.plan.Planner;
import org.belthigh.words.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * An old day gives the old answer, but never in silence: the club folder's page, "Rows after the
 * day", and the first week after a clearance.
 */
class OldDayTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  @TempDir private Path club;

  @BeforeEach
  void aClub() throws IOException {
    write(
        "club.yaml",
        """
        name: Test Club
        paper: letter
        languages: [en]
        rule_book: pitch-smart-2018
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10]}
        """);
    write(
        "roster.csv",
        """
        id,first_name,born,bats,group,pitches,catches
        p01,Ada,2017-05-05,R,u10,yes,yes
        p02,Bruno,2017-06-05,R,u10,yes,yes
        """);
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(club.resolve(file), text);
  }

  private Ran run(String... args) {
    List<String> line = new ArrayList<>(List.of(args));
    line.add(1, club.toString());
    return Runs.run(line.toArray(String[]::new));
  }

  private Plan plan(LocalDate from, int weeks) throws Exception {
    ClubRecord record = Intake.read(club, CATALOGUE);
    return new Planner(CATALOGUE)
        .plan(
            record,
            new PlanRequest(from, weeks, Set.of(), Set.of(), Optional.empty(), Optional.empty()));
  }

  private static JsonNode json(Plan plan) throws IOException {
    Words words = ClubOptions.words(CATALOGUE);
    return new ObjectMapper().readTree(Json.text(PlanJson.of(plan, words)));
  }

  private static Map<String, Integer> swings(JsonNode plan, int player) {
    Map<String, Integer> swings = new TreeMap<>();
    plan.at("/players/" + player + "/days")
        .forEach(d -> swings.put(d.get("date").textValue(), d.get("swings").intValue()));
    return swings;
  }

  @Test
  void a_complaint_inside_the_planned_weeks_is_told_and_holds_from_its_day_on() throws Exception {
    write(
        "wellness.csv",
        """
        date,player,kind,clears,by
        2027-04-06,p01,head-injury,,
        2027-04-07,p01,cleared,head-injury,physician
        """);

    JsonNode plan = json(plan(LocalDate.of(2027, 4, 5), 2));

    assertThat(swings(plan, 0))
        .allSatisfy((day, n) -> assertThat(day.compareTo("2027-04-06") < 0 || n == 0).isTrue());
    assertThat(swings(plan, 1)).anySatisfy((day, n) -> assertThat(n).isPositive());
    assertThat(plan.at("/players/0/holds/0/from").textValue()).isEqualTo("2027-04-06");
    assertThat(plan.at("/players/0/holds/0/until").isNull()).isTrue();
    assertThat(plan.at("/later_rows").findValuesAsText("what"))
        .containsExactly("complaint", "clearance");
    assertThat(plan.at("/later_rows/0/line").intValue()).isEqualTo(2);
    assertThat(plan.at("/later_rows/0/file").textValue()).endsWith("wellness.csv");
    assertThat(plan.at("/later_rows/0/says").textValue()).contains("Ada").doesNotContain("head");
  }

  @Test
  void an_outing_inside_the_planned_weeks_asks_for_its_rest() throws Exception {
    write(
        "throws.csv",
        """
        date,player,pitches
        2027-04-04,p01,0
        2027-04-07,p01,60
        """);

    Plan plan = plan(LocalDate.of(2027, 4, 5), 2);

    assertThat(plan.players().get(0).holds())
        .extracting(h -> h.kind() + " " + h.from() + " " + h.until().orElseThrow())
        .containsExactly("throwing 2027-04-08 2027-04-10");
    assertThat(plan.groups().get(0).arms().rows().get(0).cells())
        .extracting(c -> c.answer().id())
        .startsWith("may", "may", "may", "no", "no", "no", "may");
    assertThat(plan.groups().get(0).overview().later()).hasSize(1);
  }

  @Test
  void a_report_that_is_later_makes_nobody_known_who_was_to_be_asked() throws Exception {
    write("throws.csv", "date,player,pitches\n2027-04-07,p01,0\n");

    Ran ran = run("rest", "--on", "2027-04-05", "--days", "5", "--json");

    for (JsonNode day : ran.json().get("days")) {
      assertThat(day.at("/players/0/ask_first").booleanValue()).isTrue();
      assertThat(day.at("/players/0/may_pitch").booleanValue()).isFalse();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "rest --on 2027-04-05",
        "measure --as-of 2027-04-05",
        "explain p01 --as-of 2027-04-05",
        "plan --from 2027-04-05 --no-history --out OUT"
      })
  void every_command_tells_what_is_dated_later_with_file_and_line(String line) throws Exception {
    write("throws.csv", "date,player,pitches\n2027-04-05,p01,10\n2027-04-07,p01,20\n");
    write(
        "wellness.csv",
        """
        date,player,kind,clears,by
        2027-04-01,p02,arm-pain,,
        2027-04-06,p02,cleared,arm-pain,physician
        2027-04-09,p01,illness,,
        """);

    Ran ran = run(line.replace("OUT", club.resolve("out").toString()).split(" "));

    assertThat(ran.err())
        .contains("throws.csv line 3", "an outing about p01 is dated 2027-04-07")
        .contains("wellness.csv line 3", "a clearance about p02 is dated 2027-04-06")
        .contains("wellness.csv line 4", "a health report about p01 is dated 2027-04-09")
        .doesNotContain("throws.csv line 2", "wellness.csv line 2", "illness of", "arm-pain is");
    assertThat(ran.status()).isZero();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 6})
  void the_days_after_a_clearance_have_a_lighter_share_and_say_so(int after) throws Exception {
    LocalDate cleared = LocalDate.of(2027, 4, 5);
    LocalDate from = cleared.plusDays(after);
    JsonNode usual = json(plan(from, 2));
    write(
        "wellness.csv",
        """
        date,player,kind,clears,by
        2027-03-20,p01,arm-pain,,
        2027-04-05,p01,cleared,arm-pain,physical-therapist
        """);

    Plan plan = plan(from, 2);
    Map<String, Integer> swings = swings(json(plan), 0);

    swings(usual, 0)
        .forEach(
            (day, n) -> {
              if (LocalDate.parse(day).isBefore(cleared.plusDays(7)) && n > 0) {
                assertThat(swings.get(day)).as(day).isLessThanOrEqualTo((int) (0.67 * n));
              }
            });
    assertThat(plan.players().get(0).weeks())
        .extracting(PlannedWeek::kind)
        .startsWith(PlannedWeek.Kind.BACK)
        .hasSize(2)
        .doesNotHaveDuplicates();
    assertThat(plan.players().get(0).card().hold().toString()).contains("hold.back");
    assertThat(plan.players().get(0).inTheOpen().card().hold().toString())
        .contains("hold.open.back")
        .doesNotContain("hold.back");
    assertThat(plan.groups().get(0).arms().rows().get(0).note().key()).isEqualTo("arm.note.back");
    assertThat(plan.players().get(1).weeks())
        .extracting(PlannedWeek::kind)
        .doesNotContain(PlannedWeek.Kind.BACK);
  }

  @Test
  void a_week_after_the_clearance_all_is_as_usual() throws Exception {
    JsonNode usual = json(plan(LocalDate.of(2027, 4, 12), 1));
    write(
        "wellness.csv",
        """
        date,player,kind,clears,by
        2027-03-20,p01,arm-pain,,
        2027-04-05,p01,cleared,arm-pain,physical-therapist
        """);

    assertThat(swings(json(plan(LocalDate.of(2027, 4, 12), 1)), 0)).isEqualTo(swings(usual, 0));
  }
}
