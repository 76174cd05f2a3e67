package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.belthigh.catalogue.WhoEnds;
import org.belthigh.intake.Wellness.Kind;
import org.belthigh.intake.Wellness.Role;
import org.belthigh.model.Coded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WellnessTest {
  /** The clearance rule: a head injury by four roles, arm and back by those or a therapist. */
  @ParameterizedTest
  @CsvSource({
    "HEAD_INJURY, 4",
    "ARM_PAIN, 5",
    "BACK_PAIN, 5",
    "OTHER_PAIN, 7",
    "ILLNESS, 7",
    "CLEARED, 0",
    "SYMPTOM_FREE, 0"
  })
  void a_complaint_is_ended_by_the_first_so_many_roles(Kind kind, int roles) {
    assertThat(
            Arrays.stream(Role.values())
                .filter(role -> TestCatalogue.WHO_ENDS.ends(kind.id(), role.id())))
        .containsExactly(Arrays.copyOf(Role.values(), roles));
  }

  @Test
  void the_table_names_complaints_and_roles_alone() {
    TestCatalogue.WHO_ENDS
        .rows()
        .forEach(
            (complaint, row) -> {
              assertThat(Coded.find(Kind.class, complaint).filter(Kind::holds)).isPresent();
              assertThat(row.by())
                  .allMatch(
                      by ->
                          by.equals(WhoEnds.SYMPTOM_FREE)
                              || Coded.find(Role.class, by).isPresent());
            });
    assertThat(TestCatalogue.WHO_ENDS.rows().keySet())
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Kind.values()).filter(Kind::holds).map(Kind::id).toList());
  }
}
