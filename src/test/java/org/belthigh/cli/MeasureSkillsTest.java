package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.belthigh.intake.TestClub;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code measure} tells of the four skills, in words and as JSON, from one small log. */
class MeasureSkillsTest {
  private static final Clock DAY =
      Clock.fixed(Instant.parse("2027-03-10T12:00:00Z"), ZoneOffset.UTC);

  private Path folder;

  @BeforeEach
  void club(@TempDir Path temp) {
    folder =
        TestClub.in(temp)
            .with(
                "logs/calls.csv",
                "date,player,drill,zone,near,called,swing,hit",
                "2027-03-08,p01,zone-call,5,,5,no,",
                "2027-03-08,p01,zone-call,5,,2,no,",
                "2027-03-08,p01,zone-call,ball,,none,no,",
                "2027-03-08,p01,zone-call,5,,5,yes,soft",
                "2027-03-08,p01,zone-call,ball,yes,5,yes,miss")
            .with(
                "logs/fields.csv",
                "date,player,drill,zone,field,swing,hit,went",
                "2027-03-08,p01,field-call,2,left,yes,hard,left",
                "2027-03-08,p01,field-call,9,right,yes,soft,center",
                "2027-03-08,p01,field-call,5,right,yes,soft,right")
            .with(
                "logs/tally.csv",
                "date,player,drill,measure,made,of",
                "2027-03-08,p01,countdown,countdown,8,12")
            .with(
                "logs/sides.csv",
                "date,player,drill,bats,zone,swing,hit",
                "2027-03-08,p03,zone-call,L,5,yes,hard",
                "2027-03-08,p03,zone-call,R,5,no,")
            .folder();
  }

  private String measure(String... more) {
    StringWriter out = new StringWriter();
    String[] args = new String[more.length + 2];
    args[0] = "measure";
    args[1] = folder.toString();
    System.arraycopy(more, 0, args, 2, more.length);
    int status =
        Belthigh.commandLine(DAY, new PrintWriter(out), new PrintWriter(new StringWriter()))
            .execute(args);
    assertThat(status).isZero();
    return out.toString();
  }

  private JsonNode player(String id) throws IOException {
    return new ObjectMapper().readTree(measure("--player", id, "--json")).get("players").get(0);
  }

  @Test
  void the_words_set_each_share_beside_what_a_blind_answer_scores() {
    assertThat(measure("--player", "p01").lines().map(String::stripTrailing))
        .containsExactly(
            "p01 Ana",
            "  calls right                  3 of 5 = 60 % (95 %: 23 to 88 %)",
            "  belt-high tosses let go      2 of 4 = 50 % (95 %: 15 to 85 %)",
            "  balls swung at               1 of 2 = 50 % (95 %: 9 to 91 %)",
            "  countdown, mean swings       8.0",
            "  sent where called            2 of 3 = 67 % (95 %: 21 to 94 %)",
            "  see: strike or ball          4 of 5 = 80 % (95 %: 38 to 96 %);"
                + " always \"strike\": 60 %; kappa 0.55 (0 is blind)",
            "    ball from strike           d-prime 1.15 (0 is chance)",
            "    without a swing            3 of 3 = 100 % (95 %: 44 to 100 %);"
                + " always \"strike\": 67 %",
            "    after a swing              1 of 2 = 50 % (95 %: 9 to 91 %);"
                + " always \"strike\": 50 %",
            "  see: one of nine spots       3 of 5 = 60 % (95 %: 23 to 88 %);"
                + " always \"belt-middle\": 60 %; kappa 0.29 (0 is blind)",
            "    one off                    1 of 3 = 33 % (95 %: 6 to 79 %),"
                + " of tosses over the nine",
            "    ball from strike           d-prime 1.15 (0 is chance)",
            "    without a swing            2 of 3 = 67 % (95 %: 21 to 94 %);"
                + " always \"belt-middle\": 67 %",
            "    after a swing              1 of 2 = 50 % (95 %: 9 to 91 %);"
                + " always \"belt-middle\": 50 %",
            "  choose: swings, belt-high    2 of 4 = 50 % (95 %: 15 to 85 %)",
            "    swings, balls              0 of 1 = 0 % (95 %: 0 to 79 %)",
            "    belt-high from ball        d-prime 0.67 (0 is chance)",
            "    left out                   0 not wanted by the called field,"
                + " 1 near the edge, 0 only watched",
            "  drive: hit hard, likely      46 % (90 %: 21 to 73 %), from 8 swings;"
                + " rounds: 1 finished, 0 not",
            "  send: swings                 2 of 3 = 67 % (95 %: 21 to 94 %);"
                + " chance, 2 fields: 50 %",
            "    first try                  1 of 2 = 50 % (95 %: 9 to 91 %);"
                + " chance, 2 fields: 50 %",
            "    to the pull side           1 of 1 = 100 % (95 %: 21 to 100 %)",
            "    to the opposite field      1 of 2 = 50 % (95 %: 9 to 91 %)",
            "    at a spot that suits       1 of 3 = 33 % (95 %: 6 to 79 %)");
  }

  @Test
  void both_sides_of_a_switch_hitter_are_told() throws IOException {
    assertThat(measure("--player", "p03"))
        .containsSubsequence(
            "choose: swings, belt-high    1 of 2",
            "batting left",
            "choose: swings, belt-high    1 of 1",
            "batting right",
            "choose: swings, belt-high    0 of 1");
    assertThat(player("p03").at("/by_side/L/choose/belt_high/swung").asInt()).isEqualTo(1);
    assertThat(player("p03").at("/by_side/R/choose/belt_high/swung").asInt()).isZero();
    assertThat(player("p01").has("by_side")).isFalse();
  }

  @Test
  void the_json_has_every_skill_under_keys_of_its_own() throws IOException {
    JsonNode ana = player("p01");
    JsonNode nine = ana.at("/skills/see/nine");

    assertThat(nine.get("right").asInt()).isEqualTo(3);
    assertThat(nine.at("/blind/commonest").asText()).isEqualTo("belt-middle");
    assertThat(nine.at("/blind/always_commonest").asDouble()).isEqualTo(0.6);
    assertThat(nine.at("/blind/in_proportion").asDouble()).isEqualTo(0.52);
    assertThat(nine.at("/one_off/one_off").asInt()).isEqualTo(1);
    assertThat(nine.at("/within_one/within_one").asInt()).isEqualTo(3);
    assertThat(nine.at("/within_one/blind_at_best").asDouble()).isEqualTo(1.0);
    assertThat(nine.at("/ball_or_strike/balls/called_ball").asInt()).isEqualTo(1);
    assertThat(nine.at("/recall/ball/seen").asInt()).isEqualTo(2);
    assertThat(nine.at("/on_takes/right").asInt()).isEqualTo(2);
    assertThat(ana.at("/skills/choose/near_edge").asInt()).isEqualTo(1);
    assertThat(ana.at("/skills/drive/hard_hit/mean").asDouble()).isCloseTo(6 / 13.0, within(5e-7));
    assertThat(ana.at("/skills/drive/hard_hit/most_likely").asDouble())
        .isCloseTo(0.45293, within(5e-6));
    assertThat(ana.at("/skills/send/by_field/left/spot_suits/suits").asInt()).isZero();
    assertThat(ana.at("/skills/send/by_field/left/spots/low-middle").asInt()).isEqualTo(1);
    assertThat(ana.at("/skills/send/chance").asDouble()).isEqualTo(0.5);
    assertThat(ana.at("/in_age_band/middle_take/players").asInt()).isEqualTo(2);
  }

  @Test
  void nothing_seen_is_null_in_every_skill() throws IOException {
    JsonNode ben = player("p02");

    assertThat(ben.at("/skills/see/nine").isNull()).isTrue();
    assertThat(ben.at("/skills/choose/d_prime").isNull()).isTrue();
    assertThat(ben.at("/skills/drive/hard_hit/mean").isNull()).isTrue();
    assertThat(ben.at("/skills/send/chance").isNull()).isTrue();
    assertThat(ben.at("/in_age_band/hard_hit").isNull()).isTrue();
    assertThat(measure("--player", "p02").lines()).hasSize(6);
  }
}
