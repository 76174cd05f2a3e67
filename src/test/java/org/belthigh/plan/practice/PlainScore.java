package org.belthigh.plan.practice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.belthigh.model.Bats;
import org.belthigh.model.Skill;

/**
 * The objective of a practice once more, as the table in {@code docs/planning.md} says it, post by
 * post and hitter by hitter, with nothing kept or shared.
 */
final class PlainScore {
  private static final int LIMIT = 100;

  private final Practice practice;
  private final Arrangement arrangement;
  private long points;
  private long broken;

  private PlainScore(Practice practice, Arrangement arrangement) {
    this.practice = practice;
    this.arrangement = arrangement;
  }

  static long of(Practice practice, Arrangement arrangement) {
    PlainScore score = new PlainScore(practice, arrangement);
    for (int q = 0; q < practice.stations(); q++) {
      score.squad(q);
    }
    score.swings();
    score.stations();
    score.things();
    return score.points - 1_000_000_000L * score.broken;
  }

  private void squad(int squad) {
    List<Hitter> own =
        IntStream.range(0, practice.hitters().size())
            .filter(h -> arrangement.squadOf()[h] == squad)
            .mapToObj(h -> practice.hitters().get(h))
            .toList();
    Set<Skill> met = new HashSet<>();
    for (int r = 0; r < practice.rotations(); r++) {
      int task = arrangement.posts()[squad][r];
      if (task != Arrangement.FIELDS) {
        met.add(practice.tasks().get(task).skill());
        visit(own, squad, r, task);
      }
    }
    for (Hitter hitter : own) {
      points += 80L * hitter.week().stream().filter(met::contains).count();
    }
    long left = own.stream().filter(h -> h.bats() == Bats.LEFT).count();
    long right = own.stream().filter(h -> h.bats() == Bats.RIGHT).count();
    points -= 8 * Math.min(left, right);
    points -= 25 * Math.max(0, own.stream().map(Hitter::distances).distinct().count() - 1);
    broken += room(squad) == 0 ? 1 : 0;
  }

  private void visit(List<Hitter> own, int squad, int rotation, int task) {
    Task what = practice.tasks().get(task);
    boolean grownUp = (squad + rotation) % practice.stations() < practice.adultStations();
    long before =
        IntStream.range(0, rotation).filter(r -> arrangement.posts()[squad][r] == task).count();
    for (Hitter hitter : own) {
      points += hitter.needs().get(task).points() - 3 * Math.min(4, hitter.had().get(task));
      points -= before > 0 ? 6 : 0;
      points -= grownUp && what.bare() ? 15 : 0;
    }
    broken += own.stream().anyMatch(h -> h.needs().get(task) == Need.NOT_YET) ? LIMIT : 0;
    broken += what.adult() && !grownUp ? LIMIT : 0;
    broken += before > 1 ? LIMIT : 0;
  }

  private int room(int squad) {
    return IntStream.of(arrangement.posts()[squad])
        .map(t -> t == Arrangement.FIELDS ? 0 : practice.tasks().get(t).swings())
        .sum();
  }

  private void swings() {
    int most = practice.tasks().stream().mapToInt(Task::swings).max().orElse(0);
    int common =
        IntStream.range(0, practice.stations())
            .map(this::room)
            .filter(room -> room > 0)
            .min()
            .orElse(practice.rotations() * most);
    for (Hitter hitter : practice.hitters()) {
      points += 2L * Math.min(common, hitter.swingsLeft());
    }
  }

  private void stations() {
    Set<Integer> taught = new TreeSet<>();
    Set<Integer> watched = new TreeSet<>();
    for (int s = 0; s < practice.stations(); s++) {
      Set<Integer> here = new TreeSet<>();
      int last = Arrangement.FIELDS;
      for (int r = 0; r < practice.rotations(); r++) {
        int task = arrangement.posts()[Math.floorMod(s - r, practice.stations())][r];
        if (task != Arrangement.FIELDS) {
          here.add(task);
          points -= last != Arrangement.FIELDS && last != task ? 15 : 0;
        }
        last = task;
      }
      points -= 40L * here.size();
      (s < practice.adultStations() ? taught : watched).addAll(here);
    }
    broken += (long) LIMIT * Math.max(0, taught.size() - practice.taughtMost());
    broken += (long) LIMIT * Math.max(0, watched.size() - practice.watchedMost());
    taught.addAll(watched);
    points -= 60L * taught.size();
  }

  private void things() {
    practice
        .stock()
        .forEach(
            (thing, has) -> {
              for (int r = 0; r < practice.rotations(); r++) {
                int rotation = r;
                long use =
                    IntStream.range(0, practice.stations())
                        .map(q -> arrangement.posts()[q][rotation])
                        .filter(t -> t != Arrangement.FIELDS)
                        .filter(t -> practice.tasks().get(t).gear().contains(thing))
                        .count();
                broken += LIMIT * Math.max(0, use - has);
              }
            });
  }
}
