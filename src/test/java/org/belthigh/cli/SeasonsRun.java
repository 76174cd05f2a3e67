package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.plan.practice.Effort;
import org.junit.jupiter.api.Test;

/**
 * Plays random player-seasons for as long as it is told to: {@code mvn -Pseasons test
 * -Dseasons.minutes=10 -Dseasons.weekly=0.1 -Dseasons.first=1 -Dseasons.effort=0.05}. Prints how
 * many, in what time, and every finding with the seed that gives it again. The effort is that of
 * laying out practices: limits do not depend on it. No part of the ordinary tests.
 */
class SeasonsRun {
  private static final int BATCH = 200;

  @Test
  void plays_seasons_for_as_long_as_it_is_told_to() {
    double minutes = Double.parseDouble(System.getProperty("seasons.minutes", "1"));
    double weekly = Double.parseDouble(System.getProperty("seasons.weekly", "0.1"));
    long first = Long.parseLong(System.getProperty("seasons.first", "1"));
    double effort = Double.parseDouble(System.getProperty("seasons.effort", "1"));
    SeasonPlay play = new SeasonPlay(CatalogueLoader.load().orThrow(), new Effort(effort));
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
      // after each batch: a run that is cut off keeps its count
      System.out.printf(
          Locale.ROOT,
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
    }
    assertThat(found.get()).isZero();
  }
}
