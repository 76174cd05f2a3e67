package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.LIMITS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The holds of a child are those that the club folder calls for, day by day. Rest is that of Pitch
 * Smart 2018 at 10: two days after 36 pitches, one after 21.
 */
class HoldDaysCheckTest {
  private static final String OUTINGS = "date,player,pitches,kind";
  private static final String WELLNESS = "date,player,kind,clears,by";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  private List<String> said(String... holds) throws Exception {
    String json = "{'players':[{'player':'a1','holds':[" + String.join(",", holds) + "]}]}";
    JsonNode node = new ObjectMapper().readTree(json.replace('\'', '"'));
    ClubRecord record = club.record();
    Given given =
        new Given(
            SmallClub.plan(SmallClub.ada()),
            node,
            record,
            club.whole(),
            CATALOGUE,
            LIMITS,
            SmallClub.findings());
    given.children().forEach(new HoldDaysCheck(given)::check);
    return SmallClub.said(given.findings());
  }

  private static String hold(String rule, String kind, String from, String until) {
    return "{'rule':'%s','kind':'%s','from':'%s','until':%s}"
        .formatted(rule, kind, from, until == null ? "null" : "'" + until + "'");
  }

  private static String rest(String from, String until) {
    return hold("ARM-004", "throwing", from, until);
  }

  @Test
  void the_rest_of_the_table_is_held_to_the_day() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,36,game");

    assertThat(said(rest("2027-04-06", "2027-04-07"))).isEmpty();
    assertThat(said())
        .singleElement()
        .asString()
        .contains("no hold on throwing from 2027-04-06 to 2027-04-07")
        .contains("36 pitches on 2027-04-05");
    assertThat(said(rest("2027-04-06", "2027-04-10")))
        .singleElement()
        .asString()
        .contains("it holds from 2027-04-06 to 2027-04-10")
        .contains("calls for one from 2027-04-06 to 2027-04-07");
    assertThat(said(rest("2027-04-06", "2027-04-06"))).hasSize(1);
    assertThat(said(rest("2027-04-06", null))).hasSize(1);
  }

  @Test
  void a_hold_stands_once() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,36,game");
    String rest = rest("2027-04-06", "2027-04-07");

    assertThat(said(rest, rest)).singleElement().asString().contains("stands there twice");
  }

  @Test
  void rest_after_an_outing_inside_the_weeks_is_held_from_its_day_on() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-12,a1,21,game", "2027-04-13,a1,36,game");

    assertThat(said(rest("2027-04-13", "2027-04-13"), rest("2027-04-13", "2027-04-15"))).isEmpty();
    assertThat(said(rest("2027-04-13", "2027-04-13"))).hasSize(1);
  }

  @Test
  void the_clubs_added_days_are_rest_too() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,36,game");
    club.stricter("rest_days_add: 1");

    assertThat(said(rest("2027-04-06", "2027-04-08"))).isEmpty();
    assertThat(said(rest("2027-04-06", "2027-04-07"))).hasSize(1);
  }

  @Test
  void bullpens_and_what_was_rested_long_ago_hold_nobody() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-03-20,a1,60,game", "2027-04-05,a1,60,bullpen");

    assertThat(said()).isEmpty();
    assertThat(said(rest("2027-04-06", "2027-04-09")))
        .singleElement()
        .asString()
        .contains("nothing in the club folder calls for this hold");
  }

  @Test
  void an_open_complaint_is_held_from_its_day_without_an_end() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-01,a1,arm-pain,,");
    String throwing = hold("HLD-002", "throwing", "2027-04-01", null);
    String swinging = hold("HLD-003", "swinging", "2027-04-01", null);

    assertThat(said(throwing, swinging)).isEmpty();
    assertThat(said(throwing)).singleElement().asString().contains("no hold on swinging");
    assertThat(said(throwing, swinging, swinging)).hasSize(1);
    assertThat(said(throwing, hold("HLD-003", "swinging", "2027-04-01", "2027-04-09"))).hasSize(1);
  }

  @Test
  void what_hurts_on_a_planned_day_stops_all_on_that_day_and_throws_and_swings_after_it()
      throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-08,a1,other-pain,,");

    assertThat(
            said(
                hold("HLD-007", "everything", "2027-04-08", "2027-04-08"),
                hold("HLD-010", "throwing", "2027-04-08", null),
                hold("HLD-011", "swinging", "2027-04-08", null)))
        .isEmpty();
    assertThat(said()).hasSize(3);
  }

  @Test
  void a_hold_of_another_cause_or_stop_is_not_the_one_that_is_due() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-01,a1,head-injury,,");

    assertThat(said(hold("HLD-001", "everything", "2027-04-01", null))).isEmpty();
    assertThat(said(hold("HLD-006", "everything", "2027-04-01", null)))
        .containsExactly(
            "a1, hold on everything: it holds from 2027-04-01 until ended; nothing in the club"
                + " folder calls for this hold, or it stands there twice",
            "a1 2027-04-01: no hold on everything from 2027-04-01 until it is ended; the club"
                + " folder calls for it: head-injury (ours, common practice)");
    assertThat(said(hold("HLD-001", "throwing", "2027-04-01", null))).hasSize(2);
  }

  @Test
  void rest_is_spoken_for_by_a_rule_of_rest_alone() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,36,game");

    assertThat(said(hold("ARM-026", "throwing", "2027-04-06", "2027-04-07"))).isEmpty();
    assertThat(said(hold("HLD-002", "throwing", "2027-04-06", "2027-04-07"))).hasSize(2);
    assertThat(said(hold("ARM-004", "everything", "2027-04-06", "2027-04-07"))).hasSize(2);
  }

  @Test
  void of_two_holds_for_two_causes_each_answers_for_its_own() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-01,a1,arm-pain,,", "2027-04-02,a1,back-pain,,");
    String arm = hold("HLD-002", "throwing", "2027-04-01", null);
    String armSwings = hold("HLD-003", "swinging", "2027-04-01", null);
    String back = hold("HLD-004", "throwing", "2027-04-02", null);

    assertThat(said(arm, armSwings, back, hold("HLD-005", "swinging", "2027-04-02", null)))
        .isEmpty();
    assertThat(said(arm, armSwings, back, hold("HLD-005", "swinging", "2027-04-03", null)))
        .singleElement()
        .asString()
        .contains("it holds from 2027-04-03 until ended")
        .contains("from 2027-04-02 until it is ended for back-pain");
  }

  @Test
  void reports_that_cannot_be_read_hold_whom_they_may_be_about() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-01,a1,what,,", "2027-04-03,b1,what,,");
    String lost = hold("HLD-009", "everything", "2027-04-01", null);

    assertThat(said(lost)).isEmpty();
    assertThat(said()).singleElement().asString().contains("a report that cannot be read");
    assertThat(said(lost, hold("HLD-009", "everything", "2027-04-03", null)))
        .as("the other child's")
        .hasSize(1);
  }

  @Test
  void lost_reports_of_later_days_hold_from_the_first_of_them() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-08,a1,what,,", "2027-04-09,a1,what,,");
    String first = hold("HLD-009", "everything", "2027-04-08", null);

    assertThat(said(first)).isEmpty();
    assertThat(said(first, hold("HLD-009", "everything", "2027-04-09", null))).hasSize(1);
    club.with("wellness.csv", WELLNESS, "2027-04-05,a1,what,,", "2027-04-09,a1,what,,");
    assertThat(said(hold("HLD-009", "everything", "2027-04-05", null))).isEmpty();
    club.with("wellness.csv", WELLNESS, "2027-04-19,a1,what,,");
    assertThat(said()).as("after the planned weeks").isEmpty();
    club.with("wellness.csv", WELLNESS, "2027-04-18,a1,what,,");
    assertThat(said()).as("their last day").hasSize(1);
  }

  @Test
  void what_hurts_rests_on_the_first_planned_day_if_nothing_has_ended_it() throws Exception {
    String rest = hold("HLD-007", "everything", "2027-04-05", "2027-04-05");
    String throwing = hold("HLD-010", "throwing", "2027-04-05", null);
    String swinging = hold("HLD-011", "swinging", "2027-04-05", null);
    club.with("wellness.csv", WELLNESS, "2027-04-05,a1,other-pain,,");
    assertThat(said(rest, throwing, swinging)).isEmpty();
    assertThat(said(throwing, swinging)).hasSize(1);

    club.with("wellness.csv", WELLNESS, "2027-04-04,a1,other-pain,,");
    assertThat(
            said(
                hold("HLD-010", "throwing", "2027-04-04", null),
                hold("HLD-011", "swinging", "2027-04-04", null)))
        .isEmpty();
    club.with("wellness.csv", WELLNESS, "2027-04-18,a1,other-pain,,");
    assertThat(said()).as("on the last of the planned days").hasSize(3);
    club.with("wellness.csv", WELLNESS, "2027-04-19,a1,other-pain,,");
    assertThat(said()).isEmpty();
  }

  @Test
  void a_complaint_that_is_open_already_begins_no_second_hold() throws Exception {
    club.with("wellness.csv", WELLNESS, "2027-04-01,a1,illness,,", "2027-04-08,a1,illness,,");
    String ill = hold("HLD-006", "everything", "2027-04-01", null);

    assertThat(said(ill)).isEmpty();
    club.with("wellness.csv", WELLNESS, "2027-04-01,a1,illness,,", "2027-04-08,a1,arm-pain,,");
    assertThat(
            said(
                ill,
                hold("HLD-002", "throwing", "2027-04-08", null),
                hold("HLD-003", "swinging", "2027-04-08", null)))
        .isEmpty();
  }
}
