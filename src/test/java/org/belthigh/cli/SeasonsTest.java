package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.plan.practice.Effort;
import org.junit.jupiter.api.Test;

/**
 * A few thousand random player-seasons through planner and auditor; {@link SeasonsRun} plays more.
 */
class SeasonsTest {
  private static final SeasonPlay PLAY =
      new SeasonPlay(CatalogueLoader.load().orThrow(), Effort.USUAL);

  private static void play(int clubs, LongFunction<SeasonPlay.Played> season, int least) {
    List<String> found = new ArrayList<>();
    int players = 0;
    long swings = 0;
    for (long seed = 1; seed <= clubs; seed++) {
      SeasonPlay.Played played = season.apply(seed);
      players += played.players();
      swings += played.swings();
      found.addAll(played.found());
    }
    assertThat(found).isEmpty();
    assertThat(players).isGreaterThan(least);
    assertThat(swings).as("a plan of nothing keeps every limit").isGreaterThan(100L * players);
  }

  @Test
  void whole_seasons_keep_every_limit() {
    play(250, PLAY::whole, 2_000);
  }

  /** Found by a longer run: a child pitched on a day of rest, the first day of the plan. */
  @Test
  void a_day_of_rest_on_which_a_child_pitched_keeps_its_fewer_swings() {
    assertThat(PLAY.weekByWeek(300_329).found()).isEmpty();
  }

  @Test
  void seasons_planned_week_by_week_keep_every_limit_across_the_weeks_too() {
    play(60, PLAY::weekByWeek, 500);
  }
}
