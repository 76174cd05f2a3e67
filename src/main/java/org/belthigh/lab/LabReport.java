package org.belthigh.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.belthigh.model.Share;
import org.belthigh.model.Skill;

/** The lab's page: tables in Markdown, and charts as SVG. */
public final class LabReport {
  /** Weeks between two moves of a fixed schedule. */
  static final int SCHEDULE = 3;

  private static final double BOUND = 0.05;
  private static final double TARGET = 1.3;

  private final List<Cell> cells;
  private final boolean charts;
  private final List<String> lines = new ArrayList<>();

  private LabReport(List<Cell> cells, boolean charts) {
    this.cells = cells;
    this.charts = charts;
  }

  /**
   * The page alone, without its charts.
   *
   * @param cells what {@link Trial#of} asked for, of any skills and ages
   * @param notJudged skills and ages at which nobody is judged, such as {@code send 7-8}
   * @param command how it was made
   */
  public static String page(List<Cell> cells, List<String> notJudged, String command) {
    return new LabReport(cells, false).page(notJudged, command);
  }

  /** The page and its charts, by path. */
  public static Map<String, String> files(
      List<Cell> cells, List<String> notJudged, String command) {
    LabReport report = new LabReport(cells, true);
    Map<String, String> files = new TreeMap<>();
    files.put("lab.md", report.page(notJudged, command));
    files.put("lab/errors.svg", LabCharts.errors(report.bounds()));
    files.put(
        "lab/tosses.svg", LabCharts.tosses(report.books(Scenario.Rhythm.DAILY), report.atMark()));
    files.put("lab/learning.svg", LabCharts.learning(report.learners(6, Trial.USUAL)));
    files.put("lab/sureness.svg", LabCharts.sureness(report.bounds()));
    return files;
  }

  /** Skill, age and hitter in words. */
  static String name(Cell cell) {
    String who =
        switch (cell.scenario().hitter()) {
          case TAKES_AT_FLOOR -> ", takes at floor";
          case CHASES_AT_FLOOR -> ", chases at floor";
          case TAKES_AT_MARK -> ", takes alone";
          case CHASES_AT_MARK -> ", chases alone";
          case AT_FLOOR -> ", at floor";
          case SLUMPING, BETWEEN -> "";
          default -> ", at mark";
        };
    return cell.trial().skill().id() + " " + cell.trial().band().id() + who;
  }

  private List<Cell> real(Predicate<Scenario> which) {
    return cells.stream().filter(c -> !c.trial().plain() && which.test(c.scenario())).toList();
  }

  private static boolean usual(Scenario s) {
    return s.tossesADay() == Trial.USUAL
        && s.misread() == 0
        && s.rhythm() == Scenario.Rhythm.FIELD
        && !s.hitter().streaky();
  }

  private List<Cell> atFloor() {
    return real(s -> usual(s) && s.hitter().atFloor());
  }

  private List<Cell> atMark() {
    return real(s -> usual(s) && s.hitter() == Hitter.AT_MARK);
  }

  private List<Cell> bounds() {
    List<Cell> bounds = new ArrayList<>(atFloor());
    bounds.addAll(atMark());
    return bounds;
  }

  private List<Cell> books(Scenario.Rhythm rhythm) {
    return cells.stream()
        .filter(c -> c.trial().plain() && c.scenario().rhythm() == rhythm)
        .toList();
  }

  private List<Cell> learners(int crossing, int tossesADay) {
    if (crossing == 1) {
      return real(s -> Scenario.of(Hitter.AT_MARK, tossesADay).equals(s));
    }
    return real(s -> s.crossing() == crossing && s.tossesADay() == tossesADay);
  }

  private String page(List<String> notJudged, String command) {
    say("# The lab");
    say("Made by `" + command + "`; do not edit.");
    say(
        "Simulated hitters whose true skill is known, so that a wrong decision can be counted. A"
            + " season has 12 weeks with two practice days. The logs of each season go through the"
            + " stages that also make the cards, which look at them week by week. Each row begins"
            + " on the step where the age begins. Marks and floors are ours, common practice, with"
            + " no published source; so are the hitters. Where a row has fewer seasons, its"
            + " interval says how much it knows.");
    say(
        "Beside each figure stand two plain ways to decide. *8 of 10*: each week, move up when"
            + " eight of the last ten tosses were good (of each kind, where two are counted)."
            + " *Every 3 weeks*: a step each third week, whatever is seen.");
    if (!notJudged.isEmpty()) {
      say("Not judged, only played: " + String.join(", ", notJudged) + ".");
    }
    floors();
    marks();
    books();
    learning();
    slumps();
    others();
    sureness();
    return String.join("\n", lines) + "\n";
  }

  private void say(String paragraph) {
    lines.add(paragraph);
    lines.add("");
  }

  private void chart(String name, String words) {
    if (charts) {
      say("![" + words + "](lab/" + name + ".svg)");
    }
  }

  private void floors() {
    say("## At the floor: every move up is false");
    worst(atFloor(), Cell::movedUp, "false move-up");
    chart("errors", "Wrong decisions over a season, against the bound of 5 %");
    table(
        atFloor(),
        List.of("seasons", "moved up (95 %)", "told to firm up", "8 of 10", "every 3 weeks"),
        c ->
            List.of(
                Integer.toString(c.movedUp().seen()),
                share(c.movedUp()),
                percent(c.firmedUp()),
                percent(c.eightOfTen().movedUp()),
                "100 %"));
  }

  private void marks() {
    say("## At the mark: every firm-up is false");
    worst(atMark(), Cell::firmedUp, "false firm-up");
    say(
        "Tosses are counted to the end of the day on which the step was proved, since decisions"
            + " are looked at once a day and ask for two days. Wald's number is that of his test at"
            + " errors of 5 % both ways, looked at after every toss, overshoot left out; for two"
            + " kinds, twice that of the slower one. The real test lets old tosses fade and keeps a"
            + " fifth of its trust for a later beginning.");
    table(
        atMark(),
        List.of(
            "seasons",
            "firmed up (95 %)",
            "never moved up (95 %)",
            "tosses",
            "Wald",
            "ratio",
            "half by week",
            "8 of 10: never",
            "tosses",
            "every 3 weeks: never"),
        c ->
            List.of(
                Integer.toString(c.movedUp().seen()),
                share(c.firmedUp()),
                share(c.missed()),
                number(c.meanTosses()),
                number(c.wald()),
                ratio(c),
                week(c.medianWeek()),
                percent(1 - c.eightOfTen().movedUp().value()),
                number(c.eightOfTen().meanTosses()),
                "0 %"));
  }

  private void books() {
    say("## The test itself, against Wald's number");
    say(
        "The same stages without fading and without later beginnings, at the mark. *Each toss*: one"
            + " toss a day for half a year, so that the test is looked at after each. *Each"
            + " day*: 24 tosses of a kind a day, looked at in the evening, two days at the least."
            + " For choose, each share is tried alone (its own tosses against its own number), then"
            + " both together.");
    List<Cell> single = books(Scenario.Rhythm.DAILY);
    single.stream()
        .filter(c -> c.trial().skill() != Skill.CHOOSE || alone(c))
        .max(Comparator.comparingDouble(Cell::ratio))
        .ifPresent(
            c ->
                say(
                    String.format(
                        Locale.ROOT,
                        "Looked at after each toss, a single share takes at most %.2f times Wald's"
                            + " number (%s); asked for is at most %.1f. The test stops for the mark"
                            + " at ln 20 in place of ln 19, and goes on where Wald would have"
                            + " stopped at the floor. By day it is more, for the shortest proof"
                            + " there is takes two days, 48 tosses.",
                        c.ratio(),
                        name(c),
                        TARGET)));
    chart("tosses", "Tosses to a right move-up, as a multiple of Wald's number");
    List<Cell> days = books(Scenario.Rhythm.FIELD);
    table(
        single,
        List.of(
            "seasons",
            "tosses, each toss",
            "Wald",
            "ratio",
            "tosses, each day",
            "ratio",
            "8 of 10, weekly",
            "every 3 weeks"),
        c -> {
          Cell day = days.stream().filter(d -> beside(d, c)).findFirst().orElseThrow();
          double schedule = 2.0 * SCHEDULE * Trial.MANY * kinds(c);
          return List.of(
              Integer.toString(c.movedUp().seen()),
              number(c.meanTosses()),
              number(c.wald()),
              ratio(c),
              number(day.meanTosses()),
              ratio(day),
              number(day.eightOfTen().meanTosses() * kinds(c) / kinds(day.trial())),
              number(schedule));
        });
  }

  private static boolean beside(Cell one, Cell other) {
    return one.trial().skill() == other.trial().skill()
        && one.trial().band() == other.trial().band()
        && one.scenario().hitter() == other.scenario().hitter();
  }

  private static boolean alone(Cell cell) {
    return cell.scenario().hitter().alone().isPresent();
  }

  private static int kinds(Trial trial) {
    return trial.skill() == Skill.CHOOSE ? 2 : 1;
  }

  private static int kinds(Cell cell) {
    return alone(cell) ? 1 : kinds(cell.trial());
  }

  private void learning() {
    say("## Learning");
    say(
        "A learner begins at the floor and gets better by the same amount each week, up to a"
            + " quarter past the mark, which is reached at the beginning of the week named; in week"
            + " 1 it is a hitter at the mark from the start. *Too soon*: moved up on a card printed"
            + " before that. *Wait*: weeks from there to the card that moves up, over those that"
            + " move up later. *Wrong step*: weeks between the two, whichever comes first; to the"
            + " end of the season where there is no card. All skills and ages together.");
    chart("learning", "Learners moved up by the end of each week");
    lines.add(
        "| mark in week | tosses a day | seasons | too soon | never | wait | wrong step | 8 of 10:"
            + " too soon | wait | wrong step | every 3 weeks: too soon | wait | wrong step |");
    lines.add("|" + "---|".repeat(13));
    for (int tosses : new int[] {Trial.USUAL, Trial.MANY}) {
      for (int crossing = 1; crossing <= Scenario.WEEKS; crossing++) {
        learner(learners(crossing, tosses), crossing, tosses);
      }
    }
    lines.add("");
    for (int tosses : new int[] {Trial.USUAL, Trial.MANY}) {
      verdict(tosses);
    }
    say(
        "A schedule knows nothing and so never waits for proof: whoever reaches the mark just"
            + " before its day is met at once, and whoever does not is moved up all the same. Proof"
            + " costs tosses. Wald's test, which needs the fewest at these errors, would take some"
            + " 32, more than a week of two days with 12.");
  }

  private void learner(List<Cell> own, int crossing, int tosses) {
    if (own.isEmpty()) {
      return;
    }
    Share early = sum(own, Cell::early);
    int schedule = SCHEDULE - (crossing - 1);
    lines.add(
        row(
            List.of(
                Integer.toString(crossing),
                Integer.toString(tosses),
                Integer.toString(early.seen()),
                share(early),
                percent(sum(own, Cell::missed)),
                decimal(wait(own, Cell::byWeek)),
                decimal(wrongStep(own, Cell::byWeek)),
                percent(sum(own, c -> c.early(c.eightOfTen().byWeek()))),
                decimal(wait(own, c -> c.eightOfTen().byWeek())),
                decimal(wrongStep(own, c -> c.eightOfTen().byWeek())),
                schedule < 0 ? "100 %" : "0 %",
                schedule < 0 ? "-" : decimal(schedule),
                decimal(Math.abs(schedule)))));
  }

  /** Where the decisions are sooner than a schedule, in words. */
  private void verdict(int tosses) {
    List<String> sooner = new ArrayList<>();
    List<String> later = new ArrayList<>();
    double ours = 0;
    double theirs = 0;
    int weeks = 0;
    for (int crossing = 1; crossing <= Scenario.WEEKS; crossing++) {
      List<Cell> own = learners(crossing, tosses);
      if (own.isEmpty()) {
        continue;
      }
      int schedule = SCHEDULE - (crossing - 1);
      if (schedule >= 0) {
        (wait(own, Cell::byWeek) < schedule ? sooner : later).add(Integer.toString(crossing));
      }
      ours += wrongStep(own, Cell::byWeek);
      theirs += Math.abs(schedule);
      weeks++;
    }
    say(
        String.format(
            Locale.ROOT,
            "With %d tosses a day the decisions are sooner than the schedule for whoever reaches the"
                + " mark in week %s, later in week %s; from then on the schedule is always too soon."
                + " Over all these weeks, %.1f weeks on the wrong step against %.1f.",
            tosses,
            named(sooner),
            named(later),
            ours / weeks,
            theirs / weeks));
  }

  private static String named(List<String> weeks) {
    return weeks.isEmpty() ? "none" : String.join(", ", weeks);
  }

  private static double wait(List<Cell> own, Function<Cell, List<Integer>> weekly) {
    double sum = 0;
    int late = 0;
    for (Cell cell : own) {
      List<Integer> weeks = weekly.apply(cell);
      int moved = weeks.get(weeks.size() - 1) - cell.early(weeks).made();
      sum += moved == 0 ? 0 : moved * cell.wait(weeks);
      late += moved;
    }
    return late == 0 ? Double.NaN : sum / late;
  }

  private static double wrongStep(List<Cell> own, Function<Cell, List<Integer>> weekly) {
    double sum = own.stream().mapToDouble(c -> c.wrongStep(weekly.apply(c))).sum();
    return sum / own.stream().mapToInt(c -> c.movedUp().seen()).sum();
  }

  private static Share sum(List<Cell> own, Function<Cell, Share> share) {
    return own.stream().map(share).reduce(Share.none(), Share::plus);
  }

  private void slumps() {
    say("## A slump of two weeks, and half way between floor and mark");
    say(
        "In a slump a hitter at the mark is at the floor in weeks 5 and 6. Who was moved up before"
            + " stays there; who was not may be told to firm up meanwhile. Half way, neither answer"
            + " is wrong.");
    table(
        real(s -> s.hitter() == Hitter.SLUMPING || s.hitter() == Hitter.BETWEEN),
        List.of("hitter", "moved up (95 %)", "firmed up (95 %)", "8 of 10", "every 3 weeks"),
        c ->
            List.of(
                c.scenario().hitter() == Hitter.SLUMPING ? "slump" : "half way",
                share(c.movedUp()),
                share(c.firmedUp()),
                percent(c.eightOfTen().movedUp()),
                "100 %"));
  }

  private void others() {
    say("## Few and many tosses, home, streaks, careless logs");
    say(
        "*Home*: a third day at home with as many tosses, each weighing half. *Streaks*: a fifth of"
            + " all tosses repeat the one before. *Careless*: 15 of 100 labels are written as"
            + " another one, each other label alike: the zone of a call or choice (nine others),"
            + " hard or not (one), the field (seven).");
    say(
        "The bound is promised for tosses that are independent and written as they were. A run of"
            + " good luck is not independent, and a soft hit written as hard is proof: there the"
            + " figures below are what is to be expected. A careless log cannot be told from a"
            + " different hitter by any test; it wants a second look at who writes.");
    lines.add(
        "| skill | age | tosses a day | how | at floor: moved up (95 %) | at mark: firmed up (95 %) |"
            + " never moved up | tosses | 8 of 10: at floor | every 3 weeks |");
    lines.add("|---|---|---|---|---|---|---|---|---|---|");
    for (Cell floor : real(s -> s.hitter().atFloor() && !usual(s))) {
      Scenario how = floor.scenario();
      Hitter other = how.hitter().streaky() ? Hitter.STREAKY_AT_MARK : Hitter.AT_MARK;
      Scenario twin = new Scenario(other, 0, how.tossesADay(), how.misread(), how.rhythm());
      real(twin::equals).stream()
          .filter(
              c ->
                  c.trial().skill() == floor.trial().skill()
                      && c.trial().band() == floor.trial().band())
          .forEach(mark -> pair(floor, mark));
    }
    lines.add("");
  }

  private void pair(Cell floor, Cell mark) {
    lines.add(
        row(
            List.of(
                floor.trial().skill().id(),
                floor.trial().band().id(),
                Integer.toString(floor.scenario().tossesADay()),
                how(floor.scenario()),
                share(floor.movedUp()),
                share(mark.firmedUp()),
                percent(mark.missed()),
                number(mark.meanTosses()),
                percent(floor.eightOfTen().movedUp()),
                "100 %")));
  }

  private static String how(Scenario scenario) {
    if (scenario.misread() > 0) {
      return "careless";
    }
    if (scenario.hitter().streaky()) {
      return "streaks";
    }
    return scenario.rhythm() == Scenario.Rhythm.FIELD_AND_HOME ? "home" : "steady";
  }

  private void sureness() {
    say("## The stated sureness");
    say(
        "Each card's share comes with a 95 % interval. How often does it hold the true share? After"
            + " the first week nothing has been chosen yet. The last look at a step is chosen by"
            + " what was seen, since a lucky week moves up; that is why no decision goes by the"
            + " interval. It widens as tosses grow old, so it holds more often than it says. Beside"
            + " it the plain share with twice its standard error.");
    say(
        String.format(
            Locale.ROOT,
            "Over all rows: %s after the first week, %s at the last look, %s for the plain one.",
            share(sum(bounds(), Cell::firstLook)),
            share(sum(bounds(), Cell::lastLook)),
            share(sum(bounds(), Cell::plain))));
    chart("sureness", "How often the shown interval holds the true share");
    table(
        bounds(),
        List.of("first week", "last look", "last look, plain"),
        c -> List.of(share(c.firstLook()), share(c.lastLook()), share(c.plain())));
  }

  private void worst(List<Cell> own, Function<Cell, Share> share, String what) {
    own.stream()
        .max(Comparator.comparingDouble(c -> share.apply(c).value()))
        .ifPresent(
            c ->
                say(
                    String.format(
                        Locale.ROOT,
                        "Largest %s over a season: %s, %s. The bound is %.0f %%; %d of %d rows lie"
                            + " above it.",
                        what,
                        share(share.apply(c)),
                        name(c),
                        100 * BOUND,
                        own.stream().filter(o -> share.apply(o).value() > BOUND).count(),
                        own.size())));
  }

  private void table(List<Cell> own, List<String> heads, Function<Cell, List<String>> columns) {
    List<String> all = new ArrayList<>(List.of("skill, age, hitter", "step"));
    all.addAll(heads);
    lines.add(row(all));
    lines.add("|" + "---|".repeat(all.size()));
    for (Cell cell : own) {
      List<String> row = new ArrayList<>(List.of(name(cell), cell.step()));
      row.addAll(columns.apply(cell));
      lines.add(row(row));
    }
    lines.add("");
  }

  private static String row(List<String> columns) {
    return "| " + String.join(" | ", columns) + " |";
  }

  private static String week(int week) {
    return week == 0 ? "-" : Integer.toString(week);
  }

  private static String number(double value) {
    return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%.0f", value);
  }

  private static String decimal(double value) {
    return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%.1f", value);
  }

  private static String ratio(Cell cell) {
    return Double.isNaN(cell.ratio()) ? "-" : String.format(Locale.ROOT, "%.2f", cell.ratio());
  }

  private static String percent(Share share) {
    return percent(share.value());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static String share(Share share) {
    return String.format(
        Locale.ROOT,
        "%.1f %% (%.1f-%.1f)",
        100 * share.value(),
        100 * share.low(),
        100 * share.high());
  }
}
