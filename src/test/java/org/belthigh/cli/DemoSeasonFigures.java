package org.belthigh.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.decide.Outcome;
import org.belthigh.lab.LearningChild;
import org.belthigh.model.Skill;
import org.belthigh.plan.DecisionLine;

/** What a played season adds up to. */
final class DemoSeasonFigures {
  private final DemoSeason.Played season;
  private final Curriculum curriculum;

  DemoSeasonFigures(DemoSeason.Played season, Curriculum curriculum) {
    this.season = season;
    this.curriculum = curriculum;
  }

  /**
   * What one plan says of one skill of one player, beside the plan before it.
   *
   * @param rung the step that the week works on, 1 for the ladder's first
   * @param climbed steps up since the plan before; below 0 for down
   */
  record Look(
      DemoSeason.Week week, String player, String group, DecisionLine line, int rung, int climbed) {
    boolean is(Outcome outcome) {
      return line.outcome() == outcome;
    }

    /** Whether that rule was among those that spoke. */
    boolean by(String rule) {
      return line.rules().get(0).equals(rule);
    }
  }

  /** Every look of the season, by player, skill and week. */
  List<Look> looks() {
    List<Look> looks = new ArrayList<>();
    for (String player : season.children().keySet()) {
      for (Skill skill : Skill.values()) {
        int before = 0;
        for (DemoSeason.Week week : season.weeks()) {
          DecisionLine line = week.of(player).decisions().get(skill.ordinal());
          int rung = curriculum.step(line.next().orElse(line.step())).orElseThrow().rung();
          String group = week.of(player).who().group();
          looks.add(new Look(week, player, group, line, rung, before == 0 ? 0 : rung - before));
          before = rung;
        }
      }
    }
    return looks;
  }

  /** Looks of one player and skill, oldest first. */
  List<Look> looks(String player, Skill skill) {
    return looks().stream()
        .filter(l -> l.player().equals(player) && l.line().skill() == skill)
        .toList();
  }

  /** Steps up over the season, in all skills together. */
  int climbed(String player) {
    return looks().stream().filter(l -> l.player().equals(player)).mapToInt(Look::climbed).sum();
  }

  /** Mean number of steps up, by group and hidden pace; the group's own order of paces. */
  Map<LearningChild.Pace, Double> climbed(List<String> players) {
    Map<LearningChild.Pace, Double> means = new EnumMap<>(LearningChild.Pace.class);
    for (LearningChild.Pace pace : LearningChild.Pace.values()) {
      means.put(
          pace,
          players.stream()
              .filter(p -> season.children().get(p).pace() == pace)
              .mapToInt(this::climbed)
              .average()
              .orElse(0));
    }
    return means;
  }

  /** The players of a group, in roster order. */
  List<String> players(String group) {
    return season.club().players().stream()
        .filter(p -> p.group().equals(group))
        .map(p -> p.id())
        .toList();
  }

  /** Spearman's rank correlation of steps climbed with true ability gained, ties at their mean. */
  double rankCorrelation(List<String> players) {
    double[] steps = ranks(players.stream().mapToDouble(this::climbed).toArray());
    double[] gained = ranks(players.stream().mapToDouble(this::gained).toArray());
    double mean = (players.size() + 1) / 2.0;
    double both = 0;
    double one = 0;
    double other = 0;
    for (int i = 0; i < steps.length; i++) {
      both += (steps[i] - mean) * (gained[i] - mean);
      one += (steps[i] - mean) * (steps[i] - mean);
      other += (gained[i] - mean) * (gained[i] - mean);
    }
    return both / Math.sqrt(one * other);
  }

  /** How far the hidden ability ends above the rungs on which the season began, all skills. */
  private double gained(String player) {
    double gained = 0;
    for (Skill skill : Skill.values()) {
      gained += season.children().get(player).ability(skill) - looks(player, skill).get(0).rung();
    }
    return gained;
  }

  private static double[] ranks(double[] values) {
    List<Integer> order =
        IntStream.range(0, values.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .toList();
    double[] ranks = new double[values.length];
    for (int from = 0; from < values.length; ) {
      int to = from;
      while (to < values.length && values[order.get(to)] == values[order.get(from)]) {
        to++;
      }
      for (int i = from; i < to; i++) {
        ranks[order.get(i)] = (from + to + 1) / 2.0;
      }
      from = to;
    }
    return ranks;
  }

  /** Sums up {@code count} over all plans. */
  int sum(ToIntFunction<DemoSeason.Week> count) {
    return season.weeks().stream().mapToInt(count).sum();
  }
}
