package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.WORDS;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What sheets say for safety, what must be there, and how they call a child. */
class SheetCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
    club.with(
        "roster.csv",
        "id,first_name,born,bats,number,group,pitches,home_space,language",
        "a1,Ada,2017-01-05,R,4,u10,no,yard,en",
        "b1,Bo,2013-02-05,R,,u14,no,yard,en");
  }

  private static String said(String... keys) {
    return in("en", keys);
  }

  private static String in(String language, String... keys) {
    return Stream.of(keys)
        .map(k -> '"' + WORDS.say(k, language).replace("\"", "\\\"") + '"')
        .collect(Collectors.joining(","));
  }

  private List<String> labels(String ada, String bo) throws Exception {
    String json =
        "{'players':[{'player':'a1','label':'%s'},{'player':'b1','label':'%s'}]}"
            .formatted(ada, bo);
    return Beside.said(Beside.given(club, json), g -> new SheetCheck(g, WORDS).check());
  }

  @Test
  void a_label_has_the_first_name_and_the_number_of_the_shirt() throws Exception {
    assertThat(labels("Ada 4", "Bo")).isEmpty();
    assertThat(labels("Ida 4", "Bo"))
        .containsExactly("a1: the label is 'Ida 4'; sheets call the child by its first name");
    assertThat(labels("Ada 5", "Bo"))
        .containsExactly("a1: the label is 'Ada 5'; it has the number of the shirt");
  }

  @Test
  void no_two_of_a_group_share_one() throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group",
        "a1,Ada,2017-01-05,R,u10",
        "b1,Ada,2016-02-05,R,u10");
    assertThat(labels("Ada", "Ada"))
        .containsExactly("b1: the label is 'Ada'; a1 of the group has the same");
    assertThat(labels("Ada L.", "Ada M.")).isEmpty();
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group",
        "a1,Ada,2017-01-05,R,u10",
        "b1,Ada,2013-02-05,R,u14");
    assertThat(labels("Ada", "Ada")).as("of two groups").isEmpty();
  }

  private static final List<String> PRACTICE =
      List.of(
          "practice.safety.adult",
          "practice.lightning",
          "practice.heat",
          "safety.swing",
          "safety.tee");

  private static String practice(List<String> keys, String gear, String stationGear) {
    return practice(keys, gear, stationGear, "");
  }

  private static String practice(List<String> keys, String gear, String stationGear, String uses) {
    return "{'practices':[{'group':'u10','date':'2027-04-06','cautions':["
        + said(keys.toArray(String[]::new))
        + "],'gear':["
        + gear
        + "],'stations':[{'station':1,'drills':['tee-belt-high'],'feed':'tee','ball':'baseball',"
        + "'gear':["
        + stationGear
        + "],'uses':["
        + uses
        + "]}]}]}";
  }

  private static String things(String... what) {
    return Stream.of(what)
        .map(w -> "{'what':'" + w + "','count':1}")
        .collect(Collectors.joining(","));
  }

  private static final String[] ALL = {"bat", "helmet", "tee", "net"};

  private List<String> sheet(String json) throws Exception {
    return Beside.said(Beside.given(club, json), g -> new SheetCheck(g, WORDS).check());
  }

  @Test
  void a_practice_sheet_says_what_its_drills_ask_for() throws Exception {
    assertThat(sheet(practice(PRACTICE, things(ALL), things("tee", "net")))).isEmpty();
    for (String key : PRACTICE) {
      List<String> others = new ArrayList<>(PRACTICE);
      others.remove(key);
      assertThat(sheet(practice(others, things(ALL), things("tee", "net"))))
          .as(key)
          .singleElement()
          .asString()
          .startsWith("u10 2027-04-06: it does not say: ");
    }
  }

  @Test
  void the_same_in_the_other_language() throws Exception {
    String spanish = practice(PRACTICE, things(ALL), things("tee", "net"));
    for (String key : PRACTICE) {
      spanish = spanish.replace(said(key), in("es", key));
    }
    assertThat(sheet(spanish)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bat", "helmet", "tee", "net"})
  void what_to_bring_has_what_its_drills_need(String thing) throws Exception {
    String[] others = Stream.of(ALL).filter(t -> !t.equals(thing)).toArray(String[]::new);
    assertThat(sheet(practice(PRACTICE, things(others), things("tee", "net"))))
        .singleElement()
        .asString()
        .startsWith("u10 2027-04-06: no " + thing + " under what to bring");
  }

  @ParameterizedTest
  @ValueSource(strings = {"tee", "net"})
  void a_station_lists_what_its_drill_stands_on(String thing) throws Exception {
    String other = thing.equals("tee") ? "net" : "tee";
    assertThat(sheet(practice(PRACTICE, things(ALL), things(other))))
        .anyMatch(
            t ->
                t.startsWith(
                    "u10 2027-04-06, station 1: no " + thing + " is listed; tee-belt-high"));
  }

  @Test
  void cards_need_no_words_about_bats_or_balls() throws Exception {
    List<String> plain = PRACTICE.subList(0, 3);
    String cards =
        practice(plain, "", "").replace("tee-belt-high", "spot-cards").replace("'tee'", "'none'");
    assertThat(sheet(cards)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "front-toss-drive, safety.front-toss.screen",
    "foam-toss-yard, safety.front-toss.open",
    "side-flip, safety.soft-toss.screen",
    "overhand-drive, safety.overhand.screen",
    "machine-near-and-far, safety.machine"
  })
  void how_the_ball_comes_is_said_for_each_drill(String drill, String key) throws Exception {
    List<String> keys = new ArrayList<>(PRACTICE.subList(0, 4));
    String gear = things("bat", "helmet", "tee", "net", "screen", "machine");
    assertThat(sheet(practice(keys, gear, gear).replace("tee-belt-high", drill)))
        .singleElement()
        .asString()
        .startsWith("u10 2027-04-06: it does not say: " + WORDS.say(key, "en").substring(0, 20));
    keys.add(key);
    assertThat(sheet(practice(keys, gear, gear).replace("tee-belt-high", drill))).isEmpty();
  }

  @Test
  void a_swing_without_a_ball_has_nothing_that_comes() throws Exception {
    assertThat(
            sheet(
                practice(PRACTICE.subList(0, 4), things("bat", "helmet"), "")
                    .replace("tee-belt-high", "swing-and-stand")))
        .isEmpty();
  }

  @Test
  void each_use_of_a_station_is_of_a_drill_done_there_and_fed_as_that_drill_is() throws Exception {
    String sound = "{'drill':'tee-belt-high','feed':'tee','ball':'baseball'}";
    assertThat(sheet(practice(PRACTICE, things(ALL), things("tee", "net"), sound))).isEmpty();
    assertThat(
            sheet(
                practice(
                    PRACTICE,
                    things(ALL),
                    things("tee", "net"),
                    sound.replace("tee-belt-high", "spot-cards"))))
        .anyMatch(
            t ->
                t.startsWith(
                    "u10 2027-04-06, station 1: it uses spot-cards; that drill is not done there"));
    assertThat(
            sheet(
                practice(
                    PRACTICE,
                    things(ALL),
                    things("tee", "net"),
                    sound.replace("'feed':'tee'", "'feed':'overhand'"))))
        .anyMatch(t -> t.contains("fed by overhand; tee"));
  }
}
