package org.belthigh.plan;

import java.util.Comparator;
import java.util.Optional;
import org.belthigh.intake.Club;
import org.belthigh.model.Place;

/**
 * The same practice when things go otherwise: one grown-up alone, or rain on a field. Laid out by
 * the same search within the same limits, and nobody has more swings than planned.
 */
final class OtherWays {
  private final Circuit circuit;
  private final Club club;

  OtherWays(Circuit circuit, Club club) {
    this.circuit = circuit;
    this.club = club;
  }

  /** A practice under a roof. */
  record Sheltered(Club.Venue venue, Circuit.Layout layout) {}

  /** With one grown-up; empty where the sheet needs no more already. */
  Optional<Circuit.Layout> alone(Planner.Practice practice) {
    return practice.layout().adultStations() == 1
        ? Optional.empty()
        : Optional.of(laid(practice, practice.place(), 1, 1));
  }

  /**
   * In the club's cage, the one with room for most; empty where it has none, or practises there
   * already. Whether a cage has a roof is in no file, so the sheet says it as a condition.
   */
  Optional<Sheltered> rain(Planner.Practice practice) {
    if (practice.place() == Place.CAGE) {
      return Optional.empty();
    }
    return club.places().stream()
        .filter(Club.Venue::cage)
        .max(
            Comparator.comparingInt(Club.Venue::stations)
                .thenComparing(Club.Venue::id, Comparator.reverseOrder()))
        .map(v -> new Sheltered(v, laid(practice, Place.CAGE, practice.adults(), v.stations())));
  }

  private Circuit.Layout laid(Planner.Practice practice, Place place, int adults, int stations) {
    return circuit.again(
        practice.layout(),
        place,
        adults,
        stations,
        practice.event().hittingMinutes(),
        practice.share());
  }
}
