package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.ada;
import static org.belthigh.audit.SmallClub.april;
import static org.belthigh.audit.SmallClub.cards;
import static org.belthigh.audit.SmallClub.held;
import static org.belthigh.audit.SmallClub.swings;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A hold is obeyed, and none is missing. Who may end which complaint, and what it stops, is the
 * rule of the wellness file; rest is that of Pitch Smart 2018 at 10: two days after 36 pitches.
 */
class HoldCheckTest {
  private static final FinishedPlan.Held NO_THROWING = open("throwing");
  private static final FinishedPlan.Held NO_SWINGING = open("swinging");
  private static final FinishedPlan.Held NOTHING = open("everything");

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void club() throws Exception {
    club = new SmallClub(folder);
  }

  private static FinishedPlan.Held open(String kind) {
    return new FinishedPlan.Held(kind, FROM, Optional.empty());
  }

  private static FinishedPlan.Held hold(String kind, LocalDate from, LocalDate until) {
    return new FinishedPlan.Held(kind, from, Optional.of(until));
  }

  private void wellness(String... rows) throws Exception {
    List<String> lines = new ArrayList<>(List.of("date,player,kind,clears,by"));
    lines.addAll(List.of(rows));
    club.with("wellness.csv", lines.toArray(String[]::new));
  }

  private void pitched(String... rows) throws Exception {
    List<String> lines = new ArrayList<>(List.of("date,player,pitches,kind"));
    lines.addAll(List.of(rows));
    club.with("throws.csv", lines.toArray(String[]::new));
  }

  private List<String> beside(FinishedPlan.Held... holds) throws Exception {
    return said(Optional.of(club.record()), held(ada(), holds));
  }

  private static List<String> alone(FinishedPlan.Person person) {
    return said(Optional.empty(), person);
  }

  private static List<String> said(Optional<ClubRecord> record, FinishedPlan.Person person) {
    Findings findings = SmallClub.findings();
    new HoldCheck(findings, SmallClub.LIMITS, record, SmallClub.owed(record))
        .check(SmallClub.plan(person), person);
    return SmallClub.said(findings);
  }

  private static FinishedPlan.Dated throwing(int day) {
    return new FinishedPlan.Dated(april(day), "field", 0, 0, 5, List.of());
  }

  @Test
  void each_hold_forbids_its_own_kind_of_work() {
    assertThat(alone(held(ada(swings(6, 9), cards(7)), NO_THROWING))).isEmpty();
    assertThat(alone(held(ada(throwing(6), cards(7)), NO_SWINGING))).isEmpty();
    assertThat(
            alone(held(ada(new FinishedPlan.Dated(april(6), "rest", 0, 0, 0, List.of())), NOTHING)))
        .isEmpty();
    assertThat(alone(held(ada(throwing(6)), NO_THROWING)))
        .containsExactly(
            "a1 2027-04-06: work that the hold on throwing forbids; held from 2027-04-05 until"
                + " ended");
    assertThat(alone(held(ada(swings(6, 1)), NO_SWINGING)))
        .containsExactly(
            "a1 2027-04-06: work that the hold on swinging forbids; held from 2027-04-05 until"
                + " ended");
    assertThat(alone(held(ada(cards(6), throwing(7)), NOTHING))).hasSize(2);
  }

  @Test
  void a_hold_holds_from_its_first_day_to_its_last() {
    FinishedPlan.Held three = hold("swinging", april(6), april(8));

    assertThat(alone(held(ada(swings(5, 1), swings(9, 1)), three))).isEmpty();
    assertThat(alone(held(ada(swings(6, 1), swings(8, 1)), three)))
        .containsExactly(
            "a1 2027-04-06: work that the hold on swinging forbids; held from 2027-04-06 to"
                + " 2027-04-08",
            "a1 2027-04-08: work that the hold on swinging forbids; held from 2027-04-06 to"
                + " 2027-04-08");
  }

  @Test
  void a_hold_of_an_unknown_kind_is_said() {
    assertThat(alone(held(ada(), open("running"))))
        .containsExactly("a1: a hold on 'running'; holds are on [everything, swinging, throwing]");
    assertThat(alone(held(ada(), NOTHING, NO_SWINGING, NO_THROWING))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"arm-pain", "back-pain"})
  void pain_of_arm_or_back_stops_throwing_and_swinging(String pain) throws Exception {
    wellness("2027-04-01,a1," + pain + ",,");

    assertThat(beside())
        .hasSize(2)
        .anyMatch(t -> t.startsWith("a1 2027-04-05: no open hold on throwing for " + pain + " of"))
        .anyMatch(t -> t.startsWith("a1 2027-04-05: no open hold on swinging for " + pain + " of"));
    assertThat(beside(NO_THROWING, NO_SWINGING)).isEmpty();
    assertThat(beside(NOTHING)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"head-injury", "illness"})
  void a_head_injury_and_an_illness_stop_everything(String complaint) throws Exception {
    wellness("2027-04-01,a1," + complaint + ",,");

    assertThat(beside(NO_THROWING, NO_SWINGING))
        .containsExactly(
            "a1 2027-04-05: no open hold on everything for "
                + complaint
                + " of 2027-04-01; it stops until a person who may end it ends it (ours, common"
                + " practice)");
    assertThat(beside(NOTHING)).isEmpty();
  }

  @Test
  void an_open_complaint_needs_a_hold_without_a_date_from_the_first_day_on() throws Exception {
    wellness("2027-04-01,a1,head-injury,,");

    assertThat(beside(hold("everything", FROM, april(18)))).hasSize(1);
    assertThat(beside(new FinishedPlan.Held("everything", april(6), Optional.empty()))).hasSize(1);
    assertThat(beside(new FinishedPlan.Held("everything", april(1), Optional.empty()))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "head-injury, physician, true",
    "head-injury, physician-assistant, true",
    "head-injury, nurse-practitioner, true",
    "head-injury, athletic-trainer, true",
    "head-injury, physical-therapist, false",
    "head-injury, parent, false",
    "head-injury, coach, false",
    "arm-pain, physician, true",
    "arm-pain, physical-therapist, true",
    "arm-pain, parent, false",
    "arm-pain, coach, false",
    "back-pain, athletic-trainer, true",
    "back-pain, physical-therapist, true",
    "back-pain, coach, false",
    "illness, parent, true",
    "illness, coach, true"
  })
  void who_may_end_a_complaint_depends_on_it(String complaint, String role, boolean may)
      throws Exception {
    wellness(
        "2027-04-01,a1," + complaint + ",,", "2027-04-03,a1,cleared," + complaint + "," + role);

    assertThat(beside().isEmpty()).isEqualTo(may);
  }

  @Test
  void a_clearance_ends_its_own_kind_from_its_day_on_and_nothing_later() throws Exception {
    wellness("2027-04-01,a1,head-injury,,", "2027-04-01,a1,cleared,head-injury,physician");
    assertThat(beside()).as("a complaint of the clearance's own day stays").hasSize(1);

    wellness("2027-04-01,a1,cleared,head-injury,physician", "2027-04-01,a1,head-injury,,");
    assertThat(beside()).as("in any order of rows").hasSize(1);

    wellness(
        "2027-03-20,a1,head-injury,,",
        "2027-04-01,a1,cleared,head-injury,physician",
        "2027-04-01,a1,head-injury,,",
        "2027-04-02,a1,cleared,head-injury,physician");
    assertThat(beside()).as("a row of a later date ends it").isEmpty();

    wellness("2027-04-01,a1,head-injury,,", "2027-03-31,a1,cleared,head-injury,physician");
    assertThat(beside()).as("cleared before").hasSize(1);

    wellness("2027-04-01,a1,head-injury,,", "2027-04-02,a1,cleared,arm-pain,physician");
    assertThat(beside()).as("cleared of something else").hasSize(1);

    wellness("2027-04-01,a1,head-injury,,", "2027-04-02,b1,cleared,head-injury,physician");
    assertThat(beside()).as("another child").hasSize(1);
  }

  @Test
  void being_free_of_symptoms_ends_an_illness_and_no_injury() throws Exception {
    wellness("2027-04-01,a1,illness,,", "2027-04-02,a1,symptom-free,,");
    assertThat(beside()).isEmpty();

    wellness("2027-04-01,a1,head-injury,,", "2027-04-02,a1,symptom-free,,");
    assertThat(beside()).hasSize(1);

    wellness("2027-04-01,a1,arm-pain,,", "2027-04-02,a1,symptom-free,,");
    assertThat(beside()).hasSize(2);
  }

  @Test
  void other_pain_stops_throws_and_swings_until_it_is_ended() throws Exception {
    wellness("2027-03-05,a1,other-pain,,");
    assertThat(beside()).hasSize(2);
    assertThat(beside(NO_THROWING, NO_SWINGING)).isEmpty();
    assertThat(beside(hold("everything", FROM, FROM))).hasSize(2);

    wellness("2027-03-05,a1,other-pain,,", "2027-03-06,a1,symptom-free,,");
    assertThat(beside()).isEmpty();
  }

  @Test
  void a_health_report_that_cannot_be_read_stops_throws_and_swings() throws Exception {
    wellness("2027-04-01,a1,arm-pane,,");
    assertThat(beside()).hasSize(2);
    assertThat(beside(NOTHING)).isEmpty();

    wellness("2027-04-01,b1,arm-pane,,");
    assertThat(beside()).as("another child's").isEmpty();
  }

  @Test
  void an_outing_that_cannot_be_read_is_no_health_report() throws Exception {
    pitched("2027-04-01,a1,many,game");

    assertThat(beside()).isEmpty();
  }

  @Test
  void rest_of_a_pitcher_is_held_to_its_last_day() throws Exception {
    pitched("2027-04-04,a1,36,game");

    assertThat(beside())
        .containsExactly(
            "a1 2027-04-05: no hold on throwing after 36 pitches; no throwing up to 2027-04-06"
                + " (pitch-smart-2018)");
    assertThat(beside(hold("throwing", april(5), april(6)))).isEmpty();
    assertThat(beside(hold("everything", april(5), april(7)))).isEmpty();
    assertThat(beside(hold("throwing", april(6), april(6)))).as("a day late").hasSize(1);
    assertThat(beside(hold("throwing", april(5), april(5)))).as("a day short").hasSize(1);
    assertThat(beside(hold("swinging", april(5), april(6)))).as("not of throwing").hasSize(1);
  }

  @Test
  void rest_that_is_over_needs_no_hold_and_its_last_day_does() throws Exception {
    pitched("2027-04-02,a1,36,game");
    assertThat(beside()).isEmpty();

    pitched("2027-04-03,a1,36,game");
    assertThat(beside()).hasSize(1);
    assertThat(beside(hold("throwing", april(5), april(5)))).isEmpty();
  }

  @Test
  void who_pitches_on_the_first_day_rests_from_the_day_after() throws Exception {
    pitched("2027-04-05,a1,36,game");
    assertThat(beside(hold("throwing", april(6), april(7)))).isEmpty();

    pitched("2027-04-04,a1,36,game", "2027-04-05,a1,10,game");
    assertThat(beside(hold("throwing", april(6), april(6))))
        .as("a rest that was broken is held from the day after on")
        .isEmpty();
  }
}
