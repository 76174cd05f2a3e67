package org.belthigh.measure;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;
import org.belthigh.model.Timing;

/**
 * How well a player drives the ball, from all countdowns pooled.
 *
 * @param hits what the swings and scores say about the share that is hit hard
 * @param finished rounds that got to zero or below, those with a score alone included
 * @param unfinished rounds that did not
 * @param mean mean score of the finished rounds, in swings; empty where there is none
 * @param timing of the swings whose timing was written down
 * @param hardAt swings that hit it hard, of those logged one by one, by spot
 */
public record Drive(
    HardHits hits,
    int finished,
    int unfinished,
    OptionalDouble mean,
    Timings timing,
    Map<Spot, Share> hardAt) {
  public Drive {
    hardAt = Map.copyOf(hardAt);
    if (finished < 0 || unfinished < 0 || mean.isPresent() != finished > 0) {
      throw new IllegalArgumentException(
          finished + " finished and " + unfinished + " unfinished rounds with mean " + mean);
    }
  }

  /** Swings by when the bat came through. */
  public record Timings(int early, int on, int late) {
    public Timings {
      if (early < 0 || on < 0 || late < 0) {
        throw new IllegalArgumentException("counts are 0 or more");
      }
    }

    static Timings of(Collection<Toss> swings) {
      int[] counts = new int[Timing.values().length];
      swings.forEach(s -> s.timing().ifPresent(t -> counts[t.ordinal()]++));
      return new Timings(
          counts[Timing.EARLY.ordinal()],
          counts[Timing.ON.ordinal()],
          counts[Timing.LATE.ordinal()]);
    }

    /** All swings whose timing was written down. */
    public int seen() {
      return early + on + late;
    }
  }

  /**
   * From the swings of all countdowns, free ones included, and the rounds they belong to.
   *
   * @param rounds whole rounds; a round swung from both sides is in neither side's
   */
  static Drive of(List<Toss> swings, List<Countdown.Round> rounds, List<Tally> tallies) {
    Share single = Share.none();
    for (Toss swing : swings) {
      single = single.and(hard(swing));
    }
    List<HardHits.Score> scores =
        tallies.stream()
            .filter(tally -> tally.measure() == MeasureKind.COUNTDOWN)
            .map(tally -> new HardHits.Score(tally.of(), tally.made()))
            .toList();
    int finished = (int) rounds.stream().filter(Countdown.Round::complete).count();
    return new Drive(
        new HardHits(single, scores),
        finished,
        rounds.size() - finished,
        new Countdown(rounds).mean(),
        Timings.of(swings),
        BySpot.of(swings.stream(), Drive::hard));
  }

  static boolean hard(Toss toss) {
    return toss.hit().filter(hit -> hit == Hit.HARD).isPresent();
  }
}
