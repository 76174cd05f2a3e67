package org.belthigh.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code docs/speed.md}: written by a run, and read again by the next. */
final class SpeedPage {
  /** A ratio that differs by more than this part has moved. */
  private static final double MOVED = 0.15;

  /** The row that takes an hour: it stays on the page until it is measured again. */
  static final String LARGE = "100,000 players, a player";

  private static final int RATIO = 4;
  private static final String HEAD =
      "| what | measured | beside it, in the same run | ratio | target | met |";

  private SpeedPage() {}

  /**
   * The page.
   *
   * @param kept lines of rows that were measured before and not now
   */
  static String text(String machine, String command, List<Row> rows, List<String> kept) {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Speed

        Medians, and lowest to highest in brackets, of one run of `%s`, which writes this page. Times depend on
        the machine; ratios hold from one to the next, since both sides were measured in the same run. Clubs and
        children are made up, five weeks of logs behind them (seed 20270405).

        %s

        """
            .formatted(command, machine));
    page.append(HEAD).append("\n|---|---|---|---|---|---|\n");
    rows.forEach(row -> page.append(row.line()).append('\n'));
    kept.forEach(line -> page.append(line).append('\n'));
    page.append(
        """

        ## How it is measured
        - Cold rows are whole processes by the launcher `target/belthigh`, from start to exit, each into an
          empty folder; beside them a JVM with the same flags that prints hello.
        - Warm rows are JMH, one thread, in JVMs of their own: nanoseconds or milliseconds an operation, divided
          by the players, rows or pages in it. The decisions by hand give the same verdicts as the rules; the row
          "decide" puts them in the rules' place by adding and taking away, since all else is the same code. Holds
          and arms are not in it.
        - The pages are the packet of a group of 14. The floor deflates all its streams again, at the same level.
        - The peers print the words of our cards and home sheets, a paragraph a line, a document for each player,
          tagged, with a font that is embedded; OpenPDF every line and shape of ours too, openhtmltopdf nine squares a
          page. Neither has a table or works out where anything goes but lines below each other: they do less.
        - Reading beside the CSV library: the library takes every cell of the same logs out of the same files and
          understands nothing of them.
        - The row of 100,000 players takes an hour, with `-Dspeed.large=true`; a run without it keeps the row, with
          what it was measured beside.

        Where the time goes, and what was tried in vain: [decision 6](decisions/0006-speed.md).
        """);
    return page.toString();
  }

  /** The line of the row that takes an hour; none where there is none. */
  static List<String> large(Path page) throws IOException {
    return Files.exists(page)
        ? Files.readAllLines(page).stream().filter(l -> l.startsWith("| " + LARGE)).toList()
        : List.of();
  }

  /** The ratios of a page, by row; none where there is no such page. */
  static Map<String, Double> ratios(Path page) throws IOException {
    Map<String, Double> ratios = new LinkedHashMap<>();
    if (!Files.exists(page)) {
      return ratios;
    }
    for (String line : Files.readAllLines(page)) {
      String[] cells = line.split("\\|", -1);
      if (cells.length > RATIO && cells[RATIO].strip().matches("[0-9][0-9.,]*")) {
        String ratio = cells[RATIO].strip().replace(",", "");
        ratios.put(cells[1].strip(), Double.valueOf(ratio));
      }
    }
    return ratios;
  }

  /** What moved between two runs, a line each. */
  static List<String> moved(Map<String, Double> before, Map<String, Double> now) {
    List<String> lines = new ArrayList<>();
    now.forEach(
        (what, ratio) -> {
          Double old = before.get(what);
          if (old == null) {
            lines.add(what + ": new, " + Sample.number(ratio));
          } else if (Math.abs(ratio / old - 1) > MOVED) {
            lines.add(
                what + ": " + Sample.number(old) + " before, " + Sample.number(ratio) + " now");
          }
        });
    before.keySet().stream()
        .filter(what -> !now.containsKey(what))
        .forEach(what -> lines.add(what + ": not measured this time"));
    return lines;
  }
}
