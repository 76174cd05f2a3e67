package org.belthigh.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.belthigh.model.Coded;
import org.belthigh.model.Phrase;

/**
 * What kind of week one player has ahead.
 *
 * @param first first of its seven days
 * @param says what is other than usual, in the family's words; empty in a usual week
 */
public record PlannedWeek(LocalDate first, Kind kind, Optional<Phrase> says) {
  /** Kinds of weeks; where several would do, the one that comes first is said. */
  public enum Kind implements Coded {
    /** No work at all: the season is over, or has not begun. */
    TIME_OFF,
    /** The first days after a clearance: fewer tosses, and only what was allowed. */
    BACK,
    /** After a dip: one skill, fewer and easier tosses. */
    EASY,
    /** Days before a tournament: fewer tosses, to play fresh. */
    BEFORE_TOURNAMENT,
    /** The season's rhythm: fewer tosses, fewer home days. */
    LIGHTER,
    USUAL
  }

  public PlannedWeek {
    if (says.isEmpty() != (kind == Kind.USUAL)) {
      throw new IllegalArgumentException("The week of " + first + " is " + kind + ": " + says);
    }
  }

  /** The same for the coordinator; empty where it is no matter of the whole group. */
  Optional<Phrase> ahead() {
    return says.filter(p -> kind != Kind.EASY && kind != Kind.BACK)
        .map(p -> new Phrase("ahead." + kind.id(), p.values()));
  }
}
