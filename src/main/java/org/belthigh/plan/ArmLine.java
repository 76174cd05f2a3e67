package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.model.Coded;

/**
 * What one player's arm may do on one day, by the stricter of calendar age and league age.
 *
 * @param pitchesLeft the most for that day, 0 unless the answer is may
 * @param knownTo last day of which any outing was reported; empty for never
 */
public record ArmLine(
    LocalDate date, Answer answer, int pitchesLeft, boolean mayCatch, Optional<LocalDate> knownTo) {
  public ArmLine {
    if (answer == Answer.MAY_PITCH ? pitchesLeft < 1 : pitchesLeft != 0) {
      throw new IllegalArgumentException(answer + " does not go with " + pitchesLeft + " pitches");
    }
    if (answer == Answer.NO_THROWING && mayCatch) {
      throw new IllegalArgumentException("Who may not throw may not catch");
    }
  }

  /** From what is allowed to what is not. */
  public enum Answer implements Coded {
    MAY_PITCH,
    /** Too long nothing was heard: no pitch until somebody was asked. */
    ASK_FIRST,
    NO_PITCHING,
    /** A stop of throwing or of everything. */
    NO_THROWING
  }
}
