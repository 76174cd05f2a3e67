package org.belthigh.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.belthigh.model.Share;

/** The lab's page: tables in Markdown, and a chart of the errors as SVG. */
public final class LabReport {
  private static final double BOUND = 0.05;

  private LabReport() {}

  /**
   * The page.
   *
   * @param command how it was made
   */
  public static String markdown(List<Cell> cells, int seasons, long seed, String command) {
    List<String> lines = new ArrayList<>();
    lines.add("# The lab");
    lines.add("");
    lines.add("Made by `" + command + "`; do not edit.");
    lines.add("");
    lines.add(
        "Simulated hitters, "
            + seasons
            + " seasons a row at floor and mark with 12 tosses a day, a tenth of that in the other"
            + " rows, seed "
            + seed
            + ". Each season has 12 weeks with two practice days; the real measure and decide stages"
            + " judge it every week, with the real weights. True skill is known, so that a wrong"
            + " decision can be counted. The marks are ours, common practice, with no published"
            + " source; the bound on the error is Ville's inequality.");
    for (Hitter hitter : Hitter.values()) {
      List<Cell> own = cells.stream().filter(c -> c.hitter() == hitter).toList();
      if (!own.isEmpty()) {
        lines.add("");
        lines.addAll(table(hitter, own));
      }
    }
    lines.add("");
    lines.add(
        "Tosses are counted to the end of the day on which the step was proved, since decisions are"
            + " looked at once a day and need two days; Wald's number is for a test that is looked"
            + " at after every toss, at errors of 5 % both ways, without overshoot. \"8 of 10\" is a"
            + " weekly look at the last ten tosses. A fixed schedule of one step every three weeks"
            + " moves everybody up in week 4, whoever it is.");
    return String.join("\n", lines) + "\n";
  }

  private static List<String> table(Hitter hitter, List<Cell> cells) {
    List<String> lines = new ArrayList<>();
    lines.add("## " + title(hitter));
    lines.add("");
    lines.add(
        "| skill | age | step | tosses a day | written wrong | moved up (95 %) | firm-up seen (95 %) |"
            + " tosses to move up | Wald | ratio | median week | 8 of 10 moves up |");
    lines.add("|---|---|---|---|---|---|---|---|---|---|---|---|");
    cells.forEach(c -> lines.add(row(c)));
    return lines;
  }

  private static String title(Hitter hitter) {
    return switch (hitter) {
      case AT_FLOOR -> "At the floor: every move up is false";
      case AT_MARK -> "At the mark: every firm-up is false";
      case BETWEEN -> "Half way between floor and mark";
      case LEARNING -> "Learning: past the mark in week 6";
      case SLUMPING -> "At the mark, with a slump of two weeks";
    };
  }

  private static String row(Cell cell) {
    boolean never = Double.isNaN(cell.meanTosses());
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %d | %.0f %% | %s | %s | %s | %.0f | %s | %s | %s |",
        cell.skill().id(),
        cell.band().id(),
        cell.step(),
        cell.tossesADay(),
        100 * cell.carelessness(),
        share(cell.movedUp()),
        share(cell.firmedUp()),
        never ? "-" : String.format(Locale.ROOT, "%.0f", cell.meanTosses()),
        cell.wald(),
        never ? "-" : String.format(Locale.ROOT, "%.2f", cell.meanTosses() / cell.wald()),
        cell.medianWeek() == 0 ? "-" : Integer.toString(cell.medianWeek()),
        String.format(Locale.ROOT, "%.0f %%", 100 * cell.eightOfTen().value()));
  }

  private static String share(Share share) {
    return String.format(
        Locale.ROOT,
        "%.1f %% (%.1f-%.1f)",
        100 * share.value(),
        100 * share.low(),
        100 * share.high());
  }

  /** Season-long false move-ups and false firm-ups with their intervals, against the bound. */
  public static String svg(List<Cell> cells) {
    List<Cell> shown =
        cells.stream()
            .filter(c -> c.hitter() == Hitter.AT_FLOOR || c.hitter() == Hitter.AT_MARK)
            .toList();
    int row = 14;
    int height = 60 + row * shown.size();
    List<String> lines = new ArrayList<>();
    lines.add(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"t d\" width=\"640\""
            + " height=\""
            + height
            + "\" font-family=\"sans-serif\" font-size=\"10\">");
    lines.add("<title id=\"t\">Wrong decisions over a season</title>");
    lines.add(
        "<desc id=\"d\">One line a row: a dot for the share of seasons with a false move-up (at the"
            + " floor) or a false firm-up (at the mark), a bar for its 95 % interval. The dashed"
            + " line is the bound of 5 %.</desc>");
    lines.add("<rect width=\"640\" height=\"" + height + "\" fill=\"white\"/>");
    lines.add(line(x(BOUND), 20, x(BOUND), height - 20, "stroke-dasharray=\"4 3\""));
    lines.add(text(x(BOUND), 14, "5 %", "middle"));
    int y = 34;
    for (Cell cell : shown) {
      Share wrong = cell.hitter() == Hitter.AT_FLOOR ? cell.movedUp() : cell.firmedUp();
      String what = cell.hitter() == Hitter.AT_FLOOR ? "false move-up" : "false firm-up";
      lines.add(text(6, y + 3, cell.skill().id() + " " + cell.band().id() + ", " + what, "start"));
      lines.add(line(x(wrong.low()), y, x(wrong.high()), y, "stroke-width=\"2\""));
      lines.add(
          String.format(
              Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%d\" r=\"3\"/>", x(wrong.value()), y));
      y += row;
    }
    lines.add("</svg>");
    return String.join("\n", lines) + "\n";
  }

  private static double x(double share) {
    return 220 + 6000 * Math.min(share, 0.068);
  }

  private static String line(double x1, double y1, double x2, double y2, String more) {
    return String.format(
        Locale.ROOT,
        "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"black\" %s/>",
        x1,
        y1,
        x2,
        y2,
        more);
  }

  private static String text(double x, double y, String words, String anchor) {
    return String.format(
        Locale.ROOT,
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
        x,
        y,
        anchor,
        words);
  }
}
