package org.belthigh.audit;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.belthigh.intake.Outing;
import org.belthigh.model.Origin;

/** Outings for the checks of arms, as a log would give them. */
final class Thrown {
  private Thrown() {}

  static Outing game(LocalDate day, int pitches) {
    return of(day, pitches, Outing.Kind.GAME, OptionalDouble.empty(), OptionalInt.empty());
  }

  static Outing bullpen(LocalDate day, int pitches) {
    return of(day, pitches, Outing.Kind.BULLPEN, OptionalDouble.empty(), OptionalInt.empty());
  }

  static Outing pitched(LocalDate day, double innings) {
    return of(day, 1, Outing.Kind.GAME, OptionalDouble.of(innings), OptionalInt.empty());
  }

  static Outing caught(LocalDate day, int innings) {
    return of(day, 0, Outing.Kind.GAME, OptionalDouble.empty(), OptionalInt.of(innings));
  }

  private static Outing of(
      LocalDate day,
      int pitches,
      Outing.Kind kind,
      OptionalDouble innings,
      OptionalInt inningsCaught) {
    return new Outing(
        day,
        "a1",
        pitches,
        kind,
        OptionalInt.empty(),
        innings,
        inningsCaught,
        "",
        "",
        Origin.of("throws.csv"));
  }
}
