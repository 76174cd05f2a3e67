package org.belthigh.plan.practice;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The same practices given to a general local-search solver (Timefold 1.16, its usual construction,
 * moves and late acceptance), which scores by the same {@link Objective}: a peer that differs in
 * the search alone.
 */
final class LocalSearchPeer {
  private LocalSearchPeer() {}

  /** The score that the solver reaches in {@code time}. */
  static long score(Practice practice, Duration time) {
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(Sheet.class)
            .withEntityClasses(Post.class, Member.class)
            .withEasyScoreCalculatorClass(Score.class)
            .withTerminationSpentLimit(time);
    Sheet solved = SolverFactory.<Sheet>create(config).buildSolver().solve(new Sheet(practice));
    return solved.score.hardScore() < 0 ? Long.MIN_VALUE : solved.score.softScore();
  }

  /** A squad in a rotation. */
  @PlanningEntity
  public static class Post {
    int squad;
    int rotation;

    @PlanningVariable(valueRangeProviderRefs = "tasks", allowsUnassigned = true)
    Integer task;

    /** For the solver. */
    public Post() {}

    Post(int squad, int rotation) {
      this.squad = squad;
      this.rotation = rotation;
    }
  }

  /** A hitter. */
  @PlanningEntity
  public static class Member {
    int hitter;

    @PlanningVariable(valueRangeProviderRefs = "squads")
    Integer squad;

    /** For the solver. */
    public Member() {}

    Member(int hitter) {
      this.hitter = hitter;
    }
  }

  /** A practice and its arrangement. */
  @PlanningSolution
  public static class Sheet {
    Practice practice;
    Objective objective;
    @PlanningEntityCollectionProperty List<Post> posts;
    @PlanningEntityCollectionProperty List<Member> members;

    @ValueRangeProvider(id = "tasks")
    List<Integer> tasks;

    @ValueRangeProvider(id = "squads")
    List<Integer> squads;

    @PlanningScore HardSoftLongScore score;

    /** For the solver. */
    public Sheet() {}

    Sheet(Practice practice) {
      this.practice = practice;
      this.objective = new Objective(practice);
      int rotations = practice.rotations();
      this.posts =
          IntStream.range(0, practice.stations() * rotations)
              .mapToObj(i -> new Post(i / rotations, i % rotations))
              .toList();
      this.members = IntStream.range(0, practice.hitters().size()).mapToObj(Member::new).toList();
      this.tasks = IntStream.range(0, practice.tasks().size()).boxed().toList();
      this.squads = IntStream.range(0, practice.stations()).boxed().toList();
    }
  }

  /** The objective, with squads that differ by more than one as a further broken limit. */
  public static class Score implements EasyScoreCalculator<Sheet, HardSoftLongScore> {
    private static final int NO_SQUAD = -1;

    @Override
    public HardSoftLongScore calculateScore(Sheet sheet) {
      int stations = sheet.practice.stations();
      int[] squadOf = new int[sheet.members.size()];
      int[] sizes = new int[stations];
      for (Member member : sheet.members) {
        squadOf[member.hitter] = member.squad == null ? NO_SQUAD : member.squad;
        if (member.squad != null) {
          sizes[member.squad]++;
        }
      }
      int[][] posts = new int[stations][sheet.practice.rotations()];
      for (Post post : sheet.posts) {
        posts[post.squad][post.rotation] = post.task == null ? Arrangement.FIELDS : post.task;
      }
      long score = sheet.objective.of(new Arrangement(squadOf, posts));
      int least = squadOf.length / stations;
      int most = least + (squadOf.length % stations == 0 ? 0 : 1);
      int uneven =
          IntStream.of(sizes).map(n -> Math.max(0, n - most) + Math.max(0, least - n)).sum();
      long faults = Math.max(0, Math.round(-score / (double) Objective.FAULT));
      return HardSoftLongScore.of(-faults - uneven, score + faults * Objective.FAULT);
    }
  }
}
