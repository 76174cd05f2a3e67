package org.belthigh.plan.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SearchTest {
  private static long score(Practice practice, Arrangement arrangement) {
    return new Objective(practice).of(arrangement);
  }

  @Test
  void is_within_two_percent_of_the_proven_optimum_of_twenty_tiny_practices() {
    double gap = 0;
    for (int seed = 1; seed <= 20; seed++) {
      Practice practice = RandomPractice.tiny(seed);
      long ours = score(practice, Search.best(practice));
      long optimum = ExactSearch.optimum(practice, ours);
      gap += (optimum - ours) / (double) optimum;
    }

    assertThat(gap / 20).isBetween(0.0, 0.02);
  }

  @Test
  void breaks_no_limit() {
    for (int seed = 1; seed <= 20; seed++) {
      Practice practice = RandomPractice.ordinary(seed);

      assertThat(Objective.faults(score(practice, Search.best(practice)))).as("" + seed).isZero();
    }
  }

  @Test
  void everybody_bats_and_nobody_has_more_swings_than_another() {
    for (int seed = 1; seed <= 20; seed++) {
      Practice practice = RandomPractice.ordinary(seed);
      Arrangement found = Search.best(practice);
      int common = new Objective(practice).common(found);

      assertThat(common).isPositive();
      assertThat(IntStream.range(0, practice.stations()))
          .allMatch(q -> Arrays.stream(found.shares(practice, q, common)).sum() == common);
    }
  }

  @Test
  void a_tenth_of_the_effort_keeps_the_limits_too_and_costs_points() {
    long usual = 0;
    long little = 0;
    for (int seed = 1; seed <= 20; seed++) {
      Practice practice = RandomPractice.ordinary(seed);
      long reached = score(practice, Search.best(practice, new Effort(0.1)));
      assertThat(Objective.faults(reached)).as("" + seed).isZero();
      usual += score(practice, Search.best(practice));
      little += reached;
    }
    assertThat(little).isLessThan(usual);
  }

  @Test
  void squads_differ_by_one_at_the_most() {
    Practice practice = RandomPractice.ordinary(3);
    int[] squadOf = Search.best(practice).squadOf();

    assertThat(IntStream.range(0, practice.stations()))
        .allSatisfy(
            q -> assertThat(Arrays.stream(squadOf).filter(s -> s == q).count()).isBetween(4L, 5L));
  }

  @Test
  void the_order_of_the_roster_does_not_matter() {
    Practice practice = RandomPractice.ordinary(5);
    List<Hitter> turned = new ArrayList<>(practice.hitters());
    Collections.reverse(turned);
    Practice other =
        new Practice(
            turned,
            practice.tasks(),
            practice.stations(),
            practice.adultStations(),
            practice.rotations(),
            practice.taughtMost(),
            practice.watchedMost(),
            practice.stock());

    Arrangement one = Search.best(practice);
    Arrangement two = Search.best(other);

    assertThat(two.squadOf()).isEqualTo(one.squadOf());
    assertThat(two.posts()).isDeepEqualTo(one.posts());
  }

  @Test
  void a_thing_that_the_club_has_once_is_at_one_station_at_a_time() {
    for (int seed = 1; seed <= 10; seed++) {
      Practice practice = RandomPractice.ordinary(seed);
      int[][] posts = Search.best(practice).posts();
      for (Map.Entry<String, Integer> gear : practice.stock().entrySet()) {
        for (int r = 0; r < practice.rotations(); r++) {
          int rotation = r;
          assertThat(
                  Arrays.stream(posts)
                      .mapToInt(own -> own[rotation])
                      .filter(t -> t >= 0)
                      .filter(t -> practice.tasks().get(t).gear().contains(gear.getKey()))
                      .count())
              .isLessThanOrEqualTo(gear.getValue());
        }
      }
    }
  }

  @Test
  void rather_nobody_bats_than_a_bat_has_no_adult_or_no_gear() {
    for (int seed = 1; seed <= 30; seed++) {
      Practice practice = RandomPractice.tiny(seed);
      Practice bare =
          new Practice(
              practice.hitters(),
              practice.tasks(),
              practice.stations(),
              1,
              1,
              practice.taughtMost(),
              practice.watchedMost(),
              Map.of("tee", 0, "screen", 0, "net", 0));
      int[][] posts = Search.best(bare).posts();
      for (int q = 0; q < bare.stations(); q++) {
        if (posts[q][0] >= 0) {
          Task task = bare.tasks().get(posts[q][0]);
          assertThat(task.gear()).isEmpty();
          assertThat(task.adult() && !bare.adultAt(bare.station(q, 0))).isFalse();
        }
      }
    }
  }
}
