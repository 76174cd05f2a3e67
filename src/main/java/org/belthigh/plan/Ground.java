package org.belthigh.plan;

import java.util.Locale;
import java.util.Optional;
import org.belthigh.intake.Club;
import org.belthigh.intake.Event;
import org.belthigh.model.Place;

/** Where a group's events take place, and with how many grown-ups. */
final class Ground {
  private static final int USUAL_STATIONS = 4;
  private static final String CAGE = "cage";

  private final Club club;
  private final Club.Group group;

  Ground(Club club, Club.Group group) {
    this.club = club;
    this.group = group;
  }

  /** Grown-ups at a practice. With none there is no hitting: each bat has one beside it. */
  int adults(Event event) {
    return event.adults().orElse(group.tossers());
  }

  Place place(Event event) {
    boolean cage =
        venue(event)
            .map(Club.Venue::cage)
            .orElse(event.place().toLowerCase(Locale.ROOT).contains(CAGE));
    return cage ? Place.CAGE : Place.FIELD;
  }

  /** Stations that the place can hold at once. */
  int stations(Event event) {
    return venue(event).map(Club.Venue::stations).orElse(USUAL_STATIONS);
  }

  private Optional<Club.Venue> venue(Event event) {
    return club.places().stream().filter(v -> v.id().equals(event.place())).findFirst();
  }
}
