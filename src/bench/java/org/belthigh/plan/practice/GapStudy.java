package org.belthigh.plan.practice;

import java.util.Locale;
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
          seed,
          practice.hitters().size(),
          ours,
          millis,
          solver.score() == Long.MIN_VALUE ? "none" : Long.toString(solver.score()),
          solver.seconds());
    }
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
