package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;

/**
 * One row of {@code wellness.csv}.
 *
 * @param clears for {@code cleared}: which kind it ends
 * @param by for {@code cleared}: who said so
 */
public record Wellness(
    LocalDate date,
    String player,
    Kind kind,
    Optional<Kind> clears,
    Optional<Role> by,
    String note,
    Origin origin) {
  /** What was reported. */
  public enum Kind implements Coded {
    ARM_PAIN,
    BACK_PAIN,
    OTHER_PAIN,
    HEAD_INJURY,
    ILLNESS,
    CLEARED,
    SYMPTOM_FREE
  }

  /** Who cleared. */
  public enum Role implements Coded {
    PHYSICIAN,
    PHYSICIAN_ASSISTANT,
    NURSE_PRACTITIONER,
    ATHLETIC_TRAINER,
    PHYSICAL_THERAPIST,
    PARENT,
    COACH
  }
}
