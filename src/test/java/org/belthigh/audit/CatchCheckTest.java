package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who may catch after pitching on one day. Little League Regulation VI: 41 pitches end catching;
 * who caught first does not go back behind the plate after 21 pitches, at 15 and 16 after 31. Pitch
 * Smart 2018: pitchers should not catch at all.
 */
class CatchCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
    born("2013-02-05");
  }

  /** Ada is 10, and both catch as well. */
  private void born(String bo) throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches,catches",
        "a1,Ada,2017-01-05,R,u10,yes,yes",
        "b1,Bo," + bo + ",R,u14,yes,yes");
  }

  private void book(String id) throws Exception {
    Path file = folder.resolve("club.yaml");
    Files.writeString(file, Files.readString(file).replace("pitch-smart-2018", id));
  }

  private void outings(String... rows) throws Exception {
    List<String> lines = new ArrayList<>(List.of("date,player,pitches,kind,innings_caught"));
    lines.addAll(List.of(rows));
    club.with("throws.csv", lines.toArray(String[]::new));
  }

  private static String catches(boolean may) {
    return "'arms':[{'date':'2027-04-05','answer':'no-pitching','may_catch':" + may + "}]";
  }

  private List<String> ada(boolean may) throws Exception {
    return Beside.ofAda(club, catches(may), (g, c) -> new CatchCheck(g).check(c));
  }

  private List<String> bo() throws Exception {
    return Beside.ofBo(club, catches(true), (g, c) -> new CatchCheck(g).check(c));
  }

  @Test
  void forty_one_pitches_end_catching_by_regulation_vi() throws Exception {
    book("little-league-reg-vi");
    outings("2027-04-05,a1,40,game,");
    assertThat(ada(true)).isEmpty();

    outings("2027-04-05,a1,41,game,");
    assertThat(ada(true))
        .singleElement()
        .asString()
        .startsWith(
            "a1 2027-04-05, arm: the child may catch; 41 pitches bar catching by"
                + " little-league-reg-vi");
    assertThat(ada(false)).as("who is told not to catch").isEmpty();
  }

  @Test
  void the_pitches_of_two_games_of_the_day_are_added_and_those_of_the_bullpen_are_not()
      throws Exception {
    book("little-league-reg-vi");
    outings("2027-04-05,a1,21,game,", "2027-04-05,a1,20,scrimmage,");
    assertThat(ada(true)).hasSize(1);

    outings("2027-04-05,a1,21,game,", "2027-04-05,a1,20,bullpen,");
    assertThat(ada(true)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"20, false", "21, true"})
  void who_caught_first_does_not_return_after_21(int pitches, boolean barred) throws Exception {
    book("little-league-reg-vi");
    outings("2027-04-05,a1," + pitches + ",game,1");

    assertThat(ada(true).isEmpty()).isEqualTo(!barred);
  }

  @Test
  void at_15_and_16_after_31() throws Exception {
    book("little-league-reg-vi");
    born("2012-02-05");
    outings("2027-04-05,b1,30,game,1");
    assertThat(bo()).isEmpty();

    outings("2027-04-05,b1,31,game,1");
    assertThat(bo()).hasSize(1);
  }

  @Test
  void innings_caught_are_added_up_and_no_pitch_bars_nothing() throws Exception {
    book("little-league-reg-vi");
    outings("2027-04-05,a1,25,game,0", "2027-04-05,a1,0,game,2");
    assertThat(ada(true)).hasSize(1);

    outings("2027-04-05,a1,25,game,0");
    assertThat(ada(true)).as("who did not catch may pitch 25 and then catch").isEmpty();

    outings("2027-04-05,a1,0,game,6");
    assertThat(ada(true)).as("who only caught").isEmpty();
  }

  @Test
  void what_another_child_threw_is_not_held_against_this_one() throws Exception {
    outings("2027-04-05,b1,60,game,2");

    assertThat(ada(true)).isEmpty();
  }

  @Test
  void a_report_of_throwing_that_was_lost_may_be_of_that_day() throws Exception {
    outings("2027-04-05,a1,many,game,");

    assertThat(ada(true)).anyMatch(t -> t.contains("a report of throwing was lost"));
    assertThat(ada(false)).isEmpty();

    outings("2027-04-05,b1,many,game,");
    assertThat(ada(true)).as("another child's").isEmpty();

    club.with("wellness.csv", "date,player,kind,clears,by", "2027-04-01,a1,arm-pane,,");
    outings("2027-04-05,b1,0,game,");
    assertThat(ada(true)).as("a lost health report is no outing").isEmpty();
  }

  @Test
  void no_table_is_borrowed_for_softball() throws Exception {
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file).replace("age: [9, 10],", "age: [9, 10], sport: softball,"));
    outings("2027-04-05,a1,60,game,1");

    assertThat(ada(true)).isEmpty();
  }
}
