package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Map;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.Toss;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Share;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one toss says: two marks of it, and how hard it was. */
class WeighingTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final LocalDate BORN = LocalDate.of(2016, 9, 1);
  private static final LocalDate TUESDAY = LocalDate.of(2027, 3, 9);
  private static final LocalDate THURSDAY = LocalDate.of(2027, 3, 11);
  private static final String DRILL = "tee-up-tee-down";
  private static final Difficulty DIFFICULTY = new Difficulty(0.25);

  private static Evidence.Reading drive(Logs logs) {
    SkillDecision decision =
        new Progress(CATALOGUE)
            .decide(logs.record(), THURSDAY)
            .get(Logs.PLAYER)
            .get(Skill.DRIVE.ordinal());
    return decision.evidence().bars().get(0);
  }

  private static Logs hits() {
    return new Logs(BORN).hits(TUESDAY, DRILL, 6, 10);
  }

  @Test
  void a_toss_that_two_people_mark_alike_counts_once() {
    assertThat(drive(hits().markedAgain(0)))
        .usingRecursiveComparison()
        .withComparatorForType(
            (a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
        .isEqualTo(drive(hits()));
  }

  @Test
  void where_two_people_differ_a_toss_is_half_a_success() {
    Evidence.Reading one = drive(hits());
    Evidence.Reading two = drive(hits().markedAgain(3));
    Evidence.Reading fewer = drive(new Logs(BORN).hits(TUESDAY, DRILL, 3, 10));

    assertThat(two.share()).isEqualTo(new Share(4, 10)); // 6 and 3: four and a half
    assertThat(two.against()).isCloseTo((one.against() + fewer.against()) / 2, within(1e-9));
    assertThat(two.estimate().value()).isCloseTo(0.45, within(1e-9));
    assertThat(two.estimate().effective()).isCloseTo(one.estimate().effective(), within(1e-9));
  }

  @ParameterizedTest(name = "{0} from {1} ft with {2}: {3}")
  @CsvSource({
    "FRONT_TOSS, 16, PLASTIC, 0",
    "FRONT_TOSS, 12, PLASTIC, 1", // a quarter nearer
    "FRONT_TOSS, 13, PLASTIC, 0",
    "FRONT_TOSS, 22, PLASTIC, -1",
    "OVERHAND, 40, PLASTIC, 1", // a faster feed; its distance is another matter
    "FLIP, 8, PLASTIC, -1",
    "TEE, 0, PLASTIC, -2",
    "FRONT_TOSS, 16, BASEBALL, 1",
    "OVERHAND, 16, BASEBALL, 2",
    "NONE, 0, NONE, 0"
  })
  void notches(Feed feed, double feet, Ball ball, int expected) {
    Drill drill = drill(Feed.FRONT_TOSS, 16, Ball.PLASTIC);
    Logs logs = hits().last(t -> TossChange.of(t).feed(feed).feet(feet).ball(ball).done());
    Toss toss = logs.record().tosses().get(9);

    assertThat(DIFFICULTY.notches(toss, drill, AgeBand.AGE_9_10)).isEqualTo(expected);
  }

  @Test
  void a_ball_on_a_tee_asks_for_no_choice() {
    Logs tossed = new Logs(BORN).takes(TUESDAY, 2, 10);

    assertThat(beltHighSeen(tossed)).isEqualTo(10);
    assertThat(beltHighSeen(tossed.last(t -> TossChange.of(t).feed(Feed.TEE).done()))).isEqualTo(9);
  }

  private static int beltHighSeen(Logs logs) {
    SkillDecision decision =
        new Progress(CATALOGUE)
            .decide(logs.record(), THURSDAY)
            .get(Logs.PLAYER)
            .get(Skill.CHOOSE.ordinal());
    return decision.evidence().bars().get(0).share().seen();
  }

  @Test
  void what_the_log_does_not_say_is_as_the_drill_has_it() {
    Toss toss = hits().record().tosses().get(0);

    assertThat(DIFFICULTY.notches(toss, drill(Feed.MACHINE, 35, Ball.BASEBALL), AgeBand.AGE_9_10))
        .isZero();
  }

  @Test
  void a_plastic_ball_in_place_of_a_baseball_is_a_notch_easier() {
    Logs logs = hits().last(t -> TossChange.of(t).ball(Ball.FOAM).done());

    assertThat(
            DIFFICULTY.notches(
                logs.record().tosses().get(9),
                drill(Feed.FRONT_TOSS, 16, Ball.BASEBALL),
                AgeBand.AGE_9_10))
        .isEqualTo(-1);
  }

  private static Drill drill(Feed feed, int feet, Ball ball) {
    Drill d = CATALOGUE.curricula().get("belthigh-2027").drill(DRILL);
    return new Drill(
        d.id(),
        d.name(),
        d.skill(),
        d.kind(),
        d.setup(),
        d.cue(),
        d.write(),
        d.swing(),
        d.logged(),
        Map.of(org.belthigh.model.Place.FIELD, ball),
        feed,
        Map.of(AgeBand.AGE_9_10, feet),
        d.decisionMs(),
        d.mix(),
        d.fields(),
        d.startCount(),
        d.reps(),
        d.swings(),
        d.minutes(),
        d.perMinute(),
        d.adults(),
        d.helpers(),
        d.gear(),
        d.safety(),
        d.easier(),
        d.harder(),
        d.adapt());
  }

  /** A hit off a faster feed says more, a miss says less. */
  @Test
  void harder_tosses_shift_mark_and_floor_alike() {
    Evidence.Reading plain = drive(new Logs(BORN).hits(TUESDAY, DRILL, 1, 1));
    Evidence.Reading harder =
        drive(
            new Logs(BORN)
                .hits(TUESDAY, DRILL, 1, 1)
                .last(t -> TossChange.of(t).feed(Feed.OVERHAND).done()));

    assertThat(harder.harder()).isEqualTo(1);
    assertThat(-harder.against()).isGreaterThan(-plain.against());
    assertThat(plain.harder()).isZero();
  }
}
