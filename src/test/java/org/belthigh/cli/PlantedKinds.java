package org.belthigh.cli;

import java.util.List;
import java.util.stream.Stream;

/** Kinds of fault that can be planted in a finished plan or in its club afterwards. */
final class PlantedKinds {
  private PlantedKinds() {}

  /** All of them, theme by theme, always in the same order. */
  static List<Planted> all() {
    return Stream.of(
            new PlantedFront(),
            new PlantedChildren(),
            new PlantedDecisions(),
            new PlantedHolds(),
            new PlantedDays(),
            new PlantedItems(),
            new PlantedPractices(),
            new PlantedStations(),
            new PlantedClubs())
        .flatMap(list -> list.kinds().stream())
        .toList();
  }
}
