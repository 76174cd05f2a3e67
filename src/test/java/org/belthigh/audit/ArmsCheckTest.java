package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.FROM;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What an arm box lets a child pitch, against the published books: Pitch Smart 2018 (75 a day at 9
 * and 10, rest from 21 on, three days running never, 80 innings a year at 10), Little League
 * Regulation VI (no second game on a day, four innings caught), American Legion 2018 (two
 * appearances in three days) and the high schools of Pennsylvania 2017 (200 a week).
 */
class ArmsCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
    born("2017-01-05", "2011-02-05");
  }

  /** Ada is 10 and Bo 16; both pitch and catch. */
  private void born(String ada, String bo) throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches,catches",
        "a1,Ada," + ada + ",R,u10,yes,yes",
        "b1,Bo," + bo + ",R,u14,yes,yes");
  }

  private void book(String id) throws Exception {
    Path file = folder.resolve("club.yaml");
    Files.writeString(file, Files.readString(file).replace("pitch-smart-2018", id));
  }

  private void outings(String... rows) throws Exception {
    List<String> lines =
        new ArrayList<>(List.of("date,player,pitches,kind,innings,innings_caught"));
    for (String row : rows) {
      lines.add("2027-" + row);
    }
    club.with("throws.csv", lines.toArray(String[]::new));
  }

  private static String arm(String date, String answer, int left, boolean mayCatch, String known) {
    return "{'date':'%s','answer':'%s','pitches_left':%d,'may_catch':%s,'known_to':%s}"
        .formatted(date, answer, left, mayCatch, known);
  }

  /** What is said of an arm box of April 5, apart from the days that are missing. */
  private List<String> first(String id, String answer, int left) throws Exception {
    return said(id, arm("2027-04-05", answer, left, false, known(id)));
  }

  /** The last outing of the file, as the plan should have it. */
  private String known(String id) throws Exception {
    return club.record().outings().stream()
        .filter(o -> o.player().equals(id))
        .map(o -> "'" + o.date() + "'")
        .max(String::compareTo)
        .orElse("null");
  }

  private List<String> said(String id, String arms) throws Exception {
    String keys = "'arms':[" + arms + "]";
    List<String> all =
        id.equals("a1")
            ? Beside.ofAda(club, keys, (g, c) -> new ArmsCheck(g).check(c))
            : Beside.ofBo(club, keys, (g, c) -> new ArmsCheck(g).check(c));
    return all.stream()
        .filter(t -> !t.startsWith(id + ", arms"))
        .map(t -> t.replaceFirst("^[ab]1 2027-04-0\\d, arm: ", ""))
        .map(t -> t.replaceFirst(" \\(ours, common practice\\)$", ""))
        .toList();
  }

  private List<String> ada(int left) throws Exception {
    return first("a1", "may-pitch", left);
  }

  private List<String> bo(int left) throws Exception {
    return first("b1", "may-pitch", left);
  }

  @Test
  void each_day_of_the_first_week_has_its_answer_once() throws Exception {
    outings("04-01,a1,0,game,,");
    List<String> week =
        IntStream.range(0, 7)
            .mapToObj(i -> FROM.plusDays(i).toString())
            .map(d -> arm(d, "no-pitching", 0, true, "'2027-04-01'"))
            .toList();
    assertThat(all(week)).isEmpty();
    assertThat(all(week.subList(0, 6)))
        .singleElement()
        .asString()
        .startsWith("a1, arms: days [2027-04-05, ")
        .contains("each day of the first week stands there once");
    List<String> twice = new ArrayList<>(week);
    twice.add(week.get(0));
    assertThat(all(twice)).hasSize(1);
  }

  private List<String> all(List<String> arms) throws Exception {
    return Beside.ofAda(
        club,
        "'arms':[" + arms.stream().collect(Collectors.joining(",")) + "]",
        (g, c) -> new ArmsCheck(g).check(c));
  }

  @Test
  void the_answer_is_one_of_four_and_leaves_pitches_to_one_alone() throws Exception {
    outings("04-01,a1,0,game,,");
    assertThat(first("a1", "perhaps", 0))
        .containsExactly(
            "the answer 'perhaps'; answers are [may-pitch, ask-first, no-pitching, no-throwing]");
    assertThat(first("a1", "ask-first", 1))
        .containsExactly("1 pitches beside ask-first; who may not pitch has none left");
    assertThat(first("a1", "ask-first", 0)).isEmpty();
    assertThat(first("a1", "no-pitching", 0)).isEmpty();
  }

  @Test
  void who_has_a_complaint_neither_throws_nor_catches() throws Exception {
    outings("04-01,a1,0,game,,");
    club.with("wellness.csv", "date,player,kind,clears,by", "2027-04-03,a1,arm-pain,,");
    assertThat(first("a1", "no-pitching", 0))
        .containsExactly("the answer is no-pitching; a hold stops throwing on that day");
    assertThat(first("a1", "no-throwing", 0)).isEmpty();
    assertThat(said("a1", arm("2027-04-05", "no-throwing", 0, true, "'2027-04-01'")))
        .containsExactly("the child may catch; who may not throw may not catch");

    club.with("wellness.csv", "date,player,kind,clears,by", "2027-04-03,b1,arm-pain,,");
    assertThat(first("a1", "no-pitching", 0)).as("another child").isEmpty();
  }

  @Test
  void a_complaint_inside_the_week_stops_throwing_from_its_day_on() throws Exception {
    outings("04-01,a1,0,game,,");
    club.with("wellness.csv", "date,player,kind,clears,by", "2027-04-07,a1,illness,,");
    assertThat(said("a1", arm("2027-04-06", "no-pitching", 0, true, "'2027-04-01'"))).isEmpty();
    assertThat(said("a1", arm("2027-04-07", "no-pitching", 0, false, "'2027-04-01'")))
        .containsExactly("the answer is no-pitching; a hold stops throwing on that day");
  }

  @Test
  void a_health_report_that_was_lost_stops_throwing() throws Exception {
    outings("04-01,a1,0,game,,");
    club.with("wellness.csv", "date,player,kind,clears,by", "2027-04-03,a1,arm-pane,,");
    assertThat(first("a1", "no-pitching", 0)).hasSize(1);
  }

  @Test
  void known_to_is_the_last_outing_that_was_reported() throws Exception {
    outings("04-01,a1,0,game,,", "03-30,a1,0,game,,", "04-02,b1,0,game,,");
    assertThat(said("a1", arm("2027-04-05", "no-pitching", 0, false, "'2027-03-30'")))
        .containsExactly("known_to is \"2027-03-30\"; the last outing reported is of 2027-04-01");
    outings("04-02,b1,0,game,,");
    assertThat(said("a1", arm("2027-04-05", "no-pitching", 0, false, "null"))).isEmpty();
    assertThat(said("a1", arm("2027-04-05", "no-pitching", 0, false, "'2027-04-01'"))).hasSize(1);
  }

  @Test
  void who_is_no_pitcher_does_not_pitch() throws Exception {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group,pitches",
        "a1,Ada,2017-01-05,R,u10,no",
        "b1,Bo,2011-02-05,R,u14,yes");
    outings("04-01,a1,0,game,,", "04-01,b1,0,game,,");
    assertThat(ada(0))
        .containsExactly("the child may pitch; the roster has the child as no pitcher");
    assertThat(bo(0)).isEmpty();
  }

  @Test
  void a_lost_outing_and_a_long_silence_are_asked_about_first() throws Exception {
    outings("04-01,a1,0,game,,", "04-02,a1,many,game,,");
    assertThat(ada(0)).contains("the child may pitch; a report of throwing was lost, so ask first");

    outings("03-29,a1,0,game,,");
    assertThat(ada(0)).as("heard of seven days ago").isEmpty();
    outings("03-28,a1,0,game,,");
    assertThat(ada(0))
        .containsExactly(
            "the child may pitch; nothing was heard for more than 7 days, so ask first");
    outings("04-01,b1,0,game,,");
    assertThat(ada(0)).as("never heard of").hasSize(1);
  }

  @Test
  void no_table_is_borrowed_for_softball() throws Exception {
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file).replace("age: [9, 10],", "age: [9, 10], sport: softball,"));
    outings("04-01,a1,0,game,,");
    assertThat(ada(0)).containsExactly("the child may pitch; no table is borrowed for softball");
  }

  @Test
  void a_day_has_seventy_five_pitches_at_ten_less_those_thrown_that_day() throws Exception {
    outings("04-01,a1,0,game,,");
    assertThat(ada(75)).isEmpty();
    assertThat(ada(76)).contains("76 pitches are left; pitch-smart-2018 leaves 75");
    outings("04-05,a1,20,game,,", "04-05,a1,30,bullpen,,");
    assertThat(ada(55)).as("the bullpen does not count").isEmpty();
    assertThat(ada(56)).contains("56 pitches are left; pitch-smart-2018 leaves 55");
    outings("04-05,a1,90,game,,");
    assertThat(ada(1)).contains("1 pitches are left; pitch-smart-2018 leaves 0");
  }

  @Test
  void the_younger_of_both_ages_sets_the_number() throws Exception {
    born("2018-07-01", "2011-02-05");
    outings("04-01,a1,0,game,,");
    assertThat(ada(50)).as("8 on the day, 9 by the league").isEmpty();
    assertThat(ada(51)).contains("51 pitches are left; pitch-smart-2018 leaves 50");
  }

  @Test
  void an_age_without_a_row_does_not_pitch() throws Exception {
    born("2020-10-01", "2011-02-05");
    outings("04-01,a1,0,game,,");
    assertThat(ada(0)).contains("the child may pitch; pitch-smart-2018 has no row for age 6");
  }

  @ParameterizedTest
  @CsvSource({
    "04-04, 20, false, 0",
    "04-04, 21, true, 1",
    "04-03, 21, false, 1",
    "04-03, 36, true, 2",
    "04-02, 36, false, 2",
    "04-02, 51, true, 3",
    "04-01, 66, true, 4",
    "03-31, 66, false, 4"
  })
  void rest_is_that_of_the_table_at_ten(String date, int pitches, boolean rests, int days)
      throws Exception {
    outings(date + ",a1," + pitches + ",game,,");

    assertThat(ada(0).stream().distinct().toList())
        .isEqualTo(
            rests
                ? List.of(
                    "the answer is may-pitch; a hold stops throwing on that day",
                    "the child may pitch; %d pitches on 2027-%s need %d days of rest"
                        .formatted(pitches, date, days))
                : List.of());
  }

  @Test
  void bullpens_start_no_rest() throws Exception {
    outings("04-04,a1,60,bullpen,,");
    assertThat(ada(0)).isEmpty();
  }

  @Test
  void nobody_pitches_three_days_running() throws Exception {
    outings("04-04,a1,5,game,,", "04-03,a1,5,game,,");
    assertThat(ada(0)).contains("the child may pitch; 2 days running before it, at most 2");
    outings("04-04,a1,5,game,,", "04-02,a1,5,game,,");
    assertThat(ada(0)).isEmpty();
    outings("04-04,a1,5,game,,", "04-03,a1,0,game,,", "04-02,a1,5,game,,");
    assertThat(ada(0)).as("a report of none is no day of pitching").isEmpty();
  }

  @Test
  void regulation_vi_has_no_second_game_on_a_day_and_four_innings_caught_bar_pitching()
      throws Exception {
    book("little-league-reg-vi");
    outings("04-05,a1,5,game,,");
    assertThat(ada(0))
        .contains(
            "the child may pitch; little-league-reg-vi has no second game on a day of pitching");
    outings("04-05,a1,0,game,,4");
    assertThat(ada(0))
        .contains("the child may pitch; 4 innings caught bar pitching by little-league-reg-vi");
    outings("04-05,a1,0,game,,2", "04-05,a1,0,game,,1");
    assertThat(ada(0)).as("three innings").isEmpty();
    outings("04-04,a1,0,game,,6");
    assertThat(ada(0)).as("caught the day before").isEmpty();
  }

  @Test
  void pitch_smart_advises_against_catching_and_pitching_on_one_day() throws Exception {
    outings("04-05,a1,0,game,,1");
    assertThat(ada(0))
        .contains(
            "the child may pitch; pitch-smart-2018 advises against catching and pitching on one"
                + " day");
    outings("04-05,a1,0,game,,0");
    assertThat(ada(0)).isEmpty();
    outings("04-05,a1,5,game,,");
    assertThat(ada(0)).as("a second game is advised against, and not barred").isEmpty();
  }

  @Test
  void the_legion_has_two_appearances_in_three_days() throws Exception {
    book("american-legion-2018");
    String barred = "the child may pitch; american-legion-2018 has 2 appearances in 3 days";
    outings("04-03,b1,5,game,,", "04-04,b1,5,game,,");
    assertThat(bo(0)).contains(barred);
    outings("04-02,b1,5,game,,", "04-04,b1,5,game,,");
    assertThat(bo(0)).as("one of them four days back").isEmpty();
    outings("04-03,b1,5,game,,", "04-04,b1,5,bullpen,,", "04-04,b1,0,game,,");
    assertThat(bo(0)).as("a bullpen and a report of none").isEmpty();
    outings("04-05,b1,5,game,,", "04-05,b1,5,game,,");
    assertThat(bo(0)).as("leaving and coming back counts twice").contains(barred);
  }

  @Test
  void pennsylvania_has_two_hundred_pitches_a_week() throws Exception {
    book("piaa-2017");
    outings("03-30,b1,75,game,,", "04-01,b1,75,game,,");
    assertThat(bo(50)).isEmpty();
    assertThat(bo(51)).contains("51 pitches are left; piaa-2017 leaves 50");
    outings("03-29,b1,75,game,,", "04-01,b1,75,game,,");
    assertThat(bo(100)).as("seven days, the day itself among them").isEmpty();
    assertThat(bo(101)).contains("101 pitches are left; piaa-2017 leaves 100");
  }

  private void innings(String first, String kind, String last) throws Exception {
    club.with(
        "throws.csv",
        "date,player,pitches,kind,innings",
        first + ",a1,5,game,20",
        "2026-09-01,a1,5,game,20",
        "2026-09-03,a1,5,game,20",
        "2026-09-06,a1,5," + kind + "," + last,
        "2027-04-01,a1,0,game,");
  }

  @Test
  void eighty_innings_in_twelve_months_are_the_most_at_ten() throws Exception {
    innings("2026-08-01", "game", "19.2");
    assertThat(ada(0)).as("79 and two thirds").isEmpty();
    innings("2026-08-01", "game", "20");
    assertThat(ada(0))
        .contains("the child may pitch; pitch-smart-2018 has 80 innings in 12 months");
    innings("2026-08-01", "bullpen", "20");
    assertThat(ada(0)).as("a bullpen").isEmpty();
  }

  @Test
  void what_was_pitched_more_than_twelve_months_ago_is_over() throws Exception {
    innings("2026-04-05", "game", "20");
    assertThat(ada(0)).isEmpty();
    innings("2026-04-06", "game", "20");
    assertThat(ada(0)).isNotEmpty();
  }

  @Test
  void a_book_without_any_confirmed_number_lets_nobody_pitch() throws Exception {
    book("wbsc-youth");
    outings("04-01,a1,0,game,,");
    assertThat(ada(0)).contains("the child may pitch; wbsc-youth has no confirmed number");
  }
}
