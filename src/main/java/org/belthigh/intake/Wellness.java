package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
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
  /** Whether this row ends a complaint of {@code complaint} that is dated before it. */
  public boolean ends(Kind complaint) {
    return switch (kind) {
      case SYMPTOM_FREE -> complaint == Kind.OTHER_PAIN || complaint == Kind.ILLNESS;
      case CLEARED -> meantFor(complaint) && by.filter(complaint::endedBy).isPresent();
      default -> false;
    };
  }

  /** Whether this row ends a complaint of any kind. */
  public boolean endsAny() {
    return Arrays.stream(Kind.values()).anyMatch(this::ends);
  }

  /** Whether this is a clearance that names {@code complaint}, by whomever. */
  public boolean meantFor(Kind complaint) {
    return kind == Kind.CLEARED && clears.filter(k -> k == complaint).isPresent();
  }

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
        case HEAD_INJURY -> Role.HEADS.contains(role);
        case ARM_PAIN, BACK_PAIN -> Role.HEADS.contains(role) || role == Role.PHYSICAL_THERAPIST;
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
    COACH;

    /** Who may end a head injury. Named one by one, so that no new role slips in between. */
    private static final Set<Role> HEADS =
        Collections.unmodifiableSet(
            EnumSet.of(PHYSICIAN, PHYSICIAN_ASSISTANT, NURSE_PRACTITIONER, ATHLETIC_TRAINER));
  }
}
