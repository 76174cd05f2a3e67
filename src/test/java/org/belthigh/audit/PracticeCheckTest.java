package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.WORDS;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.belthigh.catalogue.HeatTable;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A practice against the calendar, the place and the gear of the club, one thing wrong a test. How
 * many hit at one station, and how long a stay is, are ours (common practice).
 */
class PracticeCheckTest extends SoundPractice {
  private static final int SQUAD = LIMITS.whole("squad-most", 18);

  @BeforeEach
  void heat() {
    practice()
        .putArray("cautions")
        .add(WORDS.say(shade(), "en") + " And drink.")
        .add(WORDS.say(Phrase.of("heat.cancel"), "en"));
  }

  private static Phrase shade() {
    List<String> tables = new ArrayList<>();
    CATALOGUE.heatTables().values().stream()
        .filter(t -> t.reading() == HeatTable.Reading.HEAT_INDEX)
        .forEach(t -> tables.add(t.shortName()));
    return Phrase.of(
        "heat.shade",
        "adds",
        LIMITS.whole("heat-sun-adds", 10),
        "table",
        String.join(", ", tables));
  }

  private List<String> said() throws Exception {
    return said(given -> new PracticeCheck(given, WORDS).check());
  }

  private List<String> said(String about) throws Exception {
    return said().stream().filter(s -> s.contains(about)).toList();
  }

  @Test
  void a_sound_practice_is_not_spoken_of() throws Exception {
    assertThat(said()).isEmpty();
  }

  @Test
  void what_is_said_of_heat_may_be_in_either_language_and_must_be_said() throws Exception {
    practice().putArray("cautions").add(WORDS.say(shade(), "es"));
    assertThat(said())
        .singleElement()
        .asString()
        .contains("the cautions do not say: " + WORDS.say(Phrase.of("heat.cancel"), "en"));
    practice().putArray("cautions").add(WORDS.say(Phrase.of("heat.cancel"), "es"));
    assertThat(said()).singleElement().asString().contains(WORDS.say(shade(), "en"));
  }

  @Test
  void a_practice_stands_once() throws Exception {
    plan.withArray("practices").add(practice().deepCopy());

    assertThat(said("stands twice")).hasSize(1);
  }

  private void onThe(int day) {
    String date = "2027-04-%02d".formatted(day);
    practice().put("date", date);
    plan.path("players").forEach(p -> ((ObjectNode) p.at("/days/0")).put("date", date));
  }

  @ParameterizedTest
  @CsvSource({"4,true", "5,false", "18,false", "19,true"})
  void it_is_in_the_planned_weeks(int day, boolean told) throws Exception {
    club.calendar("2027-04-%02d,u10,practice,90,45,1".formatted(day));
    onThe(day);

    assertThat(said("the day is not planned")).hasSize(told ? 1 : 0);
  }

  @Test
  void it_is_of_a_group_of_the_club() throws Exception {
    practice().put("group", "u99");

    assertThat(said("the club has no such group")).hasSize(1);
  }

  @Test
  void a_day_without_a_practice_or_with_a_game_has_none() throws Exception {
    onThe(7);
    assertThat(said("the calendar has no such practice")).hasSize(1);
    club.calendar("2027-04-07,u10,game,90,,1");
    assertThat(said("the calendar has no such practice")).hasSize(1);
  }

  @Test
  void an_evaluation_is_a_practice_too() throws Exception {
    club.calendar("2027-04-07,u10,evaluation,90,45,1");
    onThe(7);

    assertThat(said("the calendar has no such practice")).isEmpty();
  }

  @Test
  void half_of_the_minutes_are_for_hitting_and_the_group_has_its_tossers() throws Exception {
    club.calendar("2027-04-07,u10,practice,60,,");
    onThe(7);
    practice().put("minutes", 60).put("hitting_minutes", 30);

    assertThat(said("by the calendar")).isEmpty();
    practice().put("minutes", 61).put("hitting_minutes", 29).put("adults", 2);
    assertThat(said("by the calendar"))
        .containsExactly(
            "u10 2027-04-07: hitting_minutes is 29; by the calendar it is 30",
            "u10 2027-04-07: adults is 2; by the calendar it is 1",
            "u10 2027-04-07: minutes is 61; by the calendar it is 60");
  }

  @Test
  void a_group_without_a_calendar_is_taken_to_practice_twice_a_week() throws Exception {
    club.noCalendar();
    onThe(8);
    assertThat(said("by the calendar")).isEmpty();
    assertThat(said("the calendar has no")).isEmpty();

    practice().put("minutes", 91).put("hitting_minutes", 44).put("adults", 2).put("start", "17:00");
    assertThat(said("by the calendar"))
        .containsExactly(
            "u10 2027-04-08: hitting_minutes is 44; by the calendar it is 45",
            "u10 2027-04-08: adults is 2; by the calendar it is 1",
            "u10 2027-04-08: minutes is 91; by the calendar it is 90",
            "u10 2027-04-08: start is \"17:00\"; by the calendar it is not said");
    onThe(7);
    assertThat(said("the calendar has no such practice")).hasSize(1);
  }

  private void places() throws Exception {
    club.places(
        "{id: field, name: Heron Field, kind: field, stations: 2}",
        "{id: shed, name: Boat Shed, kind: cage, stations: 1}");
  }

  @Test
  void a_venue_is_called_by_its_name_and_says_what_kind_of_place_it_is() throws Exception {
    places();
    club.withPlace("2027-04-07,u10,practice,90,45,1,shed");
    onThe(7);

    assertThat(said("by the calendar"))
        .containsExactly(
            "u10 2027-04-07: where is \"\"; by the calendar it is 'Boat Shed'",
            "u10 2027-04-07: place is \"field\"; by the calendar it is 'cage'",
            "a1 2027-04-07: the place is field; by the calendar the practice is at the cage");
    practice().put("where", "Boat Shed").put("place", "cage");
    ((ObjectNode) plan.at("/players/0/days/0")).put("place", "cage");
    assertThat(said("by the calendar")).isEmpty();
    assertThat(said("its other ways")).isEmpty();
  }

  @Test
  void a_place_that_is_no_venue_is_a_cage_by_its_name_alone() throws Exception {
    club.withPlace(
        "2027-04-07,u10,practice,90,45,1,Old CAGE", "2027-04-08,u10,practice,90,45,1,Moor");
    onThe(7);
    practice().put("where", "Old CAGE").put("place", "cage");
    ((ObjectNode) plan.at("/players/0/days/0")).put("place", "cage");
    assertThat(said("by the calendar")).isEmpty();

    onThe(8);
    assertThat(said("by the calendar"))
        .contains("u10 2027-04-08: place is \"cage\"; by the calendar it is 'field'");
  }

  private ObjectNode way(String name, int adults, String place) {
    ObjectNode way = practice().withArray("ways").addObject();
    way.put("way", name).put("adults", adults).put("place", place);
    way.putArray("stations");
    way.putObject("swings");
    return way;
  }

  @Test
  void with_a_cage_there_is_a_way_for_rain_with_the_adults_of_the_day() throws Exception {
    places();
    club.withPlace("2027-04-07,u10,practice,90,45,1,field");
    onThe(7);
    practice().put("where", "Heron Field");
    assertThat(said("other ways are")).singleElement().asString().contains("it needs [rain]");

    ObjectNode rain = way("rain", 2, "field");
    assertThat(said("rain:"))
        .containsExactly(
            "u10 2027-04-07, rain: adults is 2; by the calendar it is 1",
            "u10 2027-04-07, rain: place is \"field\"; by the calendar it is 'cage'");
    rain.put("adults", 1).put("place", "cage");
    assertThat(said("rain")).isEmpty();
  }

  @Test
  void where_two_stations_have_an_adult_there_is_a_way_for_one() throws Exception {
    club.calendar("2027-04-07,u10,practice,90,45,2");
    onThe(7);
    practice().put("adults", 2);
    ObjectNode second = station().deepCopy();
    practice().withArray("stations").add(second.put("station", 2));
    assertThat(said("other ways are")).singleElement().asString().contains("it needs [one-adult]");
    ((ObjectNode) practice().at("/stations/1")).put("adult", false).put("adults", 0);
    assertThat(said("other ways are")).isEmpty();

    ((ObjectNode) practice().at("/stations/1")).put("adult", true).put("adults", 1);
    ObjectNode one = way("one-adult", 1, "field");
    assertThat(said("one-adult")).isEmpty();
    one.put("adults", 2).put("place", "cage");
    assertThat(said("one-adult:")).hasSize(2);
  }

  @Test
  void swings_of_another_way_are_for_own_children_whom_nothing_holds() throws Exception {
    ObjectNode way = way("rain", 1, "cage");
    ObjectNode swings = (ObjectNode) way.path("swings");
    swings.put("a1", 5).put("b1", 0).put("z9", 0);
    assertThat(said("swings for")).isEmpty();

    swings.put("b1", 1).put("z9", 1);
    assertThat(said("swings for"))
        .containsExactly(
            "u10 2027-04-06, rain, b1: swings for a child of no such group; its own children hit",
            "u10 2027-04-06, rain, z9: swings for a child of no such group; its own children hit");
    swings.remove(List.of("b1", "z9"));
    ada = held("throwing", 1);
    assertThat(said("swings for")).isEmpty();
    ada = held("swinging", 7);
    assertThat(said("swings for")).isEmpty();
    ada = held("swinging", 6);
    assertThat(said("who is held")).hasSize(1);
    ada = held("everything", 1);
    assertThat(said("who is held")).hasSize(1);
  }

  private FinishedPlan.Person held(String what, int from) {
    return SmallClub.held(
        ada, new FinishedPlan.Held(what, SmallClub.april(from), Optional.empty()));
  }

  @Test
  void stations_are_numbered_from_one_each_once() throws Exception {
    practice().withArray("stations").add(station().deepCopy());
    assertThat(said("station 1 stands twice")).hasSize(1);
    ((ObjectNode) practice().at("/stations/1")).put("station", 3);
    assertThat(said("a station 3")).singleElement().asString().contains("they are 1 to 2");
    ((ObjectNode) practice().at("/stations/1")).put("station", 0);
    assertThat(said("a station 0")).hasSize(1);
    ((ObjectNode) practice().at("/stations/1")).put("station", 2);
    assertThat(said("a station ")).isEmpty();
  }

  /** So many stations with an adult each, in a calendar with so many adults. */
  private void stations(int stations, int adults) throws Exception {
    club.calendar("2027-04-07,u10,practice,90,45," + adults);
    onThe(7);
    practice().put("adults", adults);
    for (int i = 2; i <= stations; i++) {
      practice().withArray("stations").add(station().deepCopy().put("station", i));
    }
  }

  @Test
  void no_more_stations_have_an_adult_than_there_are_adults() throws Exception {
    stations(3, 2);

    assertThat(said("stations with an adult"))
        .singleElement()
        .asString()
        .contains("3 stations with an adult", "room for 4, and there are 2 adults");
    practice().put("adults", 3);
    assertThat(said("stations with an adult")).isEmpty();
  }

  @Test
  void nor_than_the_place_has_room_for() throws Exception {
    places();
    club.withPlace("2027-04-08,u10,practice,90,45,5,shed");
    stations(2, 5);
    onThe(8);
    assertThat(said("stations with an adult"))
        .singleElement()
        .asString()
        .contains("room for 1, and there are 5 adults");
    onThe(7);
    assertThat(said("stations with an adult")).as("four is the usual room").isEmpty();
  }

  /** A roster of so many besides Ada, each with the work of the day. */
  private void children(int children) throws Exception {
    List<String> roster = new ArrayList<>(List.of("id,first_name,born,bats,group,pitches"));
    roster.add("a1,Ada,2017-01-05,R,u10,yes");
    IntStream.range(2, children + 1)
        .mapToObj(i -> "a" + i + ",Kid" + (char) ('A' + i) + ",2017-01-05,R,u10,yes")
        .forEach(roster::add);
    club.with("roster.csv", roster.toArray(String[]::new));
    ArrayNode players = plan.withArray("players");
    for (int i = 2; i <= children; i++) {
      ObjectNode player = ((ObjectNode) players.get(0)).deepCopy();
      players.add(player.put("player", "a" + i));
    }
  }

  @Test
  void a_squad_is_small_where_there_is_room_for_another_station() throws Exception {
    children(SQUAD + 1);
    stations(1, 2);
    assertThat(said("stations for"))
        .singleElement()
        .asString()
        .contains("1 stations for 6 children", "squads are of 5 at most");

    practice().put("adults", 1);
    assertThat(said("stations for")).as("no adult for another").isEmpty();
    practice().put("adults", 2).put("hitting_minutes", 13);
    assertThat(said("stations for")).as("no minutes for another").isEmpty();
    practice().put("hitting_minutes", 14);
    assertThat(said("stations for")).hasSize(1);
  }

  @Test
  void a_full_squad_is_no_crowd() throws Exception {
    children(SQUAD);
    stations(1, 2);

    assertThat(said("stations for")).isEmpty();
  }

  @Test
  void there_are_no_more_stations_than_children_and_at_least_one() throws Exception {
    stations(2, 2);
    assertThat(said("2 stations for 1 children")).hasSize(1);
    practice().putArray("stations");
    assertThat(said("0 stations for 1 children")).hasSize(1);
  }

  @Test
  void where_some_children_alone_were_asked_for_squads_cannot_be_judged() throws Exception {
    stations(2, 2);
    ((ArrayNode) plan.at("/asked/players")).add("a1");

    assertThat(said("stations for")).isEmpty();
  }

  @Test
  void stations_without_an_adult_are_as_many_as_rounds_are_left() throws Exception {
    children(4);
    stations(4, 1);
    IntStream.range(1, 4)
        .forEach(
            i ->
                ((ObjectNode) practice().at("/stations/" + i))
                    .put("adult", false)
                    .put("adults", 0));
    practice().put("hitting_minutes", 28);
    assertThat(said("stations to watch from")).as("3 of 4 rounds, one with an adult").isEmpty();
    practice().put("hitting_minutes", 27);
    assertThat(said("stations to watch from"))
        .singleElement()
        .asString()
        .contains("3 stations to watch from", "27 minutes allow a round of 3");
  }

  @Test
  void work_is_what_a_station_has() throws Exception {
    ((ObjectNode) plan.at("/players/0/days/0/items/0")).put("drill", "tee-countdown");

    assertThat(said("no station has it"))
        .containsExactly(
            "a1 2027-04-06, tee-countdown: no station has it; the stations of u10 2027-04-06 have"
                + " [tee-belt-high]");
    ((ObjectNode) plan.at("/players/0/days/0")).put("place", "home");
    assertThat(said("no station has it")).isEmpty();
  }

  @Test
  void a_drill_is_done_where_the_curriculum_allows_it() throws Exception {
    station().putArray("drills").add("machine-near-and-far");
    assertThat(said("done on the field"))
        .singleElement()
        .asString()
        .contains("u10 2027-04-06, machine-near-and-far", "allows it elsewhere only");
    station().putArray("drills").add("no-such");
    assertThat(said("the curriculum has no such drill")).isNotEmpty();
  }

  private void drill(String id) {
    station().putArray("drills").add(id);
    ((ObjectNode) plan.at("/players/0/days/0/items/0")).put("drill", id);
  }

  @Test
  void a_machine_is_never_taken_for_granted_and_other_things_only_of_an_empty_list()
      throws Exception {
    assertThat(said("the club has no")).as("no list of equipment").isEmpty();
    drill("machine-near-and-far");
    assertThat(said("the club has no"))
        .containsExactly(
            "u10 2027-04-06, station 1: a drill needs a machine; the club has no machines (ours,"
                + " common practice)");

    drill("tee-belt-high");
    club.equipment("tees: 0, nets: 1");
    assertThat(said("the club has no"))
        .containsExactly(
            "u10 2027-04-06, station 1: a drill needs a tee; the club has no tees (ours, common"
                + " practice)");
    club.equipment("tees: 1");
    assertThat(said("the club has no"))
        .containsExactly(
            "u10 2027-04-06, station 1: a drill needs a net; the club has no nets (ours, common"
                + " practice)");
  }

  @Test
  void gear_of_another_way_is_the_clubs_too() throws Exception {
    club.equipment("tees: 1, nets: 1");
    ObjectNode way = way("rain", 1, "cage");
    ObjectNode there = way.withArray("stations").addObject().put("station", 7);
    there.putArray("drills").add("front-toss-drive");

    assertThat(said("rain, station 7"))
        .anyMatch(s -> s.contains("a drill needs a screen; the club has no screens"))
        .anyMatch(s -> s.contains("no screen is set up; a drill there is tossed from behind one"));
    there.put("screen", true);
    assertThat(said("no screen is set up")).isEmpty();
  }

  @Test
  void a_hard_ball_that_is_tossed_has_its_screen() throws Exception {
    drill("front-toss-drive");

    assertThat(said("tossed from behind one")).isNotEmpty();
    station().put("screen", true);
    assertThat(said("tossed from behind one")).isEmpty();
  }

  @Test
  void a_practice_of_the_first_week_stands_for_it_though_nobody_works_there() throws Exception {
    ((ObjectNode) plan.at("/players/0/days/0")).put("date", "2027-04-13");
    club.calendar("2027-04-13,u10,practice,90,45,1");
    assertThat(said("is missing")).isEmpty();

    practice().put("group", "u14");
    assertThat(said("is missing"))
        .containsExactly(
            "u10 2027-04-13: the practice is missing, and a1 has work there; the practices of the"
                + " first week have their stations, or else the next one");
    practice().put("group", "u10").put("date", "2027-04-12");
    assertThat(said("is missing")).as("the next week does not stand for it").hasSize(1);
    ((ObjectNode) plan.at("/players/0/days/0")).put("place", "home");
    assertThat(said("is missing")).isEmpty();
  }
}
