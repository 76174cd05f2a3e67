package org.belthigh.intake;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.belthigh.catalogue.WhoEnds;
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
  public boolean ends(Kind complaint, WhoEnds whoEnds) {
    return switch (kind) {
      case SYMPTOM_FREE -> whoEnds.ends(complaint.id(), kind.id());
      case CLEARED ->
          meantFor(complaint) && by.filter(r -> whoEnds.ends(complaint.id(), r.id())).isPresent();
      default -> false;
    };
  }

  /** Whether this row ends a complaint of any kind. */
  boolean endsAny(WhoEnds whoEnds) {
    return Arrays.stream(Kind.values()).anyMatch(complaint -> ends(complaint, whoEnds));
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
