package org.belthigh.cli;

import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.belthigh.catalogue.CatalogueLoader;

/**
 * Plays random player-seasons for as long as it is told to: {@code mvn -Pseasons test-compile
 * exec:java -Dseasons.minutes=10 -Dseasons.weekly=0.1}. Prints how many, in what time, and every
 * finding with the seed that gives it again. Ends with status 1 if there was one.
 */
public final class SeasonsRun {
  private static final int BATCH = 200;

  private SeasonsRun() {}

  /**
   * Runs.
   *
   * @param args how many minutes, which share of the clubs is planned week by week, and the first
   *     seed
   */
  public static void main(String[] args) {
    double minutes = Double.parseDouble(args[0]);
    double weekly = Double.parseDouble(args[1]);
    long first = Long.parseLong(args[2]);
    SeasonPlay play = new SeasonPlay(CatalogueLoader.load().orThrow());
    AtomicLong whole = new AtomicLong();
    AtomicLong byWeek = new AtomicLong();
    AtomicLong swings = new AtomicLong();
    AtomicLong clubs = new AtomicLong();
    AtomicLong found = new AtomicLong();
    long start = System.nanoTime();
    long seed = first;
    while (System.nanoTime() - start < minutes * 60e9) {
      LongStream.range(seed, seed + BATCH)
          .parallel()
          .forEach(
              s -> {
                boolean weeks = Math.floorMod(s, 100L) < 100 * weekly;
                SeasonPlay.Played played = weeks ? play.weekByWeek(s) : play.whole(s);
                (weeks ? byWeek : whole).addAndGet(played.players());
                swings.addAndGet(played.swings());
                clubs.incrementAndGet();
                found.addAndGet(played.found().size());
                played.found().forEach(System.out::println);
              });
      seed += BATCH;
    }
    System.out.printf(
        java.util.Locale.ROOT,
        "seeds %d to %d: %d clubs, %d player-seasons in one go, %d week by week, %d swings,"
            + " %d findings, %.1f minutes%n",
        first,
        seed - 1,
        clubs.get(),
        whole.get(),
        byWeek.get(),
        swings.get(),
        found.get(),
        (System.nanoTime() - start) / 60e9);
    if (found.get() > 0) {
      throw new IllegalStateException(found.get() + " findings");
    }
  }
}
