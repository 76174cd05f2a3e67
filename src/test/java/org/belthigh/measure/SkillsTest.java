package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.TestClub;
import org.belthigh.intake.Toss;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Origin;
import org.belthigh.model.Share;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SkillsTest {
  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private List<PlayerMeasures> measures() {
    ClubRecord record = club.read();
    assertThat(record.problems()).isEmpty();
    return Measures.of(record);
  }

  /** Rows of one day, for Ana (first), Ben or Cruz. */
  private List<PlayerMeasures> logged(String columns, String... rows) {
    club.with(
        "logs/a.csv",
        Stream.concat(
                Stream.of("date,player,drill," + columns),
                Stream.of(rows).map(row -> "2027-03-08," + row))
            .toList());
    return measures();
  }

  private static Calls nine(PlayerMeasures measures) {
    return measures.skills().see().at(Grain.NINE).all();
  }

  @Test
  void one_spot_off_is_a_move_of_a_king_and_only_over_the_nine() {
    Calls calls =
        nine(
            logged(
                    "zone,called,swing",
                    "p01,zone-call,5,5,no",
                    "p01,zone-call,5,1,no", // the corner next to it
                    "p01,zone-call,4,6,no", // two away
                    "p01,zone-call,1,ball,no",
                    "p01,zone-call,ball,9,no",
                    "p01,zone-call,ball,ball,no")
                .get(0));

    assertThat(calls.exact()).isEqualTo(new Share(2, 6));
    assertThat(calls.oneOff()).isEqualTo(new Share(1, 4));
    assertThat(calls.withinOne()).isEqualTo(new Share(2, 4));
    assertThat(calls.ballOrStrike()).isEqualTo(new Detection(new Share(1, 2), new Share(1, 4)));
    assertThat(calls.recall())
        .containsOnly(
            Map.entry("belt-middle", new Share(1, 2)),
            Map.entry("belt-in", new Share(0, 1)),
            Map.entry("low-in", new Share(0, 1)),
            Map.entry("ball", new Share(1, 2)));
    assertThat(calls.mix().tossed()).containsEntry("ball", 2).containsEntry("low-in", 1);
  }

  @Test
  void rows_and_columns_are_one_off_when_they_are_neighbours() {
    See see =
        logged(
                "zone,called,swing",
                "p01,zone-call,2,belt,no",
                "p01,zone-call,2,high,no",
                "p01,zone-call,4,away,no",
                "p01,zone-call,5,away,no")
            .get(0)
            .skills()
            .see();

    assertThat(see.at(Grain.ROW).all().oneOff()).isEqualTo(new Share(1, 2));
    assertThat(see.at(Grain.COLUMN).all().oneOff()).isEqualTo(new Share(1, 2));
    assertThat(see.at(Grain.STRIKE).all().oneOff()).isEqualTo(new Share(0, 4));
  }

  /** Rows low 2 right and 1 taken for high, high 1 taken for belt: worked by hand. */
  @Test
  void weighted_kappa_takes_two_rows_off_for_twice_as_wrong() {
    Calls rows =
        logged(
                "zone,called,swing",
                "p01,zone-call,1,low,no",
                "p01,zone-call,2,low,no",
                "p01,zone-call,3,high,no",
                "p01,zone-call,8,belt,no")
            .get(0)
            .skills()
            .see()
            .at(Grain.ROW)
            .all();

    // observed (2 + 1) / 4; blind: low 3/4, high 1/4 against low 2/4, belt 1/4, high 1/4
    double blind = (3 * (1 * 1 + 1 * 2) + 1 * (2 * 2 + 1 * 1)) / 16.0;
    assertThat(rows.weightedKappa().orElseThrow()).isCloseTo(1 - 0.75 / blind, within(1e-12));
  }

  @Test
  void calls_after_a_swing_are_kept_apart_with_their_own_mix() {
    See.Reading reading =
        logged(
                "zone,called,swing,hit",
                "p01,zone-call,5,5,yes,soft",
                "p01,zone-call,5,5,yes,soft",
                "p01,zone-call,4,1,no,")
            .get(0)
            .skills()
            .see()
            .at(Grain.NINE);

    assertThat(reading.onSwings().exact()).isEqualTo(new Share(2, 2));
    assertThat(reading.onTakes().exact()).isEqualTo(new Share(0, 1));
    assertThat(reading.onSwings().mix().alwaysCommonest()).hasValue(1.0);
    assertThat(reading.all().mix().alwaysCommonest().orElseThrow())
        .isCloseTo(2 / 3.0, within(1e-12));
  }

  @Test
  void near_edge_tosses_are_left_out_of_the_pair_and_stay_in_the_plain_counts() {
    PlayerMeasures ana =
        logged(
                "zone,near,swing,hit",
                "p01,tee-work,5,,yes,soft",
                "p01,tee-work,4,yes,no,",
                "p01,tee-work,ball,yes,yes,miss",
                "p01,tee-work,ball,no,no,",
                "p01,tee-work,9,yes,no,") // neither a belt-high toss nor a ball
            .get(0);

    assertThat(ana.middleTake()).isEqualTo(new Share(1, 2));
    assertThat(ana.ballSwing()).isEqualTo(new Share(1, 2));
    assertThat(ana.skills().choose())
        .isEqualTo(
            new Choose(
                new Detection(new Share(1, 1), new Share(0, 1)),
                0,
                2,
                0,
                Map.of(Spot.BELT_MIDDLE, new Share(1, 1))));
  }

  @Test
  void a_field_that_does_not_want_the_spot_is_counted_as_an_exemption() {
    Choose choose =
        logged(
                "zone,field,swing",
                "p01,field-call,6,left,no", // Ana bats right: pull does not want away
                "p01,field-call,4,left,no",
                "p01,field-call,9,left,no")
            .get(0)
            .skills()
            .choose();

    assertThat(choose.exempt()).isEqualTo(1);
    assertThat(choose.swing().hits()).isEqualTo(new Share(0, 1));
  }

  @Test
  void who_only_watches_lets_nothing_go() {
    Choose choose = Choose.of(List.of(toss(Spot.BELT_IN, true), toss(Spot.BALL, true)), List.of());

    assertThat(choose).isEqualTo(new Choose(Detection.none(), 0, 0, 2, Map.of()));
    assertThat(Choose.of(List.of(toss(Spot.BELT_IN, false)), List.of()).swing().hits())
        .isEqualTo(new Share(0, 1));
  }

  private static Toss toss(Spot zone, boolean watched) {
    return new Toss(
        LocalDate.of(2027, 3, 8),
        "p01",
        "stand-in",
        DrillKind.ZONE_CALL,
        12,
        watched,
        "1",
        1,
        Side.RIGHT,
        zone,
        false,
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        "coach",
        Origin.of("logs/a.csv", 2));
  }

  @Test
  void countdowns_pool_strings_scores_unfinished_rounds_and_timing() {
    club.with(
        "logs/tally.csv",
        "date,player,drill,measure,made,of",
        "2027-03-09,p01,countdown,countdown,9,12");
    Drive drive =
        logged(
                "round,zone,swing,hit,timing",
                "p01,short-countdown,1,5,yes,hard,on",
                "p01,short-countdown,1,5,yes,soft,late",
                "p01,short-countdown,1,5,no,,",
                "p01,short-countdown,1,5,yes,miss,late",
                "p01,short-countdown,1,5,yes,miss,",
                "p01,short-countdown,1,5,yes,hard,early", // free
                "p01,short-countdown,2,5,yes,hard,on")
            .get(0)
            .skills()
            .drive();

    assertThat(drive.hits())
        .isEqualTo(new HardHits(new Share(3, 6), List.of(new HardHits.Score(12, 9))));
    assertThat(drive.finished()).isEqualTo(2);
    assertThat(drive.unfinished()).isEqualTo(1);
    assertThat(drive.mean()).hasValue((4 + 9) / 2.0);
    assertThat(drive.timing()).isEqualTo(new Drive.Timings(1, 2, 2));
  }

  @Test
  void sends_are_told_by_field_direction_and_spot_against_chance() {
    Send send =
        logged(
                "zone,field,swing,hit,went",
                "p01,field-call,4,left,yes,soft,center",
                "p01,field-call,6,left,yes,hard,left",
                "p01,field-call,5,right-center,yes,hard,right-center",
                "p01,field-call,5,center,no,,") // called, not swung at
            .get(0)
            .skills()
            .send();

    assertThat(send.byField())
        .containsOnly(
            Map.entry(Field.LEFT, new FieldCalls(new Share(1, 2), new Share(0, 1))),
            Map.entry(Field.RIGHT_CENTER, new FieldCalls(new Share(1, 1), new Share(1, 1))));
    assertThat(send.byDirection().keySet())
        .containsExactlyInAnyOrder(Field.Direction.PULL, Field.Direction.OPPOSITE);
    assertThat(send.chance()).hasValue(1.0 / 3);
    assertThat(send.spots().get(Field.LEFT))
        .containsOnly(Map.entry(Spot.BELT_IN, 1), Map.entry(Spot.BELT_AWAY, 1));
    assertThat(send.suited().get(Field.LEFT)).isEqualTo(new Share(1, 2));
  }

  @Test
  void who_hits_from_both_sides_is_measured_on_each() {
    club.with(
        "logs/tally.csv",
        "date,player,drill,measure,made,of,bats",
        "2027-03-09,p03,tee-work,ball-swing,1,4,L",
        "2027-03-10,p03,tee-work,ball-swing,2,5,");
    List<PlayerMeasures> all =
        logged(
            "round,bats,zone,field,swing,hit,went",
            "p03,field-call,1,L,5,right,yes,soft,center",
            "p03,field-call,1,R,5,right,yes,hard,right",
            "p03,short-countdown,1,L,5,,yes,soft,",
            "p03,short-countdown,1,R,5,,yes,hard,",
            "p03,short-countdown,2,R,5,,yes,hard,",
            "p01,tee-work,1,,5,,yes,hard,");
    PlayerMeasures cruz = all.get(2);
    Skills left = cruz.bySide().get(Side.LEFT);
    Skills right = cruz.bySide().get(Side.RIGHT);

    // the right-handed swing is the second of the call, whoever stood where
    assertThat(left.send().all()).isEqualTo(new FieldCalls(new Share(0, 1), new Share(0, 1)));
    assertThat(right.send().all()).isEqualTo(new FieldCalls(new Share(1, 1), Share.none()));
    assertThat(left.choose().swing().falseAlarms()).isEqualTo(new Share(1, 4));
    assertThat(cruz.skills().choose().swing().falseAlarms()).isEqualTo(new Share(3, 9));
    assertThat(left.drive().unfinished()).isZero(); // the round from both sides is neither's
    assertThat(right.drive().unfinished()).isEqualTo(1);
    assertThat(right.drive().hits().single()).isEqualTo(new Share(2, 2));
    assertThat(all.get(0).bySide()).isEmpty();
  }

  @Test
  void two_people_may_mark_the_same_toss_and_are_compared() {
    List<PlayerMeasures> all =
        logged(
            "toss,zone,called,swing,hit,by",
            "p01,zone-call,1,5,5,yes,hard,Ann",
            "p01,zone-call,2,1,1,no,,Ann",
            "p01,zone-call,3,ball,9,no,,Ann",
            "p01,zone-call,1,5,5,yes,soft,Bo",
            "p01,zone-call,2,4,1,no,,Bo",
            "p02,zone-call,1,5,5,no,,Bo");
    MarkAgreement marks = Marks.of(club.read().tosses()).agreement();

    assertThat(marks.tosses()).isEqualTo(2);
    assertThat(marks.zone().same()).isEqualTo(new Share(1, 2));
    assertThat(marks.swing().same()).isEqualTo(new Share(2, 2));
    assertThat(marks.swing().kappa()).hasValue(1);
    assertThat(marks.hard().same()).isEqualTo(new Share(0, 1));
    assertThat(nine(all.get(0)).exact()).isEqualTo(new Share(3, 5)); // the counts take all rows
  }

  @Test
  void a_countdown_that_two_people_marked_is_a_round_of_each() {
    List<PlayerMeasures> all =
        logged(
            "toss,zone,swing,hit,by",
            "p01,countdown,1,5,yes,hard,Ann",
            "p01,countdown,2,5,yes,hard,Ann",
            "p01,countdown,1,5,yes,hard,Bo",
            "p01,countdown,2,5,yes,soft,Bo");

    assertThat(all.get(0).countdown().rounds())
        .extracting(Countdown.Round::swings)
        .containsExactly(2, 2);
  }

  @Test
  void shares_lean_on_those_of_the_same_age() {
    List<PlayerMeasures> all =
        logged(
            "zone,swing,hit",
            "p01,tee-work,5,no,",
            "p01,tee-work,5,no,",
            "p02,tee-work,5,yes,hard",
            "p02,tee-work,5,yes,hard");

    GroupEstimate ana = all.get(0).inAgeBand().get(MeasureKind.MIDDLE_TAKE);

    assertThat(ana).isEqualTo(new GroupEstimate(0.75, 0.5, 2, 2));
    assertThat(all.get(2).inAgeBand()).isEmpty();
  }
}
