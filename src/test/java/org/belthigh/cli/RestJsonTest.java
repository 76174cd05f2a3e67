package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.decide.ArmStatus;
import org.belthigh.decide.Reason;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.Test;

class RestJsonTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 8);
  private static final Reason REASON = new Reason("ARM-004", Phrase.of("ARM-004"));

  private static String json(ArmStatus status) {
    return RestJson.of(
            DAY, List.of("little-league-reg-vi", "pitch-smart-2018"), List.of(status), Phrase::key)
        .toString();
  }

  @Test
  void a_resting_pitcher_has_every_fixed_key() {
    ArmStatus.Answer no = new ArmStatus.Answer(false, 0, Optional.of(DAY.plusDays(4)));
    ArmStatus.Answer yes = new ArmStatus.Answer(true, 85, Optional.of(DAY));

    String json =
        json(
            new ArmStatus(
                "p01", no, no, Optional.of(yes), true, Optional.of(DAY), false, List.of(REASON)));

    assertThat(json)
        .isEqualTo(
            "{\"on\":\"2027-03-08\",\"rule_book\":\"little-league-reg-vi, pitch-smart-2018\","
                + "\"players\":[{\"player\":\"p01\",\"may_pitch\":false,\"pitches_left\":0,"
                + "\"eligible_from\":\"2027-03-12\",\"if_nothing_thrown\":null,\"may_catch\":true,"
                + "\"known_to\":\"2027-03-08\",\"because\":[\"ARM-004\"],\"ask_first\":false,"
                + "\"stricter_of_both_ages\":{\"may_pitch\":false,\"pitches_left\":0,"
                + "\"eligible_from\":\"2027-03-12\",\"if_nothing_thrown\":null},\"to_last_batter\":{\"may_pitch\":true,"
                + "\"pitches_left\":85,\"eligible_from\":\"2027-03-08\",\"if_nothing_thrown\":null},"
                + "\"rules\":[\"ARM-004\"]}]}");
  }

  @Test
  void an_open_hold_and_a_missing_report_are_null() {
    ArmStatus.Answer no = new ArmStatus.Answer(false, 0, Optional.empty());

    String json =
        json(
            new ArmStatus(
                "p01", no, no, Optional.empty(), false, Optional.empty(), true, List.of(REASON)));

    assertThat(json)
        .contains(
            "\"eligible_from\":null,\"if_nothing_thrown\":null,\"may_catch\":false,\"known_to\":null")
        .contains("\"ask_first\":true")
        .contains("\"to_last_batter\":null");
  }

  @Test
  void whoever_must_be_asked_may_not_pitch_under_any_key_that_is_read_alone() throws Exception {
    ArmStatus.Answer asked = new ArmStatus.Answer(true, 75, Optional.of(DAY)).untilAsked();

    JsonNode player =
        new ObjectMapper()
            .readTree(
                json(
                    new ArmStatus(
                        "p01",
                        asked,
                        asked,
                        Optional.of(asked),
                        true,
                        Optional.empty(),
                        true,
                        List.of(REASON))))
            .at("/players/0");

    for (String at : List.of("", "/stricter_of_both_ages", "/to_last_batter")) {
      JsonNode answer = player.at(at);
      assertThat(answer.get("may_pitch").booleanValue()).as(at).isFalse();
      assertThat(answer.get("pitches_left").intValue()).as(at).isZero();
      assertThat(answer.get("eligible_from").isNull()).as(at).isTrue();
      assertThat(answer.at("/if_nothing_thrown").toString())
          .as(at)
          .isEqualTo("{\"may_pitch\":true,\"pitches_left\":75,\"eligible_from\":\"2027-03-08\"}");
    }
  }

  @Test
  void a_status_that_asks_first_and_says_yes_cannot_be_made() {
    ArmStatus.Answer yes = new ArmStatus.Answer(true, 75, Optional.of(DAY));

    assertThatThrownBy(
            () ->
                new ArmStatus(
                    "p01",
                    yes,
                    yes,
                    Optional.empty(),
                    true,
                    Optional.empty(),
                    true,
                    List.of(REASON)))
        .hasMessageContaining("p01 may not pitch");
  }
}
