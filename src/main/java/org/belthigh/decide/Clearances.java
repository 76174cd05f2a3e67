package org.belthigh.decide;

import java.util.EnumSet;
import java.util.Set;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Phrase;

/**
 * Who can end what. After a head injury, or with a sore arm or back, that is a licensed clinician's
 * word; for the rest a parent's or a coach's word is enough. Sources: {@code s40}, {@code s18},
 * {@code s20}; the list of roles is common practice.
 */
final class Clearances {
  private static final Set<Wellness.Role> CLINICIANS =
      EnumSet.of(
          Wellness.Role.PHYSICIAN,
          Wellness.Role.PHYSICIAN_ASSISTANT,
          Wellness.Role.NURSE_PRACTITIONER,
          Wellness.Role.ATHLETIC_TRAINER);

  private static final Set<Wellness.Role> CLINICIANS_AND_THERAPISTS =
      EnumSet.of(
          Wellness.Role.PHYSICIAN,
          Wellness.Role.PHYSICIAN_ASSISTANT,
          Wellness.Role.NURSE_PRACTITIONER,
          Wellness.Role.ATHLETIC_TRAINER,
          Wellness.Role.PHYSICAL_THERAPIST);

  private Clearances() {}

  /** Whether {@code row} ends a complaint of {@code kind}. */
  static boolean ends(Wellness row, Wellness.Kind kind) {
    return switch (row.kind()) {
      case SYMPTOM_FREE -> kind == Wellness.Kind.OTHER_PAIN || kind == Wellness.Kind.ILLNESS;
      case CLEARED -> tries(row, kind) && row.by().filter(roles(kind)::contains).isPresent();
      default -> false;
    };
  }

  /** Whether {@code row} is meant to end a complaint of {@code kind}. */
  static boolean tries(Wellness row, Wellness.Kind kind) {
    return row.kind() == Wellness.Kind.CLEARED && row.clears().filter(k -> k == kind).isPresent();
  }

  private static Set<Wellness.Role> roles(Wellness.Kind kind) {
    return switch (kind) {
      case HEAD_INJURY -> CLINICIANS;
      case ARM_PAIN, BACK_PAIN -> CLINICIANS_AND_THERAPISTS;
      case OTHER_PAIN, ILLNESS -> EnumSet.allOf(Wellness.Role.class);
      case CLEARED, SYMPTOM_FREE -> EnumSet.noneOf(Wellness.Role.class);
    };
  }

  /** Names who can end a complaint of {@code kind}, for people. */
  static Phrase whoEnds(Wellness.Kind kind) {
    return Phrase.of("hold.ends." + kind.id());
  }
}
