package org.belthigh.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.Event;
import org.belthigh.intake.Player;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;

/** Days without hitting work: a game, a practice without it, a day off, a hold or rest. */
final class IdleDays {
  private final Season season;
  private final Ground ground;
  private final Stops stops;

  IdleDays(Season season, Ground ground, Stops stops) {
    this.season = season;
    this.ground = ground;
    this.stops = stops;
  }

  /**
   * The entry of {@code day}, which says why there is no work on it.
   *
   * @param decided why a practice of that day has no hitting for the player; empty where the
   *     practice itself has none
   */
  Day of(Player player, LocalDate day, boolean provisional, Optional<Idle> decided) {
    if (stops.all(player, day)) {
      return idle(day, Place.REST, "day.held", provisional);
    }
    Optional<Event> game = season.game(day);
    if (game.isPresent()) {
      return idle(day, Place.FIELD, "day." + game.get().kind().id(), provisional);
    }
    Optional<Event> practice = season.practice(day);
    if (practice.isPresent()) {
      return new Day(
          day,
          ground.place(practice.get()),
          List.of(),
          provisional,
          Optional.of(why(player, practice.get(), decided)));
    }
    if (season.timeOff().on(day)) {
      return idle(day, Place.REST, "day.time-off", provisional);
    }
    return idle(day, Place.REST, season.off(day) ? "day.off" : "day.rest", provisional);
  }

  private Phrase why(Player player, Event practice, Optional<Idle> decided) {
    if (practice.hittingMinutes() < 1) {
      return practice.kind() == Event.Kind.EVALUATION
          ? Phrase.of("day.evaluation")
          : Idle.NO_MINUTES.day();
    }
    if (ground.adults(practice) < 1) {
      return Phrase.of("day.no-adult");
    }
    if (stops.swings(player, practice.date())) {
      return Phrase.of("day.helps");
    }
    return decided.orElse(Idle.NOTHING_FITS).day();
  }

  private static Day idle(LocalDate day, Place place, String note, boolean provisional) {
    return new Day(day, place, List.of(), provisional, Optional.of(Phrase.of(note)));
  }
}
