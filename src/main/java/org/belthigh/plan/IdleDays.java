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
  /** What a practice is called whose hitting no longer fits the hours and days of the week. */
  static final Phrase SITS_OUT = Phrase.of("day.sits-out");

  /** The same where hours and days fit, and the swings of seven days are used up. */
  static final Phrase SWINGS_USED = Phrase.of("day.swings-used");

  /** A practice of which no minutes are for hitting. */
  static final Phrase NO_MINUTES = Phrase.of("day.no-minutes");

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
   * @param book what the player's days hold
   */
  Day of(Player player, LocalDate day, boolean provisional, LoadBook book) {
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
          Optional.of(why(player, practice.get(), book)));
    }
    if (season.timeOff().on(day)) {
      return idle(day, Place.REST, "day.time-off", provisional);
    }
    return idle(day, Place.REST, season.off(day) ? "day.off" : "day.rest", provisional);
  }

  private Phrase why(Player player, Event practice, LoadBook book) {
    if (practice.hittingMinutes() < 1) {
      return practice.kind() == Event.Kind.EVALUATION ? Phrase.of("day.evaluation") : NO_MINUTES;
    }
    if (ground.adults(practice) < 1) {
      return Phrase.of("day.no-adult");
    }
    if (stops.swings(player, practice.date())) {
      return Phrase.of("day.helps");
    }
    return book.fits(practice.date(), 0) ? SWINGS_USED : SITS_OUT;
  }

  private static Day idle(LocalDate day, Place place, String note, boolean provisional) {
    return new Day(day, place, List.of(), provisional, Optional.of(Phrase.of(note)));
  }
}
