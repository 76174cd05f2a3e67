package org.belthigh.plan.practice;

import java.time.Duration;
import java.util.Locale;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;

/**
 * How far the search is from the proven optimum, and from a general solver on large practices:
 * {@code mvn -Pgap test -Dgap.seeds=200}. The tables of {@code docs/planning.md} are its output.
 */
class GapStudy {
  private static final int SEEDS = Integer.getInteger("gap.seeds", 200);
  private static final int LARGE = Integer.getInteger("gap.large", 20);
  private static final double SECONDS = Integer.getInteger("gap.seconds", 10);

  @Test
  void against_every_arrangement() {
    double sum = 0;
    double worst = 0;
    int exact = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Practice practice = RandomPractice.tiny(seed);
      long ours = new Objective(practice).of(Search.best(practice));
      long optimum = ExactSearch.optimum(practice, ours);
      double gap = 100.0 * (optimum - ours) / optimum;
      sum += gap;
      worst = Math.max(worst, gap);
      exact += optimum == ours ? 1 : 0;
      say("tiny %d: ours %d, optimum %d", seed, ours, optimum);
    }
    say("| %d | %d | %.2f %% | %.2f %% |", SEEDS, exact, sum / SEEDS, worst);
  }

  @Test
  void against_a_general_solver() {
    for (int seed = 1; seed <= LARGE; seed++) {
      Practice practice = RandomPractice.large(seed);
      long begun = System.nanoTime();
      long ours = new Objective(practice).of(Search.best(practice));
      long millis = (System.nanoTime() - begun) / 1_000_000;
      ProvenOptimum.Result solver = ProvenOptimum.solve(practice, SECONDS, 1);
      say(
          "| %d | %d | %d | %d ms | %s | %.1f s |",
          seed, practice.hitters().size(), ours, millis, kept(solver.score()), solver.seconds());
    }
  }

  /** At equal time, and at {@link #SECONDS}; practices that a coach has, and large ones. */
  @Test
  void against_a_local_search_framework() {
    against("ordinary", RandomPractice::ordinary);
    against("large", RandomPractice::large);
  }

  private static void against(String size, LongFunction<Practice> practices) {
    Search.best(practices.apply(1)); // warm
    LocalSearchPeer.score(practices.apply(1), Duration.ofSeconds(2));
    for (int seed = 1; seed <= LARGE; seed++) {
      Practice practice = practices.apply(seed);
      long begun = System.nanoTime();
      long ours = new Objective(practice).of(Search.best(practice));
      long millis = (System.nanoTime() - begun) / 1_000_000 + 1;
      long equal = LocalSearchPeer.score(practice, Duration.ofMillis(millis));
      long longer = LocalSearchPeer.score(practice, Duration.ofMillis(Math.round(1000 * SECONDS)));
      say("| %s %d | %d | %d ms | %s | %s |", size, seed, ours, millis, kept(equal), kept(longer));
    }
  }

  private static String kept(long score) {
    return score == Long.MIN_VALUE ? "none" : Long.toString(score);
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
