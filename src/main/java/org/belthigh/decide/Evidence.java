package org.belthigh.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Step;
import org.belthigh.model.Share;
import org.belthigh.model.Side;

/**
 * The tosses seen behind a decision.
 *
 * @param bars one reading for each share that the step is held against
 * @param days different days on which tosses were counted
 * @param first day of the oldest counted toss
 * @param last day of the newest
 * @param provedOn day on which the present step was proved; empty where it is not
 * @param passed steps that the log shows behind the player, oldest first
 */
public record Evidence(
    List<Reading> bars,
    int days,
    Optional<LocalDate> first,
    Optional<LocalDate> last,
    Optional<LocalDate> provedOn,
    List<Passed> passed) {
  public Evidence {
    bars = List.copyOf(bars);
    passed = List.copyOf(passed);
  }

  /**
   * One share against its mark and floor.
   *
   * @param side the side it is about, for a switch hitter; empty for both together
   * @param share plain counts; for takes and chases the balls let go and swung at
   * @param harder how many of them were harder than the step asks
   * @param easier how many were easier, by feed, distance or ball
   * @param estimate weighed by age, place and way of logging
   * @param mark share that is good enough, at the player's age
   * @param floor share that is too little, at the player's age
   * @param proof for the mark against the floor, now, in nats
   * @param best highest it has been
   * @param against proof against the mark, now, in nats
   * @param markBar proof that moves up
   * @param floorBar proof against that firms up
   * @param toGo about how many more tosses at the mark would settle it; 0 when it is settled
   */
  public record Reading(
      Step.Counted counted,
      Optional<Side> side,
      Share share,
      int harder,
      int easier,
      Estimate estimate,
      double mark,
      double floor,
      double proof,
      double best,
      double against,
      double markBar,
      double floorBar,
      int toGo) {
    /** What is counted, as words are named after it: {@code calls}, {@code hard-hits}. */
    public String what() {
      return counted.id();
    }

    /**
     * How close the test is to either end: 1 where the mark is proved, -1 where the floor is, 0
     * where nothing speaks for either. What was proved at its best counts, as it decides.
     */
    public double place() {
      double up = Math.max(0, Math.min(1, best / markBar));
      double down = Math.max(0, Math.min(1, against / floorBar));
      return up < 1 && down > 0 ? -down : up;
    }
  }

  /** A step behind the player since {@code on}. */
  public record Passed(String step, LocalDate on) {}

  /** Counted tosses over all shares. */
  public int seen() {
    return bars.stream().mapToInt(r -> r.share().seen()).sum();
  }
}
