package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.april;
import static org.belthigh.audit.SmallClub.day;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each drill is done as the curriculum has it: its ball, its feed, its distance, its place;
 * plastic, foam or nothing at home; no bat and no shell in a hallway; a screen before a hard ball;
 * at 13 and older 20 feet or more without one; an adult at each station with bats (all ours, common
 * practice).
 */
class DrillCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void club() throws Exception {
    club = new SmallClub(folder);
  }

  private static FinishedPlan.Work work(
      String drill, String ball, String feed, int feet, int swings) {
    return new FinishedPlan.Work(drill, ball, feed, feet, 12, swings, 8);
  }

  private List<String> beside(FinishedPlan.Person person) throws Exception {
    return said(Optional.of(club.record()), person);
  }

  private List<String> bo(String place, FinishedPlan.Work work) throws Exception {
    return beside(SmallClub.bo(day(6, place, 8, work)));
  }

  private List<String> ada(String place, FinishedPlan.Work work) throws Exception {
    return beside(SmallClub.ada(day(6, place, 8, work)));
  }

  private static List<String> alone(String place, FinishedPlan.Work work) {
    return said(Optional.empty(), SmallClub.ada(day(6, place, 8, work)));
  }

  private static List<String> said(Optional<ClubRecord> record, FinishedPlan.Person person) {
    Findings findings = SmallClub.findings();
    new DrillCheck(CATALOGUE, LIMITS, new Ages(FROM, record), record, findings)
        .check(SmallClub.plan(person), person);
    return SmallClub.said(findings);
  }

  @Test
  void drills_done_as_they_are_written_are_in_order() throws Exception {
    assertThat(bo("field", work("tee-belt-high", "baseball", "tee", 0, 12))).isEmpty();
    assertThat(bo("home", work("tee-belt-high", "plastic", "tee", 0, 12))).isEmpty();
    assertThat(bo("home", work("tee-belt-high", "foam", "tee", 0, 12))).as("softer").isEmpty();
    assertThat(bo("field", work("zone-call", "baseball", "front-toss", 20, 12))).isEmpty();
    assertThat(ada("field", work("zone-call", "baseball", "front-toss", 15, 12))).isEmpty();
    assertThat(ada("home", work("spot-cards", "none", "none", 0, 0))).isEmpty();
  }

  @Test
  void the_ball_is_the_drills_own_at_that_place() throws Exception {
    assertThat(bo("field", work("tee-belt-high", "plastic", "tee", 0, 12)))
        .containsExactly(
            "b1 2027-04-06, tee-belt-high: a plastic; the ball of this drill there is baseball"
                + " (ours, common practice)");
    assertThat(bo("field", work("tee-belt-high", "foam", "tee", 0, 12))).hasSize(1);
    assertThat(bo("home", work("tee-belt-high", "tennis", "tee", 0, 12)))
        .containsExactly(
            "b1 2027-04-06, tee-belt-high: a tennis at home; at home it is plastic, foam or none"
                + " (ours, common practice)",
            "b1 2027-04-06, tee-belt-high: a tennis; the ball of this drill there is plastic (ours,"
                + " common practice)");
    assertThat(bo("home", work("spot-cards", "foam", "none", 0, 0))).as("not softer").hasSize(1);
  }

  @Test
  void only_softball_swaps_a_baseball_for_a_softball() throws Exception {
    FinishedPlan.Work swapped = work("tee-belt-high", "softball", "tee", 0, 12);

    assertThat(bo("field", swapped)).hasSize(1);
    assertThat(alone("field", swapped)).as("the sport is not known").isEmpty();
    club.with(
        "club.yaml",
        "name: Two Files",
        "rule_book: pitch-smart-2018",
        "season: {first: \"2027-03-01\", last: \"2027-05-24\"}",
        "groups:",
        "  - {id: u10, name: Under 10, age: [9, 10]}",
        "  - {id: u14, name: Under 14, age: [13, 14], sport: softball}");
    assertThat(bo("field", swapped)).isEmpty();
    assertThat(bo("field", work("spot-cards", "softball", "none", 0, 0)))
        .as("no baseball to swap")
        .anyMatch(t -> t.contains("a softball; the ball of this drill there is none"));
  }

  @Test
  void feed_place_bat_and_minutes_are_the_drills_own() throws Exception {
    assertThat(bo("field", work("tee-belt-high", "baseball", "flip", 0, 12)))
        .containsExactly(
            "b1 2027-04-06, tee-belt-high: fed by flip; this drill is fed by tee (ours, common"
                + " practice)");
    assertThat(bo("home", work("flip-countdown", "plastic", "flip", 8, 12)))
        .containsExactly(
            "b1 2027-04-06, flip-countdown: done at home; the curriculum allows it elsewhere only"
                + " (ours, common practice)");
    assertThat(bo("home", work("spot-cards", "none", "none", 0, 1)))
        .containsExactly(
            "b1 2027-04-06, spot-cards: 1 swings; this drill has no bat (ours, common practice)");
    assertThat(bo("home", work("made-up", "none", "none", 0, 0)))
        .containsExactly(
            "b1 2027-04-06, made-up: the curriculum has no such drill; drills come from it");
    assertThat(bo("home", new FinishedPlan.Work("spot-cards", "none", "none", 0, 12, 0, 0)))
        .containsExactly(
            "b1 2027-04-06, spot-cards: no minutes for it; each drill takes a minute or more");
    assertThat(bo("home", new FinishedPlan.Work("spot-cards", "none", "none", 0, 12, 0, 1)))
        .isEmpty();
  }

  @Test
  void in_a_hallway_there_is_no_bat_and_nothing_harder_than_foam() throws Exception {
    assertThat(ada("home", work("tee-belt-high", "plastic", "tee", 0, 1)))
        .containsExactly(
            "a1 2027-04-06, tee-belt-high: 1 swings in a hallway; indoors there is no bat (ours,"
                + " common practice)",
            "a1 2027-04-06, tee-belt-high: a plastic ball in a hallway; indoors it is foam or none"
                + " (ours, common practice)");
    assertThat(ada("home", work("tee-belt-high", "foam", "tee", 0, 0))).isEmpty();
    assertThat(bo("home", work("tee-belt-high", "plastic", "tee", 0, 1))).as("a yard").isEmpty();
    assertThat(ada("field", work("tee-belt-high", "baseball", "tee", 0, 1)))
        .as("not at home")
        .isEmpty();
  }

  @Test
  void a_toss_comes_from_as_far_as_the_drill_says_and_in_a_yard_up_to_25_feet() throws Exception {
    assertThat(ada("field", work("zone-call", "baseball", "front-toss", 14, 12)))
        .containsExactly(
            "a1 2027-04-06, zone-call: tossed from 14 ft; at age 10 from 15 (ours, common"
                + " practice)");
    assertThat(ada("field", work("zone-call", "baseball", "front-toss", 16, 12))).hasSize(1);
    assertThat(bo("home", work("zone-call", "plastic", "front-toss", 25, 12))).isEmpty();
    assertThat(bo("home", work("zone-call", "plastic", "front-toss", 26, 12))).hasSize(1);
    assertThat(bo("home", work("tee-belt-high", "plastic", "tee", 1, 12)))
        .as("a tee stands where the hitter does")
        .hasSize(1);
  }

  @Test
  void at_13_and_older_a_toss_without_a_screen_comes_from_20_feet() throws Exception {
    assertThat(bo("home", work("zone-call", "plastic", "front-toss", 20, 12))).isEmpty();
    assertThat(bo("home", work("zone-call", "plastic", "front-toss", 19, 12)))
        .containsExactly(
            "b1 2027-04-06, zone-call: tossed from 19 ft; at age 14 from 20 (ours, common practice)",
            "b1 2027-04-06, zone-call: tossed from 19 ft without a screen; at 13 and older from 20"
                + " ft or more (ours, common practice)");
    assertThat(bo("field", work("zone-call", "baseball", "front-toss", 19, 12)))
        .as("behind a screen")
        .hasSize(1);
  }

  private static List<String> aloneAt(int age, int feet) {
    FinishedPlan.Person person =
        new FinishedPlan.Person(
            "c1",
            "u14",
            age,
            List.of(),
            List.of(),
            List.of(day(5, "home", 8, work("zone-call", "plastic", "front-toss", feet, 12))),
            false);
    return said(Optional.empty(), person);
  }

  @Test
  void without_the_day_of_birth_the_feet_of_the_age_before_are_let_pass() {
    assertThat(aloneAt(13, 15)).as("12 a day ago, perhaps").isEmpty();
    assertThat(aloneAt(14, 15)).hasSize(2);
    assertThat(aloneAt(13, 16)).hasSize(2);
  }

  @Test
  void a_hard_ball_is_tossed_from_behind_a_screen() throws Exception {
    assertThat(bo("home", work("front-toss-home", "baseball", "front-toss", 20, 12)))
        .contains(
            "b1 2027-04-06, front-toss-home: a hard ball tossed without a screen; who tosses stands"
                + " behind a screen (ours, common practice)");
    assertThat(bo("home", work("front-toss-home", "plastic", "front-toss", 20, 12))).isEmpty();
  }

  private static FinishedPlan.Station station(int number, boolean adult, String... drills) {
    return new FinishedPlan.Station(number, adult, List.of(drills));
  }

  private List<String> practice(FinishedPlan.Station... stations) throws Exception {
    Optional<ClubRecord> record = Optional.of(club.record());
    Findings findings = SmallClub.findings();
    new DrillCheck(CATALOGUE, LIMITS, new Ages(FROM, record), record, findings)
        .check(
            SmallClub.plan(),
            new FinishedPlan.Practice("u10", april(6), List.of(stations), List.of()));
    return SmallClub.said(findings);
  }

  @Test
  void each_station_with_bats_has_an_adult_and_the_practice_one_for_each() throws Exception {
    club.calendar("2027-04-06,u10,practice,90,40,2", "2027-04-06,u14,practice,90,40,9");

    assertThat(
            practice(
                station(1, true, "spot-cards", "tee-belt-high"),
                station(2, true, "tee-belt-high"),
                station(3, false, "spot-cards")))
        .isEmpty();
    assertThat(practice(station(1, false, "tee-belt-high")))
        .containsExactly(
            "u10 2027-04-06, station 1: bats without an adult; each station with a bat has an adult"
                + " (ours, common practice)");
    assertThat(
            practice(
                station(1, true, "tee-belt-high"),
                station(2, true, "tee-belt-high"),
                station(3, true, "tee-belt-high")))
        .containsExactly(
            "u10 2027-04-06: 3 stations with bats and 2 adults; each station with a bat has an adult"
                + " (ours, common practice)");
  }

  @Test
  void where_the_calendar_names_no_adults_the_groups_tossers_count() throws Exception {
    club.calendar("2027-04-06,u10,practice,90,40,");

    assertThat(practice(station(1, true, "tee-belt-high"))).isEmpty();
    assertThat(practice(station(1, true, "tee-belt-high"), station(2, true, "tee-belt-high")))
        .hasSize(1);
  }

  private static List<String> way(String place, int adults, int adaSwings, String... drills) {
    FinishedPlan.Station station = new FinishedPlan.Station(1, true, List.of(drills));
    FinishedPlan.Way way =
        new FinishedPlan.Way("rain", place, adults, List.of(station), Map.of("a1", adaSwings));
    FinishedPlan.Practice practice =
        new FinishedPlan.Practice("u10", SmallClub.april(6), List.of(), List.of(way));
    Findings findings = SmallClub.findings();
    FinishedPlan plan =
        SmallClub.plan(SmallClub.ada(SmallClub.swings(6, 20), SmallClub.home(7, 9, 8)));
    new DrillCheck(CATALOGUE, LIMITS, new Ages(FROM, Optional.empty()), Optional.empty(), findings)
        .check(plan, practice);
    return SmallClub.said(findings);
  }

  @Test
  void another_way_asks_for_no_more_swings_than_the_day_has() {
    assertThat(way("cage", 1, 20, "tee-belt-high")).isEmpty();
    assertThat(way("cage", 1, 21, "tee-belt-high"))
        .containsExactly(
            "u10 2027-04-06, rain, a1: 21 swings; at most the 20 planned (ours, common practice)");
  }

  @Test
  void it_has_an_adult_for_each_station_with_bats() {
    assertThat(way("cage", 0, 0, "tee-belt-high"))
        .containsExactly(
            "u10 2027-04-06, rain: 1 stations with bats and 0 adults; each station with a bat has"
                + " an adult (ours, common practice)");
    assertThat(way("cage", 0, 0, "spot-cards")).as("cards need none").isEmpty();
  }

  @Test
  void its_drills_are_done_where_the_curriculum_allows_them() {
    assertThat(way("field", 1, 0, "machine-near-and-far"))
        .containsExactly(
            "u10 2027-04-06, rain, machine-near-and-far: done at field; the curriculum allows it"
                + " elsewhere only (ours, common practice)");
    assertThat(way("cage", 1, 0, "machine-near-and-far")).isEmpty();
    assertThat(way("cage", 1, 0, "no-such-drill")).isEmpty();
  }
}
