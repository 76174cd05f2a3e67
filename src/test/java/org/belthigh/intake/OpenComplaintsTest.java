package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Wellness.Kind;
import org.belthigh.intake.Wellness.Role;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Complaints that somebody meant to be over and that are not, each asked about once: an end of the
 * complaint's own day, and freedom from symptoms where a clearance is asked for.
 */
class OpenComplaintsTest {
  private static int line = 1;

  private static Wellness row(int day, String player, Kind kind) {
    return row(day, player, kind, null, null);
  }

  private static Wellness row(int day, String player, Kind kind, Kind clears, Role by) {
    return new Wellness(
        LocalDate.of(2027, 4, day),
        player,
        kind,
        Optional.ofNullable(clears),
        Optional.ofNullable(by),
        "",
        Origin.of("wellness.csv", ++line));
  }

  private static Wellness cleared(int day, Kind what, Role by) {
    return row(day, "p01", Kind.CLEARED, what, by);
  }

  private static List<String> said(Wellness... rows) {
    return OpenComplaints.remarks(Arrays.asList(rows), TestCatalogue.WHO_ENDS).stream()
        .map(Problem::text)
        .toList();
  }

  @Test
  void an_end_of_the_same_day_is_asked_about_whatever_the_order() {
    Wellness hurt = row(6, "p01", Kind.HEAD_INJURY);
    Wellness ended = cleared(6, Kind.HEAD_INJURY, Role.PHYSICIAN);

    for (List<String> said : List.of(said(hurt, ended), said(ended, hurt))) {
      assertThat(said)
          .singleElement()
          .asString()
          .contains("head-injury is of the same day as cleared in line " + ended.origin().line())
          .contains("so the hold stays");
    }
  }

  @Test
  void freedom_from_symptoms_does_not_end_a_head_injury() {
    assertThat(said(row(3, "p01", Kind.HEAD_INJURY), row(6, "p01", Kind.SYMPTOM_FREE)))
        .singleElement()
        .asString()
        .contains("symptom-free does not end the head-injury of 2027-04-03");
  }

  @Test
  void what_is_over_or_was_never_meant_to_be_is_not_spoken_of() {
    assertThat(said(row(3, "p01", Kind.ILLNESS), row(6, "p01", Kind.SYMPTOM_FREE))).isEmpty();
    assertThat(said(row(3, "p01", Kind.HEAD_INJURY))).isEmpty();
    assertThat(said(row(3, "p01", Kind.HEAD_INJURY), row(6, "p02", Kind.SYMPTOM_FREE)))
        .as("another child's")
        .isEmpty();
    assertThat(said(row(3, "p01", Kind.HEAD_INJURY), row(2, "p01", Kind.SYMPTOM_FREE)))
        .as("before it")
        .isEmpty();
    assertThat(
            said(
                row(3, "p01", Kind.HEAD_INJURY),
                cleared(3, Kind.HEAD_INJURY, Role.PHYSICIAN),
                row(5, "p01", Kind.SYMPTOM_FREE),
                cleared(6, Kind.HEAD_INJURY, Role.PHYSICIAN)))
        .as("ended on a later day")
        .isEmpty();
    assertThat(said(row(3, "p01", Kind.HEAD_INJURY), cleared(3, Kind.HEAD_INJURY, Role.COACH)))
        .as("a word that ends nothing")
        .isEmpty();
  }

  @Test
  void a_complaint_is_asked_about_once() {
    assertThat(
            said(
                row(3, "p01", Kind.ARM_PAIN),
                cleared(3, Kind.ARM_PAIN, Role.PHYSICIAN),
                row(4, "p01", Kind.SYMPTOM_FREE),
                row(5, "p01", Kind.SYMPTOM_FREE)))
        .singleElement()
        .asString()
        .contains("of the same day");
  }

  @ParameterizedTest
  @CsvSource({
    "HEAD_INJURY, CLEARED, HEAD_INJURY, PHYSICIAN, true",
    "HEAD_INJURY, CLEARED, HEAD_INJURY, PHYSICAL_THERAPIST, false",
    "HEAD_INJURY, CLEARED, ARM_PAIN, PHYSICIAN, false",
    "HEAD_INJURY, SYMPTOM_FREE, , , false",
    "HEAD_INJURY, HEAD_INJURY, , , false",
    "ARM_PAIN, CLEARED, ARM_PAIN, PHYSICAL_THERAPIST, true",
    "ARM_PAIN, CLEARED, ARM_PAIN, PARENT, false",
    "ARM_PAIN, CLEARED, , PHYSICIAN, false",
    "ARM_PAIN, CLEARED, ARM_PAIN, , false",
    "ILLNESS, SYMPTOM_FREE, , , true",
    "OTHER_PAIN, SYMPTOM_FREE, , , true",
    "BACK_PAIN, SYMPTOM_FREE, , , false",
    "OTHER_PAIN, CLEARED, OTHER_PAIN, COACH, true"
  })
  void which_row_ends_which_complaint(
      Kind complaint, Kind kind, Kind clears, Role by, boolean ends) {
    Wellness row = row(6, "p01", kind, clears, by);

    assertThat(row.ends(complaint, TestCatalogue.WHO_ENDS)).isEqualTo(ends);
    assertThat(row.meantFor(complaint)).isEqualTo(kind == Kind.CLEARED && clears == complaint);
    if (ends) {
      assertThat(row.endsAny(TestCatalogue.WHO_ENDS)).isTrue();
    }
    assertThat(row(6, "p01", Kind.ILLNESS).endsAny(TestCatalogue.WHO_ENDS)).isFalse();
    assertThat(cleared(6, Kind.ARM_PAIN, Role.COACH).endsAny(TestCatalogue.WHO_ENDS)).isFalse();
  }
}
