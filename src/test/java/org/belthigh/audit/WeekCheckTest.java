package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a plan of two weeks from April 5 says of its weeks and days. Which weeks are lighter is
 * ours, common practice: each fourth of a season, and the three days before a tournament.
 */
class WeekCheckTest {
  private static final String FIRST = "{'first':'2027-04-05','kind':'usual','says':null}";
  private static final String SECOND = "{'first':'2027-04-12','kind':'usual','says':null}";
  private static final String WEEKS = "'weeks':[" + FIRST + "," + SECOND + "]";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  private List<String> ada(String keys) throws Exception {
    return Beside.ofAda(club, keys, (g, c) -> new WeekCheck(g).check(c));
  }

  private static String day(String date, String place, boolean later, String more) {
    return "'days':[{'date':'"
        + date
        + "','place':'"
        + place
        + "','provisional':"
        + later
        + ",'note':'Rest day'"
        + more
        + "}]";
  }

  private static String first(String kind, String says) {
    return "'weeks':[{'first':'2027-04-05','kind':'"
        + kind
        + "','says':"
        + says
        + "},"
        + SECOND
        + "]";
  }

  @Test
  void two_usual_weeks_are_not_spoken_of() throws Exception {
    assertThat(ada(WEEKS)).isEmpty();
  }

  @Test
  void each_planned_week_is_named_with_its_first_day() throws Exception {
    assertThat(ada("'weeks':[" + FIRST + "]"))
        .containsExactly("a1: 1 weeks are named; 2 are planned");
    assertThat(ada("'weeks':[" + FIRST + "," + FIRST + "]"))
        .containsExactly("a1 week of 2027-04-12: it begins on 2027-04-05; weeks follow each other");
  }

  @Test
  void a_week_is_of_a_kind_that_is_known() throws Exception {
    assertThat(ada(first("hard", "'Go for it.'")))
        .containsExactly(
            "a1 week of 2027-04-05: the week is 'hard'; weeks are [back, before-tournament, easy,"
                + " lighter, time-off, usual]");
  }

  @ParameterizedTest
  @ValueSource(strings = {"easy", "back", "time-off"})
  void a_week_that_is_other_than_usual_says_how(String kind) throws Exception {
    club.with(
        "wellness.csv",
        "date,player,kind,clears,by",
        "2027-03-20,a1,arm-pain,,",
        kind.equals("back") ? "2027-04-04,a1,cleared,arm-pain,physician" : "");
    if (kind.equals("time-off")) {
      club.with(
          "club.yaml",
          "name: Two Files",
          "rule_book: pitch-smart-2018",
          "season: {first: \"2027-04-12\", last: \"2027-05-24\"}",
          "groups:",
          "  - {id: u10, name: Under 10, age: [9, 10], tossers: 1}",
          "  - {id: u14, name: Under 14, age: [13, 14], tossers: 1}");
    }
    assertThat(ada(first(kind, "'How.'"))).isEmpty();
    assertThat(ada(first(kind, "null")))
        .containsExactly(
            "a1 week of 2027-04-05: the week is "
                + kind
                + " and nothing is said of it; a week that is other than usual says how");
    assertThat(ada(first(kind, "' '"))).hasSize(1);
  }

  @Test
  void a_usual_week_has_nothing_to_say() throws Exception {
    assertThat(ada(first("usual", "'Fewer tosses.'")))
        .containsExactly(
            "a1 week of 2027-04-05: the week is usual and something is said of it; a week that is"
                + " other than usual says how");
  }

  @ParameterizedTest
  @ValueSource(strings = {"lighter", "before-tournament"})
  void a_lighter_week_has_its_reason_in_the_calendar(String kind) throws Exception {
    assertThat(ada(first(kind, "'Fewer tosses.'")))
        .containsExactly(
            "a1 week of 2027-04-05: the week is called " + kind + "; nothing makes it lighter");

    club.calendar("2027-04-10,u10,tournament,,,");
    assertThat(ada(first(kind, "'Fewer tosses.'"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2027-04-14, true",
    "2027-04-15, false",
    "2027-04-06, true",
    "2027-04-05, false",
    "2027-04-04, false"
  })
  void in_the_three_days_before_a_tournament_a_week_is_not_usual(String date, boolean near)
      throws Exception {
    club.calendar(date + ",u10,tournament,,,");

    assertThat(ada(WEEKS).stream().anyMatch(t -> t.startsWith("a1 week of 2027-04-05")))
        .isEqualTo(near);
  }

  @Test
  void the_days_of_a_long_tournament_itself_are_not_before_it() throws Exception {
    club.calendar("2027-04-05,u10,tournament,,,", "2027-04-06,u10,tournament,,,");
    assertThat(ada(WEEKS)).isEmpty();
  }

  @Test
  void nor_are_games_or_tournaments_of_others_near() throws Exception {
    club.calendar("2027-04-10,u10,game,,,", "2027-04-10,u14,tournament,,,");
    assertThat(ada(WEEKS)).isEmpty();

    club.calendar("2027-04-10,all,tournament,,,");
    assertThat(ada(WEEKS))
        .singleElement()
        .asString()
        .startsWith("a1 week of 2027-04-05: the week is called usual; a tournament follows on");
  }

  @ParameterizedTest
  @CsvSource({
    "2027-03-15, true, false",
    "2027-03-16, true, true",
    "2027-03-09, true, false",
    "2027-03-08, false, false",
    "2027-03-22, false, true",
    "2027-03-23, false, true"
  })
  void each_fourth_week_of_the_season_is_lighter(String season, boolean first, boolean second)
      throws Exception {
    Path file = folder.resolve("club.yaml");
    Files.writeString(file, Files.readString(file).replace("2027-03-01", season));

    List<String> said = ada(WEEKS);
    assertThat(said.stream().anyMatch(t -> t.startsWith("a1 week of 2027-04-05: the week is")))
        .isEqualTo(first);
    assertThat(said.stream().anyMatch(t -> t.startsWith("a1 week of 2027-04-12: the week is")))
        .isEqualTo(second);
    assertThat(said).allMatch(t -> t.contains("each week of number 4 in a season is lighter"));
  }

  @Test
  void all_after_the_first_week_is_provisional_and_no_more() throws Exception {
    assertThat(ada(WEEKS + "," + day("2027-04-11", "rest", false, ""))).isEmpty();
    assertThat(ada(WEEKS + "," + day("2027-04-12", "rest", true, ""))).isEmpty();
    assertThat(ada(WEEKS + "," + day("2027-04-11", "rest", true, "")))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-11: provisional is true");
    assertThat(ada(WEEKS + "," + day("2027-04-12", "rest", false, "")))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-12: provisional is false");
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "' '"})
  void each_day_says_what_it_is(String note) throws Exception {
    assertThat(ada(WEEKS + "," + day("2027-04-06", "rest", false, "").replace("'Rest day'", note)))
        .containsExactly("a1 2027-04-06: nothing says what the day is; each day has its note");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ",'depends_on':null", ",'depends_on':' '", ",'depends_on':'On Y.'"})
  void work_of_a_later_week_says_on_what_it_depends(String keys) throws Exception {
    String work = day("2027-04-12", "home", true, ",'items':[{'drill':'spot-cards'}]");
    boolean says = keys.contains("On Y.");

    assertThat(ada(WEEKS + "," + work + keys).isEmpty()).as(keys).isEqualTo(says);
    assertThat(ada(WEEKS + "," + day("2027-04-12", "rest", true, ",'items':[]") + keys).isEmpty())
        .as("no work in later weeks: " + keys)
        .isEqualTo(!says);
    assertThat(
            ada(WEEKS
                    + ","
                    + day("2027-04-11", "home", false, ",'items':[{'drill':'spot-cards'}]")
                    + keys)
                .isEmpty())
        .as("work of the first week: " + keys)
        .isEqualTo(!says);
  }

  @ParameterizedTest
  @CsvSource({
    "swinging, null, true",
    "everything, null, true",
    "throwing, null, false",
    "swinging, 2027-04-09, false"
  })
  void later_weeks_depend_on_the_word_that_ends_a_stop(String kind, String until, boolean due)
      throws Exception {
    String held =
        ",'holds':[{'kind':'%s','from':'2027-04-05','until':%s}]"
            .formatted(kind, until.equals("null") ? until : "'" + until + "'");

    assertThat(ada(WEEKS + held).isEmpty()).isEqualTo(!due);
    assertThat(ada(WEEKS + held + ",'depends_on':'On Y.'").isEmpty()).isEqualTo(due);
  }

  @ParameterizedTest
  @ValueSource(strings = {"field", "cage"})
  void nobody_is_sent_where_the_calendar_has_nothing(String place) throws Exception {
    String day = WEEKS + "," + day("2027-04-06", place, false, "");
    assertThat(ada(day))
        .containsExactly(
            "a1 2027-04-06: the place is " + place + "; the calendar has nothing on that day");

    club.calendar("2027-04-06,u10,break,,,");
    assertThat(ada(day)).as("a break").hasSize(1);

    club.calendar("2027-04-06,u10,practice,,,");
    assertThat(ada(day)).isEmpty();
    assertThat(ada(WEEKS + "," + day("2027-04-07", "home", false, ""))).as("home").isEmpty();
  }

  @Test
  void a_day_off_is_nothing_and_a_game_is_something() throws Exception {
    club.calendar("2027-04-06,u10,off,,,", "2027-04-08,u10,game,,,");

    assertThat(ada(WEEKS + "," + day("2027-04-06", "field", false, ""))).hasSize(1);
    assertThat(ada(WEEKS + "," + day("2027-04-08", "field", false, ""))).isEmpty();
  }

  @Test
  void a_group_without_a_calendar_is_taken_to_practise_on_tuesdays_and_thursdays()
      throws Exception {
    Path file = folder.resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file) + "  - {id: u12, name: Under 12, age: [10, 12]}\n");
    club.with("roster.csv", "id,first_name,born,bats,group", "a1,Ada,2017-01-05,R,u12");

    assertThat(ada(WEEKS + "," + day("2027-04-06", "field", false, ""))).as("Tuesday").isEmpty();
    assertThat(ada(WEEKS + "," + day("2027-04-07", "field", false, ""))).as("Wednesday").hasSize(1);
  }
}
