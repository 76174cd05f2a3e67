package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.april;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Wellness;
import org.belthigh.intake.Wellness.Kind;
import org.belthigh.intake.Wellness.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The auditor's own reading of a child's health: what is open at the end of a day, and who may end
 * it. The rules are the section on clearances of the club folder's page.
 */
class HealthDaysTest {
  @TempDir private Path folder;

  private HealthDays of(String... rows) throws Exception {
    List<String> lines = new ArrayList<>(List.of("date,player,kind,clears,by"));
    for (String row : rows) {
      lines.add("2027-" + row);
    }
    List<Wellness> wellness =
        new SmallClub(folder).with("wellness.csv", lines.toArray(String[]::new)).whole().wellness();
    assertThat(wellness).as("each row could be read").hasSize(rows.length);
    return new HealthDays(wellness);
  }

  private static HealthDays.Open open(Kind kind, LocalDate since) {
    return new HealthDays.Open(kind, since, since);
  }

  @Test
  void a_head_injury_is_ended_by_four_professions_alone() {
    assertThat(HealthDays.mayEnd(Kind.HEAD_INJURY))
        .containsExactlyInAnyOrder(
            Role.PHYSICIAN,
            Role.PHYSICIAN_ASSISTANT,
            Role.NURSE_PRACTITIONER,
            Role.ATHLETIC_TRAINER);
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"ARM_PAIN", "BACK_PAIN"})
  void a_sore_arm_or_back_by_a_physical_therapist_too(Kind kind) {
    assertThat(HealthDays.mayEnd(kind))
        .containsExactlyInAnyOrder(
            Role.PHYSICIAN,
            Role.PHYSICIAN_ASSISTANT,
            Role.NURSE_PRACTITIONER,
            Role.ATHLETIC_TRAINER,
            Role.PHYSICAL_THERAPIST);
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"OTHER_PAIN", "ILLNESS"})
  void other_pain_and_illness_by_anybody(Kind kind) {
    assertThat(HealthDays.mayEnd(kind)).containsExactlyInAnyOrder(Role.values());
  }

  @Test
  void what_was_reported_is_open_from_its_day_on_and_not_before() throws Exception {
    HealthDays health = of("04-03,a1,head-injury,,");

    assertThat(health.openAt(april(2))).isEmpty();
    assertThat(health.openAt(april(3))).containsExactly(open(Kind.HEAD_INJURY, april(3)));
    assertThat(health.openAt(april(30))).containsExactly(open(Kind.HEAD_INJURY, april(3)));
  }

  @Test
  void reported_again_it_is_open_since_the_first_day_that_nobody_ended() throws Exception {
    assertThat(of("04-03,a1,arm-pain,,", "04-01,a1,arm-pain,,").openAt(FROM))
        .containsExactly(new HealthDays.Open(Kind.ARM_PAIN, april(1), april(3)));
    assertThat(
            of(
                    "04-01,a1,arm-pain,,",
                    "04-02,a1,cleared,arm-pain,physician",
                    "04-03,a1,arm-pain,,",
                    "04-04,a1,arm-pain,,")
                .openAt(FROM))
        .containsExactly(new HealthDays.Open(Kind.ARM_PAIN, april(3), april(4)));
  }

  @Test
  void a_clearance_ends_the_one_kind_that_it_names() throws Exception {
    assertThat(
            of(
                    "04-01,a1,arm-pain,,",
                    "04-01,a1,back-pain,,",
                    "04-02,a1,cleared,arm-pain,physical-therapist")
                .openAt(FROM))
        .containsExactly(open(Kind.BACK_PAIN, april(1)));
  }

  @Test
  void free_of_symptoms_ends_illness_and_other_pain_and_nothing_grave() throws Exception {
    assertThat(
            of(
                    "04-01,a1,arm-pain,,",
                    "04-01,a1,back-pain,,",
                    "04-01,a1,head-injury,,",
                    "04-01,a1,illness,,",
                    "04-01,a1,other-pain,,",
                    "04-03,a1,symptom-free,,")
                .openAt(FROM))
        .extracting(HealthDays.Open::kind)
        .containsExactlyInAnyOrder(Kind.ARM_PAIN, Kind.BACK_PAIN, Kind.HEAD_INJURY);
  }

  @Test
  void what_begins_after_a_day_is_told_with_its_first_day() throws Exception {
    HealthDays health =
        of(
            "04-05,a1,illness,,",
            "04-06,a1,arm-pain,,",
            "04-08,a1,arm-pain,,",
            "04-09,a1,cleared,arm-pain,physician",
            "04-10,a1,head-injury,,");

    assertThat(health.begunAfter(FROM, april(9)))
        .as("the day itself is not after it; a clearance is no complaint, and ends none here")
        .containsExactly(open(Kind.ARM_PAIN, april(6)));
    assertThat(health.begunAfter(FROM, april(10)))
        .as("the last day counts")
        .containsExactlyInAnyOrder(
            open(Kind.ARM_PAIN, april(6)), open(Kind.HEAD_INJURY, april(10)));
  }

  @Test
  void nothing_begins_between_a_day_and_one_before_it() throws Exception {
    HealthDays health = of("04-03,a1,arm-pain,,");

    assertThat(health.begunAfter(FROM, april(1))).isEmpty();
    assertThat(health.begunAfter(FROM, FROM)).isEmpty();
  }

  @Test
  void clearances_of_head_arm_and_back_are_told_up_to_a_day() throws Exception {
    HealthDays health =
        of(
            "04-01,a1,cleared,head-injury,physician",
            "04-02,a1,cleared,arm-pain,parent",
            "04-03,a1,cleared,illness,physician",
            "04-03,a1,symptom-free,,",
            "04-05,a1,cleared,back-pain,physical-therapist",
            "04-06,a1,cleared,arm-pain,physician");

    assertThat(health.clearedUpTo(FROM))
        .containsExactly(
            new HealthDays.Ended(Kind.HEAD_INJURY, april(1)),
            new HealthDays.Ended(Kind.BACK_PAIN, april(5)));
  }

  @Test
  void each_date_of_a_complaint_is_known_once() throws Exception {
    HealthDays health =
        of(
            "04-03,a1,other-pain,,",
            "04-01,a1,other-pain,,",
            "04-01,a1,other-pain,,",
            "04-02,a1,illness,,",
            "04-04,a1,cleared,other-pain,parent");

    assertThat(health.complaints(Kind.OTHER_PAIN)).containsExactly(april(1), april(3));
    assertThat(health.complaints(Kind.HEAD_INJURY)).isEmpty();
  }

  private static HealthDays.Idle idle(String rule, int day) {
    return new HealthDays.Idle(rule, april(day), Optional.empty());
  }

  @Test
  void words_that_do_not_end_what_is_open_are_told_with_their_day_and_whose_they_are()
      throws Exception {
    HealthDays health =
        of(
            "03-30,a1,cleared,arm-pain,coach",
            "04-01,a1,arm-pain,,",
            "04-02,a1,cleared,arm-pain,parent",
            "04-03,a1,symptom-free,,",
            "04-04,a1,cleared,back-pain,physician",
            "04-04,a1,cleared,illness,parent",
            "04-06,a1,cleared,arm-pain,coach");

    assertThat(health.idleAt(april(5), open(Kind.ARM_PAIN, april(1))))
        .as("not those of before it, of other kinds, or of later")
        .containsExactly(
            new HealthDays.Idle("HLD-008", april(2), Optional.of(Role.PARENT)), idle("HLD-012", 3));
  }

  @Test
  void a_clearance_of_the_day_of_a_complaint_is_told_as_such_whichever_kind_it_ends()
      throws Exception {
    HealthDays health =
        of(
            "04-02,a1,cleared,arm-pain,physician",
            "04-02,a1,arm-pain,,",
            "04-03,a1,cleared,back-pain,physician",
            "04-03,a1,cleared,head-injury,parent",
            "04-03,a1,arm-pain,,");

    assertThat(health.idleAt(april(5), open(Kind.ARM_PAIN, april(2))))
        .containsExactly(idle("HLD-013", 2), idle("HLD-013", 3));
    assertThat(
            of("04-02,a1,illness,,", "04-02,a1,symptom-free,,")
                .idleAt(FROM, open(Kind.ILLNESS, april(2))))
        .containsExactly(idle("HLD-013", 2));
    assertThat(
            of("04-02,a1,illness,,", "04-03,a1,cleared,arm-pain,physician")
                .idleAt(FROM, open(Kind.ILLNESS, april(2))))
        .as("another kind, another day")
        .isEmpty();
  }

  @Test
  void days_with_less_run_from_the_latest_clearance_on() throws Exception {
    HealthDays health =
        of("04-01,a1,cleared,arm-pain,physician", "04-03,a1,cleared,head-injury,physician");

    assertThat(health.backUntil(april(2), 7)).contains(april(7));
    assertThat(health.backUntil(april(9), 7)).contains(april(9));
    assertThat(health.backUntil(april(10), 7)).isEmpty();
    assertThat(of("04-01,a1,cleared,illness,physician").backUntil(april(2), 7)).isEmpty();
  }
}
