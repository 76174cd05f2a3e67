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
    return said(given -> new RotationCheck(given).check());
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
  void whose_swings_are_used_up_has_the_first_stays_alone() {
    SquadDay squad =
        new SquadDay(
            List.of(
                new SquadDay.Visit("tee", 8, true),
                new SquadDay.Visit("", 8, false),
                new SquadDay.Visit("toss", 8, true),
                new SquadDay.Visit("cards", 8, false)));

    assertThat(squad.allows(Map.of("tee", 8, "toss", 8, "cards", 8))).isTrue();
    assertThat(squad.allows(Map.of("tee", 8, "cards", 8))).isTrue();
    assertThat(squad.allows(Map.of("toss", 8, "cards", 8))).isFalse();
    assertThat(squad.allows(Map.of("tee", 8))).isFalse();
    assertThat(squad.allows(Map.of("cards", 8))).isFalse();
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
}
