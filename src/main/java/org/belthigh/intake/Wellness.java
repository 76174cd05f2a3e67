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
    SYMPTOM_FREE;

    /** Whether this is a complaint that holds, and not a word that ends one. */
    public boolean holds() {
      return this != CLEARED && this != SYMPTOM_FREE;
    }

    /**
     * Whether the word of {@code role} ends this complaint.
     *
     * <p>A head injury: physician, physician assistant, nurse practitioner or athletic trainer. Arm
     * or back pain: those or a physical therapist. Other pain and illness: anybody.
     */
    public boolean endedBy(Role role) {
      return switch (this) {
        case HEAD_INJURY -> role.ordinal() <= Role.ATHLETIC_TRAINER.ordinal();
        case ARM_PAIN, BACK_PAIN -> role.ordinal() <= Role.PHYSICAL_THERAPIST.ordinal();
        case OTHER_PAIN, ILLNESS -> true;
        case CLEARED, SYMPTOM_FREE -> false;
      };
    }
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
