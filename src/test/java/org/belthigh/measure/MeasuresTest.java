package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.TestClub;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasuresTest {
  private static final String TALLIES = "date,player,drill,measure,made,of";
  private static final LocalDate DAY = LocalDate.of(2027, 3, 8);

  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private PlayerMeasures ana() {
    ClubRecord record = club.read();
    assertThat(record.problems()).isEmpty();
    return Measures.of(record).get(0);
  }

  /** Rows of {@code zone,called,swing} in the zone-call drill. */
  private PlayerMeasures calls(String drill, String... rows) {
    club.with(
        "logs/a.csv",
        Stream.concat(
                Stream.of("date,player,drill,zone,called,swing,hit"),
                Stream.of(rows)
                    .map(
                        r ->
                            "2027-03-08,p01,"
                                + drill
                                + ","
                                + r
                                + (r.endsWith("yes") ? ",soft" : ",")))
            .toList());
    return ana();
  }

  /** Rows of {@code toss,swing,hit} of one countdown. */
  private void countdown(String drill, String... rows) {
    club.with(
        "logs/" + drill + ".csv",
        Stream.concat(
                Stream.of("date,player,drill,zone,swing,hit"),
                Stream.of(rows).map(r -> "2027-03-08,p01," + drill + ",5," + r))
            .toList());
  }

  /** Rows of {@code round,zone,field,swing,hit,went} of the field-call drill. */
  private FieldCalls fields(String... rows) {
    club.with(
        "logs/a.csv",
        Stream.concat(
                Stream.of("date,player,drill,round,zone,field,swing,hit,went"),
                Stream.of(rows).map(r -> "2027-03-08,p01,field-call," + r))
            .toList());
    return ana().fieldCalls();
  }

  @Test
  void everybody_on_the_roster_is_listed_even_with_nothing_seen() {
    List<PlayerMeasures> all = Measures.of(club.read());

    assertThat(all).extracting(PlayerMeasures::player).containsExactly("p01", "p02", "p03");
    assertThat(all)
        .allSatisfy(
            m -> {
              assertThat(m.zoneRecognition().calls()).isEqualTo(Share.none());
              assertThat(m.zoneRecognition().kappa()).isEmpty();
              assertThat(m.middleTake()).isEqualTo(Share.none());
              assertThat(m.ballSwing()).isEqualTo(Share.none());
              assertThat(m.countdown().rounds()).isEmpty();
              assertThat(m.countdown().mean()).isEmpty();
              assertThat(m.fieldCalls()).isEqualTo(new FieldCalls(Share.none(), Share.none()));
            });
  }

  @Test
  void a_call_is_right_where_it_equals_the_spot() {
    PlayerMeasures ana =
        calls("tee-work", "5,5,no", "5,4,no", "ball,ball,no", "9,ball,no", "1,,no");

    assertThat(ana.zoneRecognition().calls()).isEqualTo(new Share(2, 4));
    // observed 2/4; chance (2*1 [5] + 1*2 [ball]) / 16
    assertThat(ana.zoneRecognition().kappa().orElseThrow())
        .isCloseTo((2.0 / 4 - 4.0 / 16) / (1 - 4.0 / 16), within(1e-12));
  }

  @Test
  void silence_is_the_answer_ball_in_the_zone_call_drill_alone() {
    assertThat(calls("zone-call", "ball,none,no", "5,-,no", "5,,no").zoneRecognition().calls())
        .isEqualTo(new Share(1, 2));
    assertThat(calls("tee-work", "ball,none,no", "5,-,no").zoneRecognition().calls())
        .isEqualTo(Share.none());
  }

  @Test
  void coarser_calls_count_at_their_own_grain_and_spots_count_there_too() {
    PlayerMeasures ana =
        calls("zone-call", "5,6,no", "ball,strike,no", "2,low,no", "1,middle,no", "3,away,no");

    assertThat(ana.recognition().get(Grain.NINE).calls()).isEqualTo(new Share(0, 1));
    assertThat(ana.recognition().get(Grain.ROW).calls()).isEqualTo(new Share(2, 2));
    assertThat(ana.recognition().get(Grain.COLUMN).calls()).isEqualTo(new Share(1, 3));
    assertThat(ana.recognition().get(Grain.STRIKE).calls()).isEqualTo(new Share(4, 5));
  }

  @Test
  void calls_before_a_take_and_before_a_swing_are_kept_apart() {
    PlayerMeasures ana = calls("zone-call", "5,5,no", "5,4,no", "6,6,yes");

    assertThat(ana.callsOnTakes()).isEqualTo(new Share(1, 2));
    assertThat(ana.callsOnSwings()).isEqualTo(new Share(1, 1));
    assertThat(ana.zoneRecognition().calls()).isEqualTo(new Share(2, 3));
  }

  @Test
  void belt_high_takes_and_swings_at_balls_count_in_any_drill() {
    PlayerMeasures ana =
        calls("tee-work", "4,,no", "5,,yes", "6,,yes", "2,,no", "8,,no", "ball,,yes", "ball,,no");

    assertThat(ana.middleTake()).isEqualTo(new Share(1, 3));
    assertThat(ana.ballSwing()).isEqualTo(new Share(1, 2));
  }

  @Test
  void a_take_is_no_fault_where_the_called_field_does_not_want_the_spot() {
    fields(
        "1,6,left,no,,", // Ana bats right: the pull side does not want away
        "1,4,left,no,,",
        "1,4,right-center,no,,", // nor the opposite field in
        "1,6,right-center,no,,",
        "1,4,center,no,,",
        "1,6,center,yes,soft,none");

    assertThat(ana().middleTake()).isEqualTo(new Share(3, 4));
  }

  @Test
  void the_side_the_hitter_stood_on_decides_which_field_is_pull() {
    club.with(
        "logs/a.csv",
        "date,player,drill,bats,zone,field,swing",
        "2027-03-08,p03,field-call,L,6,right,no",
        "2027-03-08,p03,field-call,L,4,right,no",
        "2027-03-08,p03,field-call,R,4,right,no",
        "2027-03-08,p03,field-call,R,6,right,no");

    assertThat(Measures.of(club.read()).get(2).middleTake()).isEqualTo(new Share(2, 2));
  }

  @Test
  void a_called_field_exempts_nothing_in_another_drill() {
    club.with(
        "logs/a.csv", "date,player,drill,zone,field,swing", "2027-03-08,p01,tee-work,6,left,no");

    assertThat(ana().middleTake()).isEqualTo(new Share(1, 1));
  }

  @Test
  void a_countdown_costs_only_swings_and_leaves_the_rest_free() {
    countdown("short-countdown", "yes,hard", "no,", "yes,soft", "yes,foul", "yes,miss", "yes,hard");

    PlayerMeasures ana = ana();

    assertThat(ana.countdown().rounds())
        .containsExactly(new Countdown.Round(DAY, "1", OptionalInt.of(4), 4, OptionalInt.of(1), 1));
    assertThat(ana.countdown().mean()).hasValue(4.0);
    assertThat(ana.hardHit()).isEqualTo(new Share(2, 5));
    assertThat(ana.middleTake()).isEqualTo(new Share(1, 6));
  }

  @Test
  void an_unfinished_countdown_has_no_score_and_no_part_in_the_mean() {
    countdown("countdown", "yes,hard", "yes,soft");

    Countdown countdown = ana().countdown();

    assertThat(countdown.rounds().get(0).complete()).isFalse();
    assertThat(countdown.rounds().get(0).score()).isEmpty();
    assertThat(countdown.mean()).isEmpty();
  }

  @Test
  void rounds_are_walked_in_toss_order_whatever_the_file_order() {
    club.with(
        "logs/a.csv",
        "date,player,drill,round,toss,zone,swing,hit",
        "2027-03-08,p01,short-countdown,2,4,5,yes,hard",
        "2027-03-08,p01,short-countdown,2,1,5,yes,soft",
        "2027-03-08,p01,short-countdown,2,2,5,yes,soft",
        "2027-03-08,p01,short-countdown,2,3,5,yes,soft",
        "2027-03-08,p01,short-countdown,10,1,5,yes,soft",
        "2027-03-08,p01,short-countdown,1,1,5,yes,soft");

    List<Countdown.Round> rounds = ana().countdown().rounds();

    assertThat(rounds).extracting(Countdown.Round::round).containsExactly("1", "2", "10");
    assertThat(rounds.get(1).score()).hasValue(4);
    assertThat(rounds.get(1).hard()).hasValue(1);
  }

  @Test
  void a_field_is_hit_where_the_ball_went_to_it() {
    FieldCalls calls =
        fields(
            "1,5,left,yes,soft,center",
            "1,5,left,yes,hard,left", // second swing of the same call
            "1,5,left,yes,hard,left", // made before, so a new call
            "1,6,right,no,,", // a take belongs to the run
            "1,6,right,yes,foul,foul",
            "1,6,right,yes,soft,pop-up",
            "1,5,center,no,,", // no swing, no call
            "1,4,left-center,yes,hard,left-center");

    assertThat(calls.swings()).isEqualTo(new Share(3, 6));
    assertThat(calls.firstTry()).isEqualTo(new Share(2, 4));
  }

  @Test
  void a_call_does_not_reach_over_the_end_of_a_round() {
    FieldCalls calls = fields("1,5,left,yes,soft,center", "2,5,left,yes,hard,left");

    assertThat(calls.firstTry()).isEqualTo(new Share(1, 2));
  }

  @Test
  void tallies_add_to_the_counts_but_not_to_kappa_or_first_try() {
    club.with(
        "logs/tally.csv",
        TALLIES,
        "2027-03-08,p01,zone-call,zone-recognition,5,8",
        "2027-03-08,p01,zone-call,middle-take,1,6",
        "2027-03-08,p01,zone-call,ball-swing,2,3",
        "2027-03-08,p01,countdown,countdown,9,12",
        "2027-03-08,p01,field-call,field-call,4,7");

    PlayerMeasures ana = calls("tee-work", "5,5,no", "4,5,no", "ball,ball,yes");

    assertThat(ana.zoneRecognition().calls()).isEqualTo(new Share(7, 11));
    assertThat(ana.zoneRecognition().kappa().orElseThrow())
        .isCloseTo((2.0 / 3 - 3.0 / 9) / (1 - 3.0 / 9), within(1e-12));
    assertThat(ana.middleTake()).isEqualTo(new Share(3, 8));
    assertThat(ana.ballSwing()).isEqualTo(new Share(3, 4));
    assertThat(ana.countdown().rounds())
        .containsExactly(
            new Countdown.Round(
                DAY, Countdown.Round.TALLY, OptionalInt.of(9), 9, OptionalInt.empty(), 0));
    assertThat(ana.fieldCalls()).isEqualTo(new FieldCalls(new Share(4, 7), Share.none()));
  }

  @Test
  void rows_after_the_day_asked_for_are_not_counted() {
    calls("tee-work", "5,5,no");

    assertThat(Measures.of(club.read().upTo(DAY)).get(0).middleTake().seen()).isEqualTo(1);
    assertThat(Measures.of(club.read().upTo(DAY.minusDays(1))).get(0).middleTake().seen()).isZero();
  }
}
