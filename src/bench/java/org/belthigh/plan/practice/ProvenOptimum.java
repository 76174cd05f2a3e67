package org.belthigh.plan.practice;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Bats;
import org.belthigh.model.Skill;

/**
 * The objective written a second time, as a model for a constraint solver that proves what is best.
 * It shares the weights with {@link Objective} and no line of its code; its answers are scored by
 * {@link Objective} again, so that a slip in either shows.
 */
final class ProvenOptimum {
  private final Practice practice;
  private final CpModel model = new CpModel();
  private final LinearExprBuilder points = LinearExpr.newBuilder();
  private final int hitters;
  private final int squads;
  private final int rotations;
  private final int tasks;
  private final BoolVar[][] in;
  private final BoolVar[][][] does;

  /**
   * What the solver found.
   *
   * @param score of the best arrangement found, by {@link Objective}
   * @param claimed the solver's own count of it
   * @param bound no arrangement without a broken limit scores higher
   * @param proven whether the two meet
   */
  record Result(long score, long claimed, long bound, boolean proven, double seconds) {}

  private ProvenOptimum(Practice practice) {
    this.practice = practice;
    this.hitters = practice.hitters().size();
    this.squads = practice.stations();
    this.rotations = practice.rotations();
    this.tasks = practice.tasks().size();
    this.in = new BoolVar[hitters][squads];
    this.does = new BoolVar[squads][rotations][tasks];
    divide();
    choose();
    worth();
    swings();
    stations();
    mixed();
    model.maximize(points);
  }

  static Result solve(Practice practice, double seconds, int workers) {
    Loader.loadNativeLibraries();
    ProvenOptimum optimum = new ProvenOptimum(practice);
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds);
    solver.getParameters().setNumSearchWorkers(workers);
    solver.getParameters().setRandomSeed(1);
    CpSolverStatus status = solver.solve(optimum.model);
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      return new Result(
          Long.MIN_VALUE, 0, 0, status == CpSolverStatus.INFEASIBLE, solver.wallTime());
    }
    return new Result(
        new Objective(practice).of(optimum.arrangement(solver)),
        Math.round(solver.objectiveValue()),
        Math.round(Math.floor(solver.bestObjectiveBound() + 1e-6)),
        status == CpSolverStatus.OPTIMAL,
        solver.wallTime());
  }

  private Arrangement arrangement(CpSolver solver) {
    int[] squadOf = new int[hitters];
    int[][] posts = new int[squads][rotations];
    for (int h = 0; h < hitters; h++) {
      for (int q = 0; q < squads; q++) {
        squadOf[h] = solver.booleanValue(in[h][q]) ? q : squadOf[h];
      }
    }
    for (int q = 0; q < squads; q++) {
      for (int r = 0; r < rotations; r++) {
        posts[q][r] = Arrangement.FIELDS;
        for (int t = 0; t < tasks; t++) {
          posts[q][r] = solver.booleanValue(does[q][r][t]) ? t : posts[q][r];
        }
      }
    }
    return new Arrangement(squadOf, posts);
  }

  private BoolVar bool(String name) {
    return model.newBoolVar(name);
  }

  private void divide() {
    for (int h = 0; h < hitters; h++) {
      for (int q = 0; q < squads; q++) {
        in[h][q] = bool("in");
      }
      model.addExactlyOne(in[h]);
    }
    for (int q = 0; q < squads; q++) {
      LinearExprBuilder size = LinearExpr.newBuilder();
      for (int h = 0; h < hitters; h++) {
        size.add(in[h][q]);
      }
      model.addLinearConstraint(size, hitters / squads, (hitters + squads - 1) / squads);
    }
  }

  private void choose() {
    for (int q = 0; q < squads; q++) {
      for (int r = 0; r < rotations; r++) {
        for (int t = 0; t < tasks; t++) {
          does[q][r][t] = bool("does");
          boolean adult = (q + r) % squads < practice.adultStations();
          if (practice.tasks().get(t).adult() && !adult) {
            model.addEquality(does[q][r][t], 0);
          }
        }
        model.addAtMostOne(does[q][r]);
      }
    }
    practice
        .stock()
        .forEach(
            (gear, count) -> {
              for (int r = 0; r < rotations; r++) {
                LinearExprBuilder used = LinearExpr.newBuilder();
                for (int q = 0; q < squads; q++) {
                  for (int t = 0; t < tasks; t++) {
                    if (practice.tasks().get(t).gear().contains(gear)) {
                      used.add(does[q][r][t]);
                    }
                  }
                }
                model.addLessOrEqual(used, count);
              }
            });
  }

  /** Both of two hold. */
  private BoolVar both(BoolVar a, BoolVar b) {
    BoolVar both = bool("both");
    model.addImplication(both, a);
    model.addImplication(both, b);
    model.addBoolOr(new Literal[] {both, a.not(), b.not()});
    return both;
  }

  private void worth() {
    for (int q = 0; q < squads; q++) {
      for (int t = 0; t < tasks; t++) {
        visits(q, t);
      }
      for (Skill skill : Skill.values()) {
        BoolVar seen = bool("seen");
        List<BoolVar> any = new ArrayList<>();
        for (int t = 0; t < tasks; t++) {
          for (int r = 0; r < rotations; r++) {
            if (practice.tasks().get(t).skill() == skill) {
              any.add(does[q][r][t]);
            }
          }
        }
        for (BoolVar does : any) {
          model.addImplication(does, seen);
        }
        List<Literal> none = new ArrayList<>(any);
        none.add(seen.not());
        model.addBoolOr(none.toArray(Literal[]::new));
        for (int h = 0; h < hitters; h++) {
          if (practice.hitters().get(h).week().contains(skill)) {
            points.addTerm(both(in[h][q], seen), Objective.MET);
          }
        }
      }
    }
  }

  private void visits(int q, int t) {
    LinearExprBuilder times = LinearExpr.newBuilder();
    for (int r = 0; r < rotations; r++) {
      times.add(does[q][r][t]);
    }
    BoolVar once = bool("once");
    BoolVar twice = bool("twice");
    model.addEquality(times, LinearExpr.sum(new BoolVar[] {once, twice}));
    model.addImplication(twice, once);
    for (int h = 0; h < hitters; h++) {
      Hitter hitter = practice.hitters().get(h);
      if (hitter.needs().get(t) == Need.NOT_YET) {
        model.addBoolOr(new Literal[] {in[h][q].not(), once.not()});
        continue;
      }
      int visit =
          hitter.needs().get(t).points()
              - Objective.HAD * Math.min(Objective.MOST_HAD, hitter.had().get(t));
      points.addTerm(both(in[h][q], once), visit);
      points.addTerm(both(in[h][q], twice), visit - Objective.AGAIN);
      if (practice.tasks().get(t).bare()) {
        for (int r = 0; r < rotations; r++) {
          if ((q + r) % squads < practice.adultStations()) {
            points.addTerm(both(in[h][q], does[q][r][t]), -Objective.BARE);
          }
        }
      }
    }
  }

  private void swings() {
    int most = rotations * practice.tasks().stream().mapToInt(Task::swings).max().orElse(0);
    IntVar common = model.newIntVar(1, most, "common");
    for (int q = 0; q < squads; q++) {
      LinearExprBuilder room = LinearExpr.newBuilder();
      for (int r = 0; r < rotations; r++) {
        for (int t = 0; t < tasks; t++) {
          room.addTerm(does[q][r][t], practice.tasks().get(t).swings());
        }
      }
      model.addLessOrEqual(common, room);
    }
    for (Hitter hitter : practice.hitters()) {
      IntVar own = model.newIntVar(0, Math.min(most, hitter.swingsLeft()), "own");
      model.addLessOrEqual(own, common);
      points.addTerm(own, Objective.SWING);
    }
  }

  private void stations() {
    BoolVar[] taught = new BoolVar[tasks];
    BoolVar[] watched = new BoolVar[tasks];
    for (int t = 0; t < tasks; t++) {
      taught[t] = bool("taught");
      watched[t] = bool("watched");
      BoolVar explained = bool("explained");
      model.addImplication(taught[t], explained);
      model.addImplication(watched[t], explained);
      points.addTerm(explained, -Objective.EXPLAIN);
      for (int s = 0; s < squads; s++) {
        BoolVar setUp = bool("set up");
        points.addTerm(setUp, -Objective.SET_UP);
        for (int r = 0; r < rotations; r++) {
          int q = Math.floorMod(s - r, squads);
          model.addImplication(does[q][r][t], setUp);
        }
        model.addImplication(setUp, s < practice.adultStations() ? taught[t] : watched[t]);
      }
    }
    model.addLessOrEqual(LinearExpr.sum(taught), practice.taughtMost());
    model.addLessOrEqual(LinearExpr.sum(watched), practice.watchedMost());
    for (int s = 0; s < squads; s++) {
      for (int r = 1; r < rotations; r++) {
        BoolVar[] last = does[Math.floorMod(s - r + 1, squads)][r - 1];
        BoolVar[] next = does[Math.floorMod(s - r, squads)][r];
        BoolVar change = bool("change");
        points.addTerm(change, -Objective.CHANGE);
        for (int t = 0; t < tasks; t++) {
          LinearExprBuilder others = LinearExpr.newBuilder();
          for (int u = 0; u < tasks; u++) {
            if (u != t) {
              others.add(next[u]);
            }
          }
          others.add(last[t]);
          others.addTerm(change, -1);
          model.addLessOrEqual(others, 1);
        }
      }
    }
  }

  private void mixed() {
    int bands = 1 + practice.hitters().stream().mapToInt(Hitter::distances).max().orElse(0);
    for (int q = 0; q < squads; q++) {
      LinearExprBuilder left = LinearExpr.newBuilder();
      LinearExprBuilder right = LinearExpr.newBuilder();
      BoolVar[] there = new BoolVar[bands];
      for (int b = 0; b < bands; b++) {
        there[b] = bool("distance");
      }
      for (int h = 0; h < hitters; h++) {
        Hitter hitter = practice.hitters().get(h);
        if (hitter.bats() == Bats.LEFT) {
          left.add(in[h][q]);
        } else if (hitter.bats() == Bats.RIGHT) {
          right.add(in[h][q]);
        }
        model.addImplication(in[h][q], there[hitter.distances()]);
      }
      IntVar lefts = model.newIntVar(0, hitters, "left");
      IntVar rights = model.newIntVar(0, hitters, "right");
      model.addEquality(lefts, left);
      model.addEquality(rights, right);
      IntVar rarer = model.newIntVar(0, hitters, "rarer");
      model.addMinEquality(rarer, new IntVar[] {lefts, rights});
      points.addTerm(rarer, -Objective.SIDE);
      for (int b = 0; b < bands; b++) {
        points.addTerm(there[b], -Objective.DISTANCE);
      }
      points.add(Objective.DISTANCE);
    }
  }
}
