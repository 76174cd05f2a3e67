package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
                + "\"eligible_from\":\"2027-03-12\",\"may_catch\":true,"
                + "\"known_to\":\"2027-03-08\",\"because\":[\"ARM-004\"],\"ask_first\":false,"
                + "\"stricter_of_both_ages\":{\"may_pitch\":false,\"pitches_left\":0,"
                + "\"eligible_from\":\"2027-03-12\"},\"to_last_batter\":{\"may_pitch\":true,"
                + "\"pitches_left\":85,\"eligible_from\":\"2027-03-08\"},"
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
        .contains("\"eligible_from\":null,\"may_catch\":false,\"known_to\":null")
        .contains("\"ask_first\":true")
        .contains("\"to_last_batter\":null");
  }
}
