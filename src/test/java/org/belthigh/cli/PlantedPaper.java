package org.belthigh.cli;

import java.util.ArrayList;
import java.util.List;

/** Faults on paper: files and pages of a printed club, with sizes and digests made anew. */
final class PlantedPaper {
  /** Spoils the prints and answers what a message must name. */
  interface Spoiling {
    String spoil(PrintedClub club);
  }

  /** A kind of fault on paper. */
  record Kind(String id, String what, String said, Spoiling how) {
    Planted planted() {
      return new Planted(id, what, said, (stage, dice) -> java.util.Optional.empty());
    }
  }

  private final List<Kind> kinds = new ArrayList<>();

  private PlantedPaper() {}

  static List<Kind> all() {
    return List.copyOf(new PlantedPaper().kinds);
  }
}
