package org.belthigh.plan.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DraftTest {
  @Test
  void after_any_changes_kept_or_undone_scores_as_the_documentation_says() {
    for (int seed = 1; seed <= 10; seed++) {
      Practice practice =
          seed % 2 == 0 ? RandomPractice.large(seed) : RandomPractice.ordinary(seed);
      Objective objective = new Objective(practice);
      SplittableRandom draws = new SplittableRandom(seed);
      int[] squadOf = Search.best(practice, new Effort(0.01)).squadOf();
      Draft draft = new Draft(practice, objective, squadOf);
      for (int change = 0; change < 500; change++) {
        Arrangement before = draft.copy();
        change(draft, practice, draws);

        assertThat(draft.score())
            .isEqualTo(objective.of(draft.copy()))
            .isEqualTo(PlainScore.of(practice, draft.copy()));

        if (draws.nextBoolean()) {
          draft.keep();
        } else {
          draft.undo();
          assertThat(draft.copy().posts()).isDeepEqualTo(before.posts());
          assertThat(draft.copy().squadOf()).containsExactly(before.squadOf());
        }
        assertThat(draft.isChanged()).isFalse();
        assertThat(draft.score()).isEqualTo(objective.of(draft.copy()));
      }
    }
  }

  private static void change(Draft draft, Practice practice, SplittableRandom draws) {
    int posts = draws.nextInt(4);
    for (int i = 0; i < posts; i++) {
      draft.post(
          draws.nextInt(practice.stations()),
          draws.nextInt(practice.rotations()),
          draws.nextInt(practice.tasks().size() + 1) - 1);
    }
    if (draws.nextInt(3) == 0) {
      draft.move(draws.nextInt(practice.hitters().size()), draws.nextInt(practice.stations()));
    }
  }

  @Test
  void a_third_visit_of_a_squad_to_one_task_breaks_a_limit_and_a_second_none() {
    Practice practice = RandomPractice.ordinary(1);
    Objective objective = new Objective(practice);
    Draft draft = new Draft(practice, objective, Search.best(practice, new Effort(0.01)).squadOf());
    int task = someTask(practice);

    int[] broken = new int[3];
    for (int visit = 0; visit < broken.length; visit++) {
      draft.post(0, visit, task);
      broken[visit] = Objective.faults(draft.score()) / 100;
    }

    // a squad that does not bat weighs 1, a limit 100
    assertThat(broken[1] - broken[0]).isLessThan(1);
    assertThat(broken[2] - broken[1]).isEqualTo(1);
  }

  /** One that needs no grown-up and is for everybody, so that nothing else breaks a limit. */
  private static int someTask(Practice practice) {
    for (int t = 0; t < practice.tasks().size(); t++) {
      int task = t;
      boolean open =
          practice.hitters().stream().noneMatch(h -> h.needs().get(task) == Need.NOT_YET);
      if (open && !practice.tasks().get(t).adult() && practice.tasks().get(t).gear().isEmpty()) {
        return t;
      }
    }
    throw new AssertionError(Arrays.toString(practice.tasks().toArray()));
  }
}
