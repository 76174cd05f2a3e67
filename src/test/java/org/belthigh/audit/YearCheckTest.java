package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.ada;
import static org.belthigh.audit.SmallClub.cards;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * More than eight months of the sport in twelve are remarked on (s23, National Athletic Trainers'
 * Association 2019). The plan ends in April 2027, so the months are May 2026 to April 2027; of
 * these, the season gives March and April.
 */
class YearCheckTest {
  private static final String NINE =
      "a1 2026-05 to 2027-04: 9 months of the sport are known, and nothing is said of it; at most 8"
          + " months in twelve (NATA 2019)";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void club() throws Exception {
    club = new SmallClub(folder);
  }

  private List<String> said(FinishedPlan.Person person) throws Exception {
    Findings findings = SmallClub.findings();
    new YearCheck(club.record(), SmallClub.plan(person), findings, SmallClub.LIMITS).check(person);
    return SmallClub.said(findings);
  }

  private void other(String... rows) throws Exception {
    String[] lines = new String[rows.length + 1];
    lines[0] = "date,player,hours,what";
    System.arraycopy(rows, 0, lines, 1, rows.length);
    club.with("other.csv", lines);
  }

  /** Six months of travel ball, from the first of the twelve on. */
  private void sixMonths() throws Exception {
    other(
        "2026-05-03,a1,3,travel baseball",
        "2026-06-03,a1,3,Softball",
        "2026-07-03,a1,3,T-ball",
        "2026-08-03,a1,3,béisbol",
        "2026-09-03,a1,3,sóftbol",
        "2026-10-03,a1,3,beisbol",
        "2026-11-03,a1,3,soccer",
        "2026-12-03,a1,0,baseball",
        "2027-01-03,b1,3,baseball",
        "2026-04-30,a1,3,baseball");
  }

  @Test
  void eight_months_are_no_finding_whatever_else_is_played() throws Exception {
    sixMonths();

    assertThat(said(ada())).isEmpty();
  }

  @Test
  void the_ninth_month_is_remarked_on_or_it_is_a_finding() throws Exception {
    sixMonths();
    club.calendar("2027-02-20,u10,practice,,,");

    assertThat(said(ada())).containsExactly(NINE);
    FinishedPlan.Person remarked =
        new FinishedPlan.Person("a1", "u10", 10, List.of(), List.of(), List.of(), true);
    assertThat(said(remarked)).isEmpty();
  }

  @Test
  void a_break_another_groups_event_and_one_after_the_plan_are_no_months() throws Exception {
    sixMonths();
    club.calendar(
        "2027-02-20,u10,break,,,",
        "2027-02-21,u10,off,,,",
        "2027-02-22,u14,practice,,,",
        "2027-05-01,u10,game,,,");

    assertThat(said(ada())).isEmpty();
  }

  @Test
  void a_logged_toss_makes_a_month() throws Exception {
    sixMonths();
    club.with(
        "logs/tosses.csv",
        "date,player,drill,toss,zone,swing,hit",
        "2027-02-20,a1,tee-countdown,1,5,yes,hard");

    assertThat(said(ada())).containsExactly(NINE);
  }

  @Test
  void a_logged_tally_makes_a_month() throws Exception {
    sixMonths();
    club.with(
        "logs/tallies.csv",
        "date,player,drill,measure,made,of",
        "2027-02-20,a1,field-call,field-call,3,8");

    assertThat(said(ada())).containsExactly(NINE);
  }

  @Test
  void an_outing_makes_a_month_and_one_of_nothing_does_not() throws Exception {
    sixMonths();
    club.with("throws.csv", "date,player,pitches,kind,innings_caught", "2027-02-20,a1,0,game,0");
    assertThat(said(ada())).isEmpty();

    club.with("throws.csv", "date,player,pitches,kind,innings_caught", "2027-02-20,a1,0,game,1");
    assertThat(said(ada())).containsExactly(NINE);

    club.with("throws.csv", "date,player,pitches,kind,innings_caught", "2027-02-20,a1,1,game,");
    assertThat(said(ada())).containsExactly(NINE);
  }

  @Test
  void days_of_the_plan_itself_count_and_months_of_the_season_do_once() throws Exception {
    sixMonths();

    assertThat(said(ada(cards(6)))).isEmpty();
  }

  @Test
  void outside_the_season_a_month_counts_by_what_is_done_in_it_up_to_the_plans_end()
      throws Exception {
    sixMonths();
    club.with(
        "club.yaml",
        "name: Two Files",
        "rule_book: pitch-smart-2018",
        "season: {first: \"2027-03-01\", last: \"2027-03-31\"}",
        "groups:",
        "  - {id: u10, name: Under 10, age: [9, 10]}",
        "  - {id: u14, name: Under 14, age: [13, 14]}");
    club.calendar("2027-02-20,u10,practice,,,", "2027-04-25,u10,game,,,");

    assertThat(said(ada())).as("the game comes after the plan").isEmpty();
    assertThat(said(ada(cards(6)))).containsExactly(NINE);
  }

  @Test
  void the_months_that_a_plan_says_are_those_of_the_club_folder() throws Exception {
    sixMonths();
    int own = 8; // six of travel ball, and March and April of the season
    assertThat(months("2026-05", "2027-04", own + 1, 8))
        .containsExactly("a1, sport_months: known is '9'; by the club folder it is 8");
    assertThat(months("2026-05", "2027-04", own, 8)).isEmpty();
    assertThat(months("2026-04", "2027-04", own, 8))
        .containsExactly("a1, sport_months: from is '2026-04'; by the club folder it is 2026-05");
    assertThat(months("2026-05", "2027-05", own, 8))
        .containsExactly("a1, sport_months: to is '2027-05'; by the club folder it is 2027-04");
    assertThat(months("2026-05", "2027-04", own, 9))
        .containsExactly("a1, sport_months: most is '9'; by the club folder it is 8");
  }

  private List<String> months(String from, String to, int known, int most) throws Exception {
    Findings findings = SmallClub.findings();
    new YearCheck(club.record(), SmallClub.plan(ada()), findings, SmallClub.LIMITS)
        .said(
            ada(),
            JsonNodeFactory.instance
                .objectNode()
                .put("from", from)
                .put("to", to)
                .put("known", known)
                .put("most", most));
    return SmallClub.said(findings);
  }
}
