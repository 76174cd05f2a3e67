package org.belthigh.decide;

import org.belthigh.intake.Wellness;
import org.belthigh.model.Phrase;

/**
 * What ends a complaint. Who may say so stands with the kinds themselves, see {@link
 * Wellness.Kind#endedBy}.
 */
final class Clearances {
  private Clearances() {}

  /** Whether {@code row} ends a complaint of {@code kind}. */
  static boolean ends(Wellness row, Wellness.Kind kind) {
    return switch (row.kind()) {
      case SYMPTOM_FREE -> kind == Wellness.Kind.OTHER_PAIN || kind == Wellness.Kind.ILLNESS;
      case CLEARED -> tries(row, kind) && row.by().filter(kind::endedBy).isPresent();
      default -> false;
    };
  }

  /** Whether {@code row} is meant to end a complaint of {@code kind}. */
  static boolean tries(Wellness row, Wellness.Kind kind) {
    return row.kind() == Wellness.Kind.CLEARED && row.clears().filter(k -> k == kind).isPresent();
  }

  /** Names who can end a complaint of {@code kind}, for people. */
  static Phrase whoEnds(Wellness.Kind kind) {
    return Phrase.of("hold.ends." + kind.id());
  }
}
