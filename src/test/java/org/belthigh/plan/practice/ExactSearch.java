package org.belthigh.plan.practice;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The proven optimum of a tiny practice: every division into squads, and for each of them every
 * choice of tasks, left out only where a bound shows that it cannot win.
 */
final class ExactSearch {
  private final Practice practice;
  private final Objective objective;
  private final int tasks;
  private final int squads;
  private final int rotations;
  private final int mostSwings;
  private final int[] squadOf;
  private final int[] sizes;
  private final int[][] posts;
  private long best;
  private Objective.Squad[] sums;

  private ExactSearch(Practice practice, long known) {
    this.practice = practice;
    this.objective = new Objective(practice);
    this.tasks = practice.tasks().size();
    this.squads = practice.stations();
    this.rotations = practice.rotations();
    this.mostSwings = practice.tasks().stream().mapToInt(Task::swings).max().orElse(0);
    this.squadOf = new int[practice.hitters().size()];
    this.sizes = new int[squads];
    this.posts = new int[squads][rotations];
    for (int[] own : posts) {
      Arrays.fill(own, Arrangement.FIELDS);
    }
    this.best = known;
  }

  /**
   * The highest score there is.
   *
   * @param known a score that some arrangement has
   */
  static long optimum(Practice practice, long known) {
    ExactSearch search = new ExactSearch(practice, known);
    search.divide(0);
    return search.best;
  }

  private void divide(int hitter) {
    int all = squadOf.length;
    if (hitter == all) {
      if (Arrays.stream(sizes).min().orElseThrow() >= all / squads) {
        sums =
            IntStream.range(0, squads)
                .mapToObj(q -> objective.squad(squadOf, q))
                .toArray(Objective.Squad[]::new);
        choose(0);
      }
      return;
    }
    for (int q = 0; q < squads; q++) {
      if (sizes[q] < (all + squads - 1) / squads) {
        squadOf[hitter] = q;
        sizes[q]++;
        divide(hitter + 1);
        sizes[q]--;
      }
    }
  }

  private void choose(int post) {
    if (post == squads * rotations) {
      best = Math.max(best, objective.of(sums, posts));
      return;
    }
    int q = post % squads;
    int r = post / squads;
    for (int t = Arrangement.FIELDS; t < tasks; t++) {
      posts[q][r] = t;
      if (bound(post + 1) > best) {
        choose(post + 1);
      }
    }
    posts[q][r] = Arrangement.FIELDS;
  }

  /** No way to fill the posts from {@code post} on scores higher: all gains, no further costs. */
  private long bound(int post) {
    long bound = objective.of(sums, posts);
    for (int q = 0; q < squads; q++) {
      boolean bats = Arrays.stream(posts[q]).anyMatch(t -> t >= 0 && hasSwings(t));
      bound += bats ? 0 : Objective.FAULT;
      bound += Arrays.stream(sums[q].meets).sum();
    }
    for (int p = post; p < squads * rotations; p++) {
      int most = 0;
      Objective.Squad squad = sums[p % squads];
      for (int t = 0; t < tasks; t++) {
        most = squad.barred[t] ? most : Math.max(most, squad.visit[t]);
      }
      bound += most;
    }
    return bound + (long) Objective.SWING * squadOf.length * mostSwings * rotations;
  }

  private boolean hasSwings(int task) {
    return practice.tasks().get(task).swings() > 0;
  }
}
