package org.belthigh.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.belthigh.model.Share;

/** The lab's charts. */
final class LabCharts {
  private static final int WIDTH = 700;
  private static final int ROW = 14;
  private static final int LEFT = 190;
  private static final int RIGHT = WIDTH - 30;
  private static final double BOUND = 0.05;

  private LabCharts() {}

  /** Season-long errors with their intervals, against the bound. */
  static String errors(List<Cell> cells) {
    Svg svg =
        rows(
            cells.size(),
            "Wrong decisions over a season",
            "One line a skill, age and kind of hitter: a filled dot for the share of seasons with a"
                + " false move-up, a ring for a false firm-up, a bar for the 95 % interval. The"
                + " dashed line is the bound of 5 %.");
    Scale scale = new Scale(0, 0.06, LEFT, RIGHT);
    axis(svg, scale, cells.size(), List.of(0.0, 0.01, 0.02, 0.03, 0.04, 0.05), LabCharts::percent);
    svg.line(scale.at(BOUND), 34, scale.at(BOUND), bottom(cells.size()), "4 3");
    int y = 50;
    for (Cell cell : cells) {
      boolean floor = cell.scenario().hitter().atFloor();
      Share wrong = floor ? cell.movedUp() : cell.firmedUp();
      svg.text(6, y + 4, LabReport.name(cell), "start");
      svg.line(scale.at(wrong.low()), y, scale.at(wrong.high()), y, "");
      svg.dot(scale.at(wrong.value()), y, floor);
      y += ROW;
    }
    return svg.file();
  }

  /** Tosses to a right move-up over Wald's number: the test of the books, and the real one. */
  static String tosses(List<Cell> books, List<Cell> real) {
    Svg svg =
        rows(
            books.size(),
            "Tosses to a right move-up, as a multiple of Wald's number",
            "One line a skill and age, for hitters at the mark. A filled dot: the plain test, looked"
                + " at after each toss. A ring: the real test with 12 tosses a day, counted to the"
                + " end of the day. The dashed line is 1.3.");
    Scale scale = new Scale(0.8, 2.6, LEFT, RIGHT);
    axis(svg, scale, books.size(), List.of(1.0, 1.5, 2.0, 2.5), "%.1f"::formatted);
    svg.line(scale.at(1.3), 34, scale.at(1.3), bottom(books.size()), "4 3");
    int y = 50;
    for (int i = 0; i < books.size(); i++) {
      Cell plain = books.get(i);
      svg.text(6, y + 4, LabReport.name(plain), "start");
      svg.dot(scale.at(plain.ratio()), y, true);
      int row = y;
      real.stream()
          .filter(c -> same(c, plain) && !Double.isNaN(c.ratio()))
          .forEach(c -> svg.dot(scale.at(c.ratio()), row, false));
      y += ROW;
    }
    return svg.file();
  }

  private static boolean same(Cell one, Cell other) {
    return one.trial().skill() == other.trial().skill()
        && one.trial().band() == other.trial().band()
        && one.scenario().hitter() == other.scenario().hitter();
  }

  /** Learners who cross in one week, over all skills and ages: who has moved up by when. */
  static String learning(List<Cell> learners) {
    int crossing = learners.get(0).scenario().crossing();
    Svg svg =
        new Svg(
            WIDTH,
            300,
            "Learners who reach the mark in week " + crossing,
            "Share of learners moved up by the end of each week, over all skills and ages. Whole"
                + " line: the decisions. Dashed: eight of ten, looked at weekly. Dotted: a step"
                + " every three weeks. The upright line is the beginning of the week in which the"
                + " mark is reached; moves before it come too soon.");
    Scale x = new Scale(0, Scenario.WEEKS, 60, RIGHT - 110);
    Scale y = new Scale(0, 1, 260, 40);
    for (int week = 0; week <= Scenario.WEEKS; week += 3) {
      svg.text(x.at(week), 276, Integer.toString(week), "middle");
    }
    svg.text(x.at(6), 292, "end of week", "middle");
    for (double share : new double[] {0, 0.5, 1}) {
      svg.text(52, y.at(share) + 4, percent(share), "end");
      svg.line(x.at(0), y.at(share), x.at(Scenario.WEEKS), y.at(share), share == 0 ? "" : "1 5");
    }
    svg.line(x.at(crossing - 1.0), 40, x.at(crossing - 1.0), 260, "");
    curve(svg, x, y, sum(learners, Cell::byWeek), "", "decisions");
    curve(svg, x, y, sum(learners, c -> c.eightOfTen().byWeek()), "6 3", "eight of ten");
    List<Double> fixed = new ArrayList<>();
    for (int week = 0; week <= Scenario.WEEKS; week++) {
      fixed.add(week < LabReport.SCHEDULE ? 0.0 : 1.0);
    }
    curve(svg, x, y, fixed, "1 3", "every three weeks");
    return svg.file();
  }

  private static List<Double> sum(List<Cell> cells, Function<Cell, List<Integer>> weekly) {
    double all = cells.stream().mapToInt(c -> c.movedUp().seen()).sum();
    List<Double> shares = new ArrayList<>(List.of(0.0));
    for (int week = 0; week < Scenario.WEEKS; week++) {
      int now = week;
      shares.add(cells.stream().mapToInt(c -> weekly.apply(c).get(now)).sum() / all);
    }
    return shares;
  }

  private static void curve(
      Svg svg, Scale x, Scale y, List<Double> shares, String dash, String words) {
    List<double[]> points = new ArrayList<>();
    for (int week = 0; week < shares.size(); week++) {
      points.add(new double[] {x.at(week), y.at(shares.get(week))});
    }
    svg.path(points, dash);
    // the three ends meet at the top, so the words stand where each curve passes one half
    int half = 0;
    while (half < shares.size() - 1 && shares.get(half) < 0.5) {
      half++;
    }
    double at = 60 + 40 * List.of("", "6 3", "1 3").indexOf(dash);
    svg.line(RIGHT - 100, at, RIGHT - 76, at, dash);
    svg.text(RIGHT - 72, at + 4, words, "start");
    svg.text(RIGHT - 72, at + 18, half == 0 ? "" : "half by week " + half, "start");
  }

  /** How often the shown interval holds the true share. */
  static String sureness(List<Cell> cells) {
    Svg svg =
        rows(
            cells.size(),
            "How often the shown interval holds the true share",
            "One line a skill, age and kind of hitter. A filled dot: after the first week. A ring:"
                + " at the last look at the step, which is the one that moved up where one did. The"
                + " dashed line is the 95 % that the interval states.");
    Scale scale = new Scale(0.8, 1, LEFT, RIGHT);
    axis(svg, scale, cells.size(), List.of(0.8, 0.85, 0.9, 0.95, 1.0), LabCharts::percent);
    svg.line(scale.at(0.95), 34, scale.at(0.95), bottom(cells.size()), "4 3");
    int y = 50;
    for (Cell cell : cells) {
      svg.text(6, y + 4, LabReport.name(cell), "start");
      svg.dot(scale.at(cell.lastLook().value()), y, false);
      svg.dot(scale.at(cell.firstLook().value()), y, true);
      y += ROW;
    }
    return svg.file();
  }

  private static Svg rows(int rows, String title, String description) {
    return new Svg(WIDTH, bottom(rows) + 24, title, description);
  }

  private static int bottom(int rows) {
    return 50 + ROW * rows;
  }

  private static void axis(
      Svg svg, Scale scale, int rows, List<Double> ticks, Function<Double, String> words) {
    svg.line(scale.from(), bottom(rows), scale.to(), bottom(rows), "");
    for (double tick : ticks) {
      svg.line(scale.at(tick), bottom(rows), scale.at(tick), bottom(rows) + 4, "");
      svg.text(scale.at(tick), bottom(rows) + 16, words.apply(tick), "middle");
    }
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** Values onto pixels; what lies outside is kept at the edge. */
  private record Scale(double least, double most, double from, double to) {
    double at(double value) {
      double kept = Math.max(least, Math.min(most, value));
      return from + (kept - least) / (most - least) * (to - from);
    }
  }
}
