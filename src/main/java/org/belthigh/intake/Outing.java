package org.belthigh.intake;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.belthigh.model.Coded;
import org.belthigh.model.Origin;

/**
 * What a player threw and caught on one day for one team.
 *
 * @param pitches 0 or more; 0 is a report too
 * @param beforeLastBatter pitches up to the last batter faced
 * @param innings innings pitched, thirds as .1 and .2
 * @param inningsCaught innings in which at least one pitch was caught
 * @param team empty for the club's own
 */
public record Outing(
    LocalDate date,
    String player,
    int pitches,
    Kind kind,
    OptionalInt beforeLastBatter,
    OptionalDouble innings,
    OptionalInt inningsCaught,
    String team,
    String game,
    Origin origin) {
  /** What the throws were for; a bullpen starts no rest period. */
  public enum Kind implements Coded {
    GAME,
    SCRIMMAGE,
    BULLPEN;

    /** Whether its pitches count for rest and the daily maximum. */
    public boolean counts() {
      return this != BULLPEN;
    }
  }
}
