package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each item of a day: a drill of its skill and of the step that the child works on, with what the
 * family has. Drills and steps are those of the curriculum {@code belthigh-2027}; Ada works on
 * see-2, and has a hallway, plastic and foam balls.
 */
class ItemCheckTest {
  private static final String SEE_2 =
      "'decisions':[{'skill':'see','step':'see-2','next':null}],'weeks':[{'kind':'usual'}]";

  private static final String SOUND =
      "'drill':'quick-strike-ball','skill':'see','step':'see-2','ball':'foam','feet':15,"
          + "'reps':12,'minutes':8";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  /** On a Tuesday. */
  private static String day(String place, String... items) {
    return on("2027-04-06", place, items);
  }

  private static String on(String date, String place, String... items) {
    return "'days':[{'date':'"
        + date
        + "','place':'"
        + place
        + "','items':["
        + String.join(",", List.of(items).stream().map(i -> "{" + i + "}").toList())
        + "]}]";
  }

  private List<String> ada(String keys) throws Exception {
    return Beside.ofAda(club, keys, (g, c) -> new ItemCheck(g, Optional.empty()).check(c));
  }

  private List<String> bo(String keys) throws Exception {
    return Beside.ofBo(club, keys, (g, c) -> new ItemCheck(g, Optional.empty()).check(c));
  }

  private List<String> home(String was, String is) throws Exception {
    assertThat(SOUND).contains(was);
    return ada(SEE_2 + "," + day("home", SOUND.replace(was, is)));
  }

  private void gear(String home) throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,home_space,home_gear,home_days",
        "a1,Ada,2017-01-05,R,u10,yard," + home);
  }

  @Test
  void what_is_as_it_should_be_is_not_spoken_of() throws Exception {
    assertThat(ada(SEE_2 + "," + day("home", SOUND))).isEmpty();
    assertThat(ada(SEE_2 + "," + day("field", SOUND))).isEmpty();
    assertThat(ada(day("home", SOUND))).as("without a decision the step is not known").isEmpty();
  }

  @Test
  void its_skill_is_that_of_the_drill() throws Exception {
    assertThat(home("'skill':'see'", "'skill':'choose'"))
        .containsExactly(
            "a1 2027-04-06, quick-strike-ball: its skill is 'choose'; the drill is of see");
  }

  @ParameterizedTest
  @ValueSource(strings = {"choose-1", "see-9", ""})
  void its_step_is_one_of_that_skill(String step) throws Exception {
    assertThat(home("see-2", step))
        .containsExactly(
            "a1 2027-04-06, quick-strike-ball: its step is '" + step + "'; steps are those of see");
  }

  @Test
  void the_step_is_the_one_that_is_worked_on() throws Exception {
    String tracks = SOUND.replace("quick-strike-ball", "freeze-track").replace("see-2", "see-1");
    assertThat(ada(SEE_2 + "," + day("field", tracks)))
        .as("a drill of both steps")
        .containsExactly("a1 2027-04-06, freeze-track: its step is see-1; a1 works on see-2 now");
    assertThat(
            ada(
                "'decisions':[{'skill':'see','step':'see-1','next':'see-2'}],"
                    + day("home", SOUND)))
        .as("after a move up the next step is worked on")
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "see-1, 2027-04-11, see-1, true",
    "see-1, 2027-04-12, see-1, false",
    "none, 2027-04-06, see-1, false",
    "see-1, 2027-04-06, see-3, false"
  })
  void a_hitter_who_dipped_goes_back_a_step_in_the_first_week_and_nobody_else(
      String easier, String date, String step, boolean may) throws Exception {
    String tracks = SOUND.replace("quick-strike-ball", "watch-behind-net").replace("see-2", step);
    Optional<String> back = Optional.of(easier).filter(e -> !e.equals("none"));

    assertThat(
            Beside.ofAda(
                    club,
                    SEE_2 + "," + on(date, "field", tracks),
                    (g, c) -> new ItemCheck(g, back).check(c))
                .isEmpty())
        .isEqualTo(may);
  }

  @Test
  void at_home_the_drill_is_one_of_its_step() throws Exception {
    assertThat(home("quick-strike-ball", "catch-the-strikes"))
        .as("of see-1 alone")
        .singleElement()
        .asString()
        .startsWith(
            "a1 2027-04-06, catch-the-strikes: a drill of another step than see-2; its"
                + " drills are [quick-strike-ball,");
  }

  @Test
  void at_a_practice_of_many_an_easier_one_will_do_and_no_harder_one() throws Exception {
    String easier = SOUND.replace("quick-strike-ball", "catch-the-strikes");
    String harder = SOUND.replace("quick-strike-ball", "high-low-call");
    assertThat(ada(SEE_2 + "," + day("field", easier))).isEmpty();
    assertThat(ada(SEE_2 + "," + day("field", harder)))
        .singleElement()
        .asString()
        .contains("high-low-call: a drill of another step than see-2", "or those of a step before");
    String both = SOUND.replace("quick-strike-ball", "freeze-track");
    assertThat(ada(SEE_2 + "," + day("field", both))).as("of see-1 and see-2").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"plastic, foam", "foam, plastic"})
  void the_ball_is_one_that_the_family_has(String has, String lacks) throws Exception {
    gear(has + ",");
    assertThat(home("foam", has)).isEmpty();
    assertThat(home("foam", lacks))
        .singleElement()
        .asString()
        .contains("a " + lacks + " ball; the family has no such ball");
    assertThat(home("foam", "none")).as("no ball is owned by everybody").isEmpty();
  }

  @Test
  void tee_and_net_are_things_that_the_family_has() throws Exception {
    String tee = "'drill':'tee-belt-high','skill':'drive','step':'drive-1','reps':9,'minutes':9";
    gear("plastic,");
    assertThat(ada(day("home", tee)))
        .hasSize(2)
        .anyMatch(t -> t.contains("it needs a tee; the family has none"))
        .anyMatch(t -> t.contains("it needs a net; the family has none"));
    gear("plastic tee,");
    assertThat(ada(day("home", tee))).singleElement().asString().contains("it needs a net");
    gear("plastic tee net,");
    assertThat(ada(day("home", tee))).isEmpty();
    gear("plastic,");
    assertThat(ada(day("field", tee))).as("the club's own at a practice").isEmpty();
  }

  @Test
  void no_family_is_asked_for_a_machine() throws Exception {
    String machine =
        "'drill':'machine-near-and-far','skill':'drive','step':'drive-6','reps':9,'minutes':9";
    assertThat(ada(day("home", machine))).anyMatch(t -> t.contains("it needs a machine"));
    assertThat(ada(day("cage", machine))).isEmpty();
  }

  @Test
  void the_toss_is_no_longer_than_the_room_at_home() throws Exception {
    assertThat(home("'feet':15", "'feet':16"))
        .singleElement()
        .asString()
        .contains("tossed from 16 ft; a hallway has room for 15");
    String far = SOUND.replace("'feet':15", "'feet':25");
    assertThat(bo(day("home", far))).as("a yard").isEmpty();
    assertThat(bo(day("home", far.replace("25", "26"))))
        .singleElement()
        .asString()
        .contains("tossed from 26 ft; a yard has room for 25");
    assertThat(ada(day("field", far))).as("at a practice").isEmpty();
  }

  @Test
  void a_station_has_no_more_tosses_than_its_minutes_allow() throws Exception {
    String tee = "'drill':'tee-belt-high','skill':'drive','step':'drive-1','reps':%d,'minutes':%d";
    assertThat(ada(day("field", tee.formatted(32, 8)))).as("4 a minute").isEmpty();
    assertThat(ada(day("field", tee.formatted(33, 8))))
        .singleElement()
        .asString()
        .contains("33 tosses in 8 minutes; this drill has 4.0 a minute");
    assertThat(ada(day("field", tee.formatted(4, 0)))).as("at least one minute").isEmpty();
    assertThat(ada(day("field", tee.formatted(5, 0)))).hasSize(1);
  }

  @Test
  void home_work_is_on_the_days_of_the_family() throws Exception {
    gear("foam,mon wed");
    assertThat(ada(SEE_2 + "," + on("2027-04-05", "home", SOUND))).isEmpty();
    assertThat(ada(SEE_2 + "," + day("home", SOUND)))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-06: home work on a TUESDAY; the family has [MONDAY, WEDNESDAY]");
    assertThat(ada(SEE_2 + "," + day("field", SOUND))).as("a practice").isEmpty();
    assertThat(ada(SEE_2 + "," + day("home"))).as("nothing to do").isEmpty();
    gear("foam,");
    assertThat(ada(SEE_2 + "," + day("home", SOUND))).as("any day suits").isEmpty();
  }

  @Test
  void a_home_session_is_one_drill() throws Exception {
    String second = SOUND.replace("quick-strike-ball", "half-way-call");
    assertThat(ada(SEE_2 + "," + day("home", SOUND, second)))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-06: 2 drills at home; a home session is one drill");
    assertThat(ada(SEE_2 + "," + day("field", SOUND, second))).isEmpty();
  }
}
