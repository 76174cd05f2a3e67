package org.belthigh.measure;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The countdown rounds of one player.
 *
 * @param rounds by date, and within a day tossed rounds before tallied ones
 */
public record Countdown(List<Round> rounds) {
  public Countdown {
    rounds = List.copyOf(rounds);
  }

  /**
   * One countdown.
   *
   * @param round as logged; {@link #TALLY} for one that was tallied
   * @param score swings used, 6 to 12 from a start at 12; empty where the count did not get to zero
   * @param swings swings that cost, which of an unfinished round are all of them
   * @param hard how many of them hit it hard; empty where only the score was written down
   * @param free swings after the end
   */
  public record Round(
      LocalDate date, String round, OptionalInt score, int swings, OptionalInt hard, int free) {
    /** The {@code round} of a round that was tallied. */
    public static final String TALLY = "tally";

    /** Whether the count got to zero or below. */
    public boolean complete() {
      return score.isPresent();
    }
  }

  /** The mean score of the complete rounds; empty where there is none. */
  public OptionalDouble mean() {
    return rounds.stream().filter(Round::complete).mapToInt(r -> r.score().getAsInt()).average();
  }
}
