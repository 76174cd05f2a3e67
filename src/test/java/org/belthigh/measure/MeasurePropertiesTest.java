package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.TestClub;
import org.belthigh.model.Field;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for any log, tried on seeded random ones. */
class MeasurePropertiesTest {
  private static final String HEADER =
      "date,player,drill,round,toss,bats,zone,near,called,field,swing,hit,went,timing";
  private static final List<String> DRILLS =
      List.of("zone-call", "countdown", "short-countdown", "field-call", "tee-work");

  @TempDir private Path temp;

  private List<PlayerMeasures> measures(String club, List<String> rows) {
    List<String> lines = new ArrayList<>(rows);
    lines.add(0, HEADER);
    ClubRecord record = TestClub.in(temp.resolve(club)).with("logs/a.csv", lines).read();
    assertThat(record.tosses()).hasSize(rows.size());
    return Measures.of(record);
  }

  /** Rows of two days, each with its round and its place in it. */
  private static List<String> rows(Random random, String... near) {
    List<String> rows = new ArrayList<>();
    for (String player : List.of("p01", "p02", "p03")) {
      for (String drill : DRILLS) {
        for (int round = 1; round <= 2; round++) {
          for (int toss = 1; toss <= 1 + random.nextInt(12); toss++) {
            rows.add(row(random, 8 + round, player, drill, round, toss, near));
          }
        }
      }
    }
    return rows;
  }

  private static String row(
      Random random, int day, String player, String drill, int round, int toss, String... near) {
    boolean swing = random.nextInt(3) > 0;
    return String.join(
        ",",
        String.format("2027-03-%02d", day),
        player,
        drill,
        String.valueOf(round),
        String.valueOf(toss),
        player.equals("p03") ? any(random, "L", "R") : "",
        any(random, spots()),
        any(random, near),
        random.nextBoolean() ? any(random, spots()) : any(random, "", "strike", "low", "away"),
        drill.equals("field-call") ? any(random, fields()) : "",
        swing ? "yes" : "no",
        swing ? any(random, "hard", "soft", "miss", "foul") : "",
        swing ? any(random, fields()) : "",
        swing ? any(random, "", "early", "on", "late") : "");
  }

  private static String[] spots() {
    return Arrays.stream(Spot.values()).map(Spot::id).toArray(String[]::new);
  }

  private static String[] fields() {
    return Arrays.stream(Field.values()).map(Field::id).toArray(String[]::new);
  }

  private static String any(Random random, String... words) {
    return words[random.nextInt(words.length)];
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15})
  void the_order_of_the_rows_does_not_matter(long seed) {
    Random random = new Random(seed);
    List<String> rows = rows(random, "", "yes", "no");
    List<String> mixed = new ArrayList<>(rows);
    Collections.shuffle(mixed, random);

    assertThat(measures("mixed", mixed)).isEqualTo(measures("plain", rows));
  }

  @Test
  void but_within_a_countdown_and_a_call_it_does() {
    List<String> there =
        List.of(
            "2027-03-08,p01,field-call,1,1,,5,,,left,yes,soft,center,",
            "2027-03-08,p01,field-call,1,2,,5,,,left,yes,hard,left,");
    List<String> back =
        List.of(
            "2027-03-08,p01,field-call,1,2,,5,,,left,yes,soft,center,",
            "2027-03-08,p01,field-call,1,1,,5,,,left,yes,hard,left,");

    assertThat(measures("there", there).get(0).fieldCalls().firstTry()).isEqualTo(new Share(0, 1));
    assertThat(measures("back", back).get(0).fieldCalls().firstTry()).isEqualTo(new Share(1, 2));
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25})
  void tallies_and_the_same_tosses_agree_in_the_counts(long seed) {
    List<String> rows = rows(new Random(seed), ""); // a tally cannot leave a toss out
    PlayerMeasures tossed = measures("tossed", rows).get(0);

    List<String> tallies = new ArrayList<>();
    tallies.add("date,player,drill,measure,made,of");
    tally(tallies, "zone-recognition", tossed.zoneRecognition().calls());
    tally(tallies, "middle-take", tossed.middleTake());
    tally(tallies, "ball-swing", tossed.ballSwing());
    tally(tallies, "field-call", tossed.fieldCalls().swings());
    for (Countdown.Round round : tossed.countdown().rounds()) {
      round
          .score()
          .ifPresent(
              score ->
                  tallies.add(
                      String.format(
                          "2027-03-%02d,p01,%s,countdown,%d,%d",
                          round.date().getDayOfMonth(),
                          score > 7 ? "countdown" : "short-countdown",
                          score,
                          score > 7 ? 12 : 7)));
    }
    PlayerMeasures tallied =
        Measures.of(TestClub.in(temp.resolve("tallied")).with("logs/t.csv", tallies).read()).get(0);

    assertThat(tallied.zoneRecognition().calls()).isEqualTo(tossed.zoneRecognition().calls());
    assertThat(tallied.middleTake()).isEqualTo(tossed.middleTake());
    assertThat(tallied.ballSwing()).isEqualTo(tossed.ballSwing());
    assertThat(tallied.fieldCalls().swings()).isEqualTo(tossed.fieldCalls().swings());
    assertThat(tallied.skills().choose().swing()).isEqualTo(tossed.skills().choose().swing());
    assertThat(tallied.countdown().mean()).isEqualTo(tossed.countdown().mean());
    assertThat(tallied.skills().drive().finished()).isEqualTo(tossed.skills().drive().finished());
  }

  private static void tally(List<String> tallies, String measure, Share share) {
    if (!share.isEmpty()) {
      tallies.add("2027-03-08,p01,zone-call," + measure + "," + share.made() + "," + share.seen());
    }
  }

  @Test
  void an_empty_log_gives_empty_measures_everywhere() {
    for (PlayerMeasures one : measures("empty", List.of())) {
      for (Grain grain : Grain.values()) {
        See.Reading reading = one.skills().see().at(grain);
        for (Calls calls : List.of(reading.all(), reading.onTakes(), reading.onSwings())) {
          assertThat(calls.exact()).isEqualTo(Share.none());
          assertThat(calls.withinOne()).isEqualTo(Share.none());
          assertThat(calls.kappa()).isEmpty();
          assertThat(calls.weightedKappa()).isEmpty();
          assertThat(calls.recall()).isEmpty();
          assertThat(calls.mix().commonest()).isEmpty();
        }
      }
      assertThat(one.skills().choose()).isEqualTo(new Choose(Detection.none(), 0, 0, 0, Map.of()));
      assertThat(one.skills().drive().hits().isEmpty()).isTrue();
      assertThat(one.skills().drive().mean()).isEmpty();
      assertThat(one.skills().drive().timing().seen()).isZero();
      assertThat(one.skills().send().all()).isEqualTo(new FieldCalls(Share.none(), Share.none()));
      assertThat(one.skills().send().chance()).isEmpty();
      assertThat(one.bySide()).isEmpty();
      assertThat(one.inAgeBand()).isEqualTo(Map.of());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35})
  void one_more_good_swing_never_lowers_a_skill(long seed) {
    Random random = new Random(seed);
    int seen = random.nextInt(20);
    Share before = new Share(random.nextInt(seen + 1), seen);
    List<HardHits.Score> scores =
        IntStream.range(0, random.nextInt(4))
            .mapToObj(i -> new HardHits.Score(12, 6 + random.nextInt(7)))
            .toList();

    HardHits.Likely old = new HardHits(before, scores).likely();
    HardHits.Likely now = new HardHits(before.and(true), scores).likely();

    assertThat(now.mean()).isGreaterThan(old.mean());
    assertThat(now.low()).isGreaterThan(old.low());
    Share others = new Share(random.nextInt(6), 5);
    assertThat(new Detection(before.and(true), others).dPrime().orElseThrow())
        .isGreaterThanOrEqualTo(
            new Detection(seen == 0 ? Share.none().and(true) : before, others)
                .dPrime()
                .orElseThrow());
  }
}
