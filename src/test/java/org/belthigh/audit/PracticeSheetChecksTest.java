package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.april;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.model.Place;
import org.junit.jupiter.api.Test;

/** What is wrong in the stations and rotations of a practice, one thing a test. */
class PracticeSheetChecksTest extends SoundPractice {
  private List<String> rotations() throws Exception {
    return said(given -> new RotationCheck(given, SmallClub.WORDS).check());
  }

  private List<String> stations() throws Exception {
    return said(given -> new StationCheck(given, practice(), Place.FIELD).check());
  }

  private List<String> calendar() throws Exception {
    return said(given -> new PracticeCheck(given, SmallClub.WORDS).check()).stream()
        .filter(s -> s.contains("by the calendar") || s.contains("ways"))
        .toList();
  }

  @Test
  void a_sound_practice_is_not_spoken_of() throws Exception {
    assertThat(rotations()).isEmpty();
    assertThat(stations()).isEmpty();
    assertThat(calendar()).isEmpty();
  }

  @Test
  void rotations_that_are_emptied_or_moved_or_of_other_lengths_are_told() throws Exception {
    rotation(1).put("minute", 12);
    assertThat(rotations()).singleElement().asString().contains("not of one length");
    rotation(1).put("minute", 8).put("minutes", 9);
    assertThat(rotations()).anyMatch(s -> s.contains("not of one length"));
    rotation(1).put("minute", 40).put("minutes", 8);
    assertThat(rotations()).anyMatch(s -> s.contains("rotations up to minute 48"));
    practice().putArray("rotations");
    assertThat(rotations()).anyMatch(s -> s.contains("there is no rotation"));
  }

  @Test
  void a_child_at_no_station_or_at_one_that_is_not_there_is_told() throws Exception {
    post(1).putArray("players");
    assertThat(rotations())
        .anyMatch(s -> s.startsWith("u10 2027-04-06, minute 8, a1: at no station"))
        .anyMatch(s -> s.contains("nobody is at station 1"));
    post(1).putArray("players").add("a1");
    post(1).put("station", 2);
    assertThat(rotations()).singleElement().asString().contains("squads are at the stations [2]");
  }

  @Test
  void the_job_goes_with_the_drill() throws Exception {
    post(0).put("job", "watches");
    assertThat(rotations()).singleElement().asString().contains("its squad watches in tee");
    post(0).put("job", "rests");
    assertThat(rotations()).singleElement().asString().contains("its squad rests");
  }

  @Test
  void who_may_not_swing_helps_and_is_in_no_squad() throws Exception {
    ada = SmallClub.held(ada, new FinishedPlan.Held("swinging", april(1), Optional.empty()));
    practice().putArray("no_swinging").add("a1");
    assertThat(rotations())
        .anyMatch(s -> s.contains("a1: in a squad that bats"))
        .anyMatch(s -> s.contains("[] help"));
  }

  @Test
  void a_list_of_held_children_has_them_all_and_no_others() throws Exception {
    practice().putArray("no_throwing").add("a1").add("z9");
    assertThat(rotations())
        .containsExactly(
            "u10 2027-04-06, a1: listed under no_throwing; no hold of the plan stops throwing that"
                + " day",
            "u10 2027-04-06, z9: listed under no_throwing; no such child");
    practice().remove("no_throwing");
    ada = SmallClub.held(ada, new FinishedPlan.Held("throwing", april(1), Optional.empty()));
    assertThat(rotations()).singleElement().asString().contains("a1: not listed under no_throwing");
  }

  @Test
  void the_childs_own_day_has_the_minutes_of_its_squad() throws Exception {
    ada = SmallClub.ada(SmallClub.day(6, "field", 9, SmallClub.tee("baseball", 8, 9)));
    assertThat(rotations())
        .containsExactly(
            "u10 2027-04-06, a1: its own day has these drills and minutes: {tee-belt-high=9};"
                + " the rotations have {tee-belt-high=16}");
  }

  @Test
  void a_day_with_fewer_swings_may_have_none() throws Exception {
    post(0).put("drill", "spot-cards").put("job", "watches");
    ada =
        SmallClub.ada(
            SmallClub.day(
                6, "field", 8, new FinishedPlan.Work("spot-cards", "none", "none", 0, 12, 0, 8)));
    ObjectNode day = (ObjectNode) plan.at("/players/0/days/0");
    day.put("note", SmallClub.WORDS.say("day.practice", "es"));
    assertThat(rotations())
        .singleElement()
        .asString()
        .contains("a1: its own day has these drills and minutes: {spot-cards=8}");
    day.put("note", SmallClub.WORDS.say("day.practice.back", "en"));
    assertThat(rotations()).isEmpty();
  }

  @Test
  void whose_swings_are_used_up_has_the_first_stays_alone() {
    SquadDay squad =
        new SquadDay(
            List.of(
                new SquadDay.Visit("tee", 8, true),
                new SquadDay.Visit("", 8, false),
                new SquadDay.Visit("toss", 8, true),
                new SquadDay.Visit("cards", 8, false)));

    assertThat(squad.allows(Map.of("tee", 8, "toss", 8, "cards", 8), false)).isTrue();
    assertThat(squad.allows(Map.of("tee", 8, "cards", 8), false)).isTrue();
    assertThat(squad.allows(Map.of("toss", 8, "cards", 8), false)).isFalse();
    assertThat(squad.allows(Map.of("tee", 8), false)).isFalse();
    assertThat(squad.allows(Map.of("cards", 8), false)).isFalse();
    assertThat(squad.allows(Map.of("cards", 8), true)).as("fewer may be none").isTrue();
    assertThat(squad.allows(Map.of("toss", 8, "cards", 8), true)).isFalse();
  }

  @Test
  void a_station_has_the_drills_of_its_squads() throws Exception {
    station().putArray("drills");
    assertThat(stations()).anyMatch(s -> s.contains("station 1: drills []"));
    station().putArray("drills").add("tee-belt-high").add("no-such-drill");
    assertThat(stations())
        .anyMatch(s -> s.contains("drills [no-such-drill, tee-belt-high]"))
        .anyMatch(s -> s.contains("the drill no-such-drill; the curriculum has no such drill"));
  }

  @Test
  void feed_ball_and_distance_are_those_of_the_drill() throws Exception {
    station().put("feet", 4);
    assertThat(stations()).singleElement().asString().contains("feet 4; its first drill has 0");
    ObjectNode use = (ObjectNode) station().path("uses").get(0);
    use.put("feet", 4);
    assertThat(stations()).singleElement().asString().contains("tossed from 4 ft");
    use.put("feet", 0).put("ball", "foam");
    station().put("feet", 0).put("ball", "foam");
    assertThat(stations()).singleElement().asString().contains("the ball is foam");
    station().putArray("uses");
    assertThat(stations()).anyMatch(s -> s.contains("drills in use []"));
  }

  @Test
  void screen_gear_and_adults_are_those_that_the_drills_need() throws Exception {
    station().put("screen", true);
    assertThat(stations()).singleElement().asString().contains("a screen is set up");
    station().put("screen", false).put("adults", 0);
    assertThat(stations()).singleElement().asString().contains("adults 0");
    station().put("adults", 1);
    ((ObjectNode) practice().path("gear").get(0)).put("count", 3);
    assertThat(stations()).singleElement().asString().contains("the gear list has 3 of");
    station().withArray("gear").remove(0);
    assertThat(stations()).anyMatch(s -> s.contains("station 1: gear {"));
  }

  @Test
  void logs_and_toss_lists_are_those_of_the_drills() throws Exception {
    practice().put("toss_lists", true);
    assertThat(stations()).singleElement().asString().contains("toss_lists is true");
    practice().put("toss_lists", false).putArray("logs");
    assertThat(stations()).singleElement().asString().contains("log sheets of the drills []");
  }

  @Test
  void the_calendar_has_the_last_word() throws Exception {
    practice().put("minutes", 150).put("start", "05:05").put("kind", "game").put("place", "cage");
    practice().put("where", "Far meadow");
    assertThat(calendar())
        .anyMatch(s -> s.contains("minutes is 150; by the calendar it is 90"))
        .anyMatch(s -> s.contains("start is \"05:05\"; by the calendar it is not said"))
        .anyMatch(s -> s.contains("kind is \"game\"; by the calendar it is 'practice'"))
        .anyMatch(s -> s.contains("place is \"cage\"; by the calendar it is 'field'"))
        .anyMatch(s -> s.contains("where is \"Far meadow\""));
    practice().withArray("ways").addObject().put("way", "snow");
    assertThat(calendar()).anyMatch(s -> s.contains("its other ways are [snow]"));
  }

  @Test
  void work_of_a_later_week_is_where_the_calendar_has_it_too() throws Exception {
    club.calendar("2027-04-15,u10,practice,90,45,1");
    ((ObjectNode) plan.path("players").get(0).path("days").get(0))
        .put("date", "2027-04-15")
        .put("place", "cage");
    assertThat(calendar())
        .containsExactly(
            "a1 2027-04-15: the place is cage; by the calendar the practice is at the field");
  }

  @Test
  void where_some_children_alone_were_asked_for_the_sheets_have_the_others_too() throws Exception {
    practice().putArray("no_throwing").add("b1");
    assertThat(rotations()).singleElement().asString().contains("b1: listed under no_throwing");
    ((ObjectNode) plan.path("asked")).putArray("players").add("a1");
    assertThat(rotations()).isEmpty();
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches,home_space",
        "a1,Ada,2017-01-05,R,u10,yes,hallway",
        "a2,Amy,2017-01-05,R,u10,yes,hallway",
        "b1,Bo,2013-02-05,R,u14,yes,yard");
    ((ArrayNode) practice().path("logs").get(0).path("hitters")).add("a2");
    assertThat(stations()).isEmpty();
  }

  @Test
  void a_practice_that_is_missing_is_told_also_where_it_is_the_next_one() throws Exception {
    plan.putArray("practices");
    assertThat(said(given -> new PracticeCheck(given, SmallClub.WORDS).check()))
        .singleElement()
        .asString()
        .contains("u10 2027-04-06: the practice is missing");
    ((ObjectNode) plan.path("players").get(0).path("days").get(0)).put("date", "2027-04-13");
    assertThat(said(given -> new PracticeCheck(given, SmallClub.WORDS).check()))
        .singleElement()
        .asString()
        .contains("u10 2027-04-13: the practice is missing");
  }

  @Test
  void stays_lie_at_most_the_minutes_of_a_change_apart_and_end_with_the_hitting() throws Exception {
    rotation(1).put("minute", 9);
    assertThat(rotations()).isEmpty();
    rotation(1).put("minute", 10);
    assertThat(rotations())
        .containsExactly(
            "u10 2027-04-06: the rotations are not of one length, one after another; from minute 0"
                + " on, with 1 minutes at most to change stations");
    rotation(1).put("minute", 7);
    assertThat(rotations()).singleElement().asString().contains("not of one length");
    rotation(1).put("minute", 9);
    practice().put("hitting_minutes", 17);
    assertThat(rotations()).isEmpty();
    practice().put("hitting_minutes", 16);
    assertThat(rotations())
        .containsExactly("u10 2027-04-06: rotations up to minute 17; 16 minutes are for hitting");
    rotation(0).put("minutes", 0);
    rotation(1).put("minutes", 0).put("minute", 0);
    assertThat(rotations()).anyMatch(s -> s.contains("not of one length"));
  }

  @Test
  void who_works_that_day_has_a_squad() throws Exception {
    post(0).putArray("players");
    post(1).putArray("players");
    assertThat(rotations())
        .contains("u10 2027-04-06, a1: no squad has the child; each has one")
        .noneMatch(s -> s.contains("b1"));
    ada = SmallClub.ada(SmallClub.home(6, 8, 16));
    assertThat(rotations()).noneMatch(s -> s.contains("no squad has the child"));
    ada = SmallClub.ada(SmallClub.day(7, "field", 16, SmallClub.tee("baseball", 8, 16)));
    assertThat(rotations()).noneMatch(s -> s.contains("no squad has the child"));
    ada = SmallClub.ada(SmallClub.day(6, "field", 0));
    assertThat(rotations()).noneMatch(s -> s.contains("no squad has the child"));
  }

  @Test
  void nobody_is_in_two_places_or_from_another_group() throws Exception {
    post(0).withArray("players").add("a1");
    assertThat(rotations())
        .anyMatch(s -> s.startsWith("u10 2027-04-06, minute 0, a1: in two places at once"));
    post(0).putArray("players").add("a1").add("b1").add("z9");
    assertThat(rotations())
        .filteredOn(s -> s.contains("no such child"))
        .hasSize(2)
        .allMatch(s -> s.startsWith("u10 2027-04-06, minute 0, "));
  }

  private ObjectNode helper(int rotation, String... players) {
    ObjectNode post = rotation(rotation).withArray("posts").addObject();
    post.put("station", 1).putNull("drill").put("job", "helps");
    ArrayNode list = post.putArray("players");
    List.of(players).forEach(list::add);
    return post;
  }

  @Test
  void who_may_not_swing_helps_at_a_station_of_the_practice_and_nobody_else_does()
      throws Exception {
    ada = SmallClub.held(ada, new FinishedPlan.Held("swinging", april(1), Optional.empty()));
    practice().putArray("no_swinging").add("a1");
    for (int i = 0; i < 2; i++) {
      post(i).putArray("players");
      helper(i, "a1");
    }
    assertThat(rotations())
        .as("a station with nobody, and work that nobody does")
        .allMatch(s -> s.contains("nobody is at station 1") || s.contains("no squad has"));
    helper(1).put("station", 4);
    assertThat(rotations())
        .anyMatch(s -> s.contains("minute 8: helpers are at the station 4; stations are those"));

    practice().putArray("no_swinging");
    assertThat(rotations())
        .anyMatch(s -> s.contains("minute 0: [a1] help; who may not swing helps: []"));
  }

  @Test
  void a_squad_without_a_drill_fields() throws Exception {
    post(1).putNull("drill").put("job", "fields");
    assertThat(rotations()).noneMatch(s -> s.contains("its squad"));
    post(1).put("job", "hits");
    assertThat(rotations()).anyMatch(s -> s.contains("its squad hits without a drill"));
    post(1).put("job", "watches");
    assertThat(rotations()).anyMatch(s -> s.contains("its squad watches without a drill"));
    post(1).put("job", "dances");
    assertThat(rotations()).anyMatch(s -> s.contains("its squad dances without a drill"));
    post(1).put("drill", "spot-cards").put("job", "watches");
    assertThat(rotations()).noneMatch(s -> s.contains("its squad"));
    post(1).put("job", "hits");
    assertThat(rotations()).anyMatch(s -> s.contains("its squad hits in spot-cards"));
  }

  @Test
  void what_is_used_at_two_stations_at_once_is_there_twice() throws Exception {
    ObjectNode second = post(0).deepCopy();
    rotation(0).withArray("posts").add(second.put("station", 2));
    assertThat(rotations()).as("no list of equipment").noneMatch(s -> s.contains("stations use"));
    club.equipment("tees: 2, nets: 1");
    assertThat(rotations())
        .filteredOn(s -> s.contains("stations use"))
        .containsExactly(
            "u10 2027-04-06, minute 0: 2 stations use a net; the club has 1 (ours, common"
                + " practice)");
  }

  @Test
  void a_child_whom_everything_stops_is_not_there_and_on_no_list() throws Exception {
    ada = SmallClub.held(ada, new FinishedPlan.Held("everything", april(1), Optional.empty()));
    assertThat(rotations()).noneMatch(s -> s.contains("not listed"));
    practice().putArray("no_throwing").add("a1");
    assertThat(rotations()).anyMatch(s -> s.contains("a1: listed under no_throwing"));

    ada = SmallClub.held(ada, new FinishedPlan.Held("throwing", april(1), Optional.of(april(5))));
    assertThat(rotations()).as("over by then").anyMatch(s -> s.contains("listed under no_thr"));
  }

  @Test
  void work_at_home_of_that_day_is_no_work_of_the_practice() throws Exception {
    ada =
        SmallClub.ada(
            SmallClub.day(6, "field", 16, SmallClub.tee("baseball", 8, 16)),
            SmallClub.home(6, 8, 8),
            SmallClub.day(7, "field", 16, SmallClub.tee("baseball", 8, 16)));

    assertThat(rotations()).isEmpty();
  }

  private void drill(String id, String feed, String ball, int feet) {
    for (ObjectNode what : List.of(station(), (ObjectNode) station().path("uses").get(0))) {
      what.put("feed", feed).put("ball", ball).put("feet", feet);
    }
    ((ObjectNode) station().path("uses").get(0)).put("drill", id);
    station().putArray("drills").add(id);
    post(0).put("drill", id);
    post(1).put("drill", id);
  }

  private List<String> toss(String about) throws Exception {
    return stations().stream().filter(s -> s.contains(about)).toList();
  }

  @Test
  void a_toss_is_by_the_hand_and_from_the_feet_of_the_oldest() throws Exception {
    drill("front-toss-drive", "front-toss", "baseball", 15);
    assertThat(toss("tossed from")).isEmpty();
    assertThat(toss("fed by")).isEmpty();
    assertThat(toss("toss_lists is false")).hasSize(1);
    assertThat(toss("no screen is set up")).hasSize(1);

    drill("front-toss-drive", "flip", "baseball", 12);
    assertThat(toss("fed by flip")).hasSize(1);
    assertThat(toss("tossed from 12 ft"))
        .singleElement()
        .asString()
        .contains("this drill is tossed from [15] ft");
    ((ObjectNode) plan.path("asked")).putArray("players").add("a1");
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches",
        "a1,Ada,2017-01-05,R,u10,yes",
        "a2,Amy,2018-05-05,R,u10,yes",
        "b1,Bo,2013-02-05,R,u14,yes");
    assertThat(toss("tossed from 12 ft")).as("of a child of 8 who was not asked for").isEmpty();
    drill("front-toss-drive", "front-toss", "baseball", 18);
    assertThat(toss("tossed from 18 ft")).hasSize(1);
  }

  @Test
  void a_softball_group_may_have_its_own_ball_and_no_other_group() throws Exception {
    drill("front-toss-drive", "front-toss", "softball", 15);
    assertThat(toss("the ball is softball")).hasSize(1);
    club.softball();
    assertThat(toss("the ball is")).isEmpty();
    drill("front-toss-drive", "front-toss", "foam", 15);
    assertThat(toss("the ball is foam")).hasSize(1);
  }

  @Test
  void a_station_without_a_drill_says_nothing_of_one() throws Exception {
    station().putArray("uses");
    station().putArray("drills");
    station().putNull("feed").putNull("ball").put("feet", 0);
    assertThat(toss("its first drill has")).isEmpty();
    station().putNull("feet");
    assertThat(toss("its first drill has")).isEmpty();
    station().put("feet", 3);
    assertThat(toss("feet 3; its first drill has")).hasSize(1);
    station().put("feet", 0).put("ball", "foam");
    assertThat(toss("ball foam; its first drill has")).hasSize(1);
  }

  @Test
  void drills_with_numbers_have_log_sheets_and_others_none() throws Exception {
    drill("spot-cards", "none", "none", 0);
    assertThat(toss("log sheets of the drills"))
        .containsExactly(
            "u10 2027-04-06: log sheets of the drills [tee-belt-high]; its squads and drills ask"
                + " for []");
    drill("zone-call", "front-toss", "baseball", 15);
    assertThat(toss("ask for [zone-call]")).isNotEmpty();
    drill("load-on-time", "front-toss", "tennis", 15);
    assertThat(toss("log sheets of the drills")).singleElement().asString().endsWith("ask for []");
    ((ArrayNode) practice().at("/logs/0/hitters")).add("b1");
    assertThat(toss("log of tee-belt-high: hitters [a1, b1]")).hasSize(1);
  }

  private ObjectNode otherWay(String place, String drill) {
    ObjectNode way = practice().withArray("ways").addObject().put("way", "rain");
    ObjectNode there = way.put("place", place).withArray("stations").addObject();
    there.put("station", 1).put("adult", true).put("adults", 1).put("screen", false);
    there.putArray("drills").add(drill);
    return there;
  }

  @Test
  void stations_of_another_way_are_looked_at_too() throws Exception {
    otherWay("cage", "front-toss-drive");
    assertThat(toss("rain, station 1"))
        .anyMatch(s -> s.contains("no screen is set up"))
        .anyMatch(s -> s.contains("drills in use []"));
  }

  @Test
  void the_gear_list_lies_between_the_least_and_the_most_of_all_ways() throws Exception {
    otherWay("cage", "tee-belt-high");
    otherWay("cage", "machine-near-and-far");
    assertThat(toss("the gear list has 0 of machine"))
        .containsExactly(
            "u10 2027-04-06: the gear list has 0 of machine; in use at one time are 1");
    practice().withArray("gear").addObject().put("what", "machine").put("count", 1);
    assertThat(toss("the gear list has")).allMatch(s -> s.contains("screen"));
    practice().withArray("gear").addObject().put("what", "screen").put("count", 1);
    assertThat(toss("the gear list has")).isEmpty();
    ((ObjectNode) practice().path("gear").get(0)).put("count", 2);
    String thing = practice().path("gear").get(0).path("what").asText();
    assertThat(toss("the gear list has 2 of " + thing)).hasSize(1);
    ObjectNode more = (ObjectNode) practice().withArray("ways").get(0);
    more.withArray("stations").add(more.at("/stations/0").deepCopy());
    assertThat(toss("the gear list has 2 of " + thing)).as("at two stations at once").isEmpty();
  }

  private static Map<String, Integer> gear(String drill, Place place) {
    return DrillGear.of(SmallClub.CATALOGUE.curricula().get("belthigh-2027").drill(drill), place);
  }

  @Test
  void gear_is_what_a_drill_needs_with_the_ball_of_the_place() {
    assertThat(gear("tee-belt-high", Place.FIELD))
        .isEqualTo(
            Map.of(
                "tee",
                1,
                "bat",
                1,
                "helmet",
                1,
                "net",
                1,
                "ball-bucket",
                1,
                "plate",
                1,
                "clipboard",
                1));
    assertThat(gear("tee-belt-high", Place.HOME)).containsKey("plastic-balls");
    assertThat(gear("tee-belt-high", Place.HOME)).doesNotContainKey("ball-bucket");
    assertThat(gear("front-toss-home", Place.FIELD)).as("not done there").isEmpty();
  }

  @Test
  void eyes_are_kept_at_both_ends_of_a_toss_unless_a_screen_stands_there() {
    assertThat(gear("load-on-time", Place.FIELD)).containsEntry("eyewear", 2);
    assertThat(gear("zone-call", Place.FIELD)).containsEntry("screen", 1);
    assertThat(gear("zone-call", Place.FIELD)).doesNotContainKey("eyewear");
    assertThat(gear("catch-the-strikes", Place.FIELD)).containsEntry("helmet", 1);
    assertThat(gear("spot-cards", Place.FIELD)).isEqualTo(Map.of("cards", 1));
    assertThat(gear("swing-and-stand", Place.FIELD)).isEqualTo(Map.of("bat", 1, "helmet", 1));
  }
}
