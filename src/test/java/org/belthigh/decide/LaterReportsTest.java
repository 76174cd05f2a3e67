package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Weeks that are planned again after their first day: what is dated inside them holds from its own
 * day on and never frees anybody. Rest is that of Pitch Smart 2018 (s02 to s05) at 10: one day
 * after 21 pitches, two after 36, four after 66; 75 pitches at most.
 */
class LaterReportsTest {
  private static final Catalogue CATALOGUE = RuleCase.CATALOGUE;
  private static final LocalDate FROM = april(5);
  private static final LocalDate LAST = april(18);

  @TempDir private Path folder;

  private static LocalDate april(int day) {
    return LocalDate.of(2027, 4, day);
  }

  @BeforeEach
  void club() throws IOException {
    rule("pitch-smart-2018");
    Files.writeString(
        folder.resolve("roster.csv"),
        """
        id,first_name,born,bats,group,pitches,catches
        a1,Ada,2017-01-05,R,u10,yes,yes
        b1,Bo,2017-02-05,R,u10,yes,no
        """);
  }

  private void rule(String books) throws IOException {
    Files.writeString(
        folder.resolve("club.yaml"),
        """
        name: Later
        rule_book: %s
        season: {first: "2027-03-01", last: "2027-05-24"}
        groups:
          - {id: u10, name: Under 10, age: [9, 10], tossers: 1}
        """
            .formatted(books));
  }

  private ClubRecord health(String... rows) throws Exception {
    Files.writeString(
        folder.resolve("wellness.csv"),
        "date,player,kind,clears,by\n" + String.join("\n", rows) + "\n");
    return Intake.read(folder, CATALOGUE);
  }

  private ClubRecord thrown(String... rows) throws Exception {
    Files.writeString(
        folder.resolve("throws.csv"),
        "date,player,pitches,kind,innings_caught\n" + String.join("\n", rows) + "\n");
    return Intake.read(folder, CATALOGUE);
  }

  private static List<String> within(ClubRecord record) {
    return new Holds(CATALOGUE)
        .within(record, FROM, LAST).stream().map(LaterReportsTest::said).toList();
  }

  private static String said(Hold hold) {
    return "%s %s %s%s"
        .formatted(
            hold.player(),
            hold.kind().id(),
            hold.from().getDayOfMonth(),
            hold.until().map(u -> "-" + u.getDayOfMonth()).orElse(""));
  }

  @Test
  void a_complaint_inside_the_weeks_holds_from_its_day_on() throws Exception {
    ClubRecord record =
        health("2027-04-08,a1,head-injury,,", "2027-04-18,b1,illness,,", "2027-04-19,a1,illness,,");

    assertThat(within(record)).containsExactly("a1 everything 8", "b1 everything 18");
  }

  @Test
  void what_ends_one_inside_the_weeks_frees_nobody_yet() throws Exception {
    ClubRecord record =
        health("2027-04-04,a1,arm-pain,,", "2027-04-07,a1,cleared,arm-pain,physician");

    assertThat(within(record)).containsExactly("a1 throwing 4", "a1 swinging 4");
    assertThat(
            within(health("2027-04-07,a1,arm-pain,,", "2027-04-09,a1,cleared,arm-pain,physician")))
        .containsExactly("a1 throwing 7", "a1 swinging 7");
  }

  @Test
  void a_complaint_that_is_open_already_begins_no_second_stop() throws Exception {
    assertThat(within(health("2027-04-04,a1,illness,,", "2027-04-09,a1,illness,,")))
        .containsExactly("a1 everything 4");
    assertThat(within(health("2027-04-04,a1,illness,,", "2027-04-09,b1,illness,,")))
        .as("another child's")
        .containsExactly("a1 everything 4", "b1 everything 9");
    assertThat(within(health("2027-04-04,a1,illness,,", "2027-04-09,a1,head-injury,,")))
        .as("another cause")
        .containsExactly("a1 everything 4", "a1 everything 9");
  }

  @Test
  void what_hurts_rests_on_each_of_its_days() throws Exception {
    assertThat(within(health("2027-04-05,a1,other-pain,,", "2027-04-09,a1,other-pain,,")))
        .containsExactly(
            "a1 everything 5-5", "a1 throwing 5", "a1 swinging 5", "a1 everything 9-9");
  }

  @Test
  void a_lost_report_inside_the_weeks_holds_too() throws Exception {
    assertThat(within(health("2027-04-08,a1,what,,"))).containsExactly("a1 everything 8");
    assertThat(within(health("2027-04-30,a1,what,,"))).isEmpty();
  }

  @Test
  void who_was_cleared_of_head_arm_or_back_comes_back_slowly() throws Exception {
    ClubRecord record =
        health(
            "2027-04-01,a1,cleared,arm-pain,physician",
            "2027-04-03,a1,cleared,back-pain,physical-therapist",
            "2027-04-03,b1,cleared,illness,parent",
            "2027-04-03,b1,cleared,arm-pain,parent",
            "2027-04-03,b1,symptom-free,,");

    assertThat(new Holds(CATALOGUE).comebacks(record, FROM))
        .isEqualTo(Map.of("a1", new Comeback("a1", april(3), april(9))));
    assertThat(new Holds(CATALOGUE).comebacks(record, april(9))).hasSize(1);
    assertThat(new Holds(CATALOGUE).comebacks(record, april(10))).isEmpty();
    assertThat(new Holds(CATALOGUE).comebacks(record, april(2)))
        .as("as known then")
        .isEqualTo(Map.of("a1", new Comeback("a1", april(1), april(7))));
    assertThat(new Comeback("a1", april(3), april(9)).on(april(2))).isFalse();
    assertThat(new Comeback("a1", april(3), april(9)).on(april(3))).isTrue();
  }

  private static List<String> rests(ClubRecord record) {
    return new Arms(CATALOGUE)
        .restHolds(record, FROM, LAST).stream().map(LaterReportsTest::said).toList();
  }

  @Test
  void an_outing_inside_the_weeks_rests_from_the_day_after_it() throws Exception {
    assertThat(rests(thrown("2027-04-04,a1,36,game,", "2027-04-08,a1,21,game,")))
        .containsExactly("a1 throwing 5-6", "a1 throwing 9-9");
    assertThat(rests(thrown("2027-04-04,a1,66,game,", "2027-04-06,b1,36,game,")))
        .as("each rest once, each of its own child")
        .containsExactly("a1 throwing 5-8", "b1 throwing 7-8");
    assertThat(rests(thrown("2027-04-19,a1,66,game,"))).isEmpty();
    assertThat(rests(thrown("2027-04-18,a1,66,game,"))).containsExactly("a1 throwing 19-22");
  }

  private static ArmStatus ada(ClubRecord record, int known, int on) {
    return new Arms(CATALOGUE)
        .on(record, april(known), april(on)).stream()
            .filter(s -> s.player().equals("a1"))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void a_later_outing_makes_a_yes_a_no_and_says_why() throws Exception {
    ClubRecord record = thrown("2027-04-01,a1,0,game,", "2027-04-06,a1,36,game,");

    ArmStatus before = ada(record, 5, 5);
    assertThat(before.mayPitch()).isTrue();
    assertThat(before.pitchesLeft()).isEqualTo(75);
    ArmStatus after = ada(record, 5, 7);
    assertThat(after.mayPitch()).isFalse();
    assertThat(after.eligibleFrom()).contains(april(9));
    assertThat(after.bothAges().mayPitch()).isFalse();
    assertThat(after.because()).extracting(Reason::rule).contains("ARM-004");
    assertThat(after.because()).extracting(Reason::rule).doesNotContain("ARM-010");
    assertThat(after.knownTo()).contains(april(1));
  }

  @Test
  void an_outing_of_the_day_itself_leaves_fewer_pitches_and_no_catching() throws Exception {
    ClubRecord record = thrown("2027-04-01,a1,0,game,", "2027-04-06,a1,15,game,");

    ArmStatus day = ada(record, 5, 6);
    assertThat(day.mayPitch()).isTrue();
    assertThat(day.pitchesLeft()).isEqualTo(60);
    assertThat(day.mayCatch()).isFalse();
    assertThat(day.because()).extracting(Reason::rule).contains("ARM-033", "ARM-010");
    assertThat(ada(record, 5, 5).mayCatch()).isTrue();
  }

  @Test
  void nothing_later_makes_a_no_a_yes() throws Exception {
    thrown("2027-04-04,a1,66,game,", "2027-04-06,a1,0,game,");
    assertThat(ada(Intake.read(folder, CATALOGUE), 5, 6).mayPitch()).isFalse();

    ClubRecord record =
        health("2027-04-04,a1,arm-pain,,", "2027-04-05,a1,cleared,arm-pain,physician");
    assertThat(ada(record, 4, 9).because()).extracting(Reason::rule).contains("ARM-008");
    assertThat(ada(record, 4, 9).mayPitch()).isFalse();
  }

  @Test
  void whom_nothing_was_heard_of_stays_asked_about_though_an_outing_follows() throws Exception {
    ClubRecord record = thrown("2027-04-06,a1,15,game,");

    ArmStatus day = ada(record, 5, 6);
    assertThat(day.askFirst()).isTrue();
    assertThat(day.mayPitch()).isFalse();
    assertThat(day.answer().opened().pitchesLeft()).isEqualTo(60);
    assertThat(day.because()).extracting(Reason::rule).doesNotContain("ARM-010");
  }

  @Test
  void a_lost_outing_of_later_asks_first() throws Exception {
    ClubRecord record = thrown("2027-04-01,a1,0,game,", "2027-04-06,a1,many,game,");

    assertThat(ada(record, 5, 5).mayPitch()).isTrue();
    ArmStatus day = ada(record, 5, 6);
    assertThat(day.askFirst()).isTrue();
    assertThat(day.mayPitch()).isFalse();
  }

  @Test
  void the_later_of_two_days_is_the_first_free_one() throws Exception {
    ClubRecord record =
        thrown("2027-04-04,a1,66,game,", "2027-04-06,a1,21,game,", "2027-03-20,b1,0,game,");

    assertThat(ada(record, 5, 6).eligibleFrom()).contains(april(9));
    assertThat(
            new Arms(CATALOGUE)
                .on(record, april(5), april(6)).stream().map(ArmStatus::player).toList())
        .containsExactly("a1", "b1");
  }

  @Test
  void the_count_to_the_last_batter_is_made_stricter_too() throws Exception {
    rule("little-league-reg-vi");
    ClubRecord record = thrown("2027-04-01,a1,0,game,", "2027-04-06,a1,36,game,");

    assertThat(ada(record, 5, 7).lastBatter().orElseThrow().mayPitch()).isFalse();
    assertThat(ada(record, 5, 5).lastBatter().orElseThrow().mayPitch()).isTrue();
  }

  @Test
  void a_word_of_the_day_of_a_complaint_is_a_note_of_the_stop() throws Exception {
    ClubRecord record = health("2027-04-04,a1,arm-pain,,", "2027-04-04,a1,cleared,illness,parent");

    assertThat(new Holds(CATALOGUE).of(record, FROM))
        .allSatisfy(
            h ->
                assertThat(h.notes())
                    .extracting(Reason::rule, Reason::phrase)
                    .containsExactly(
                        tuple("HLD-013", Phrase.of("HLD-013", "player", "Ada", "date", april(4)))));
  }
}
