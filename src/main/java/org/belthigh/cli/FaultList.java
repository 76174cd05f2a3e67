package org.belthigh.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.files.Csv;
import org.belthigh.files.Output;
import org.belthigh.model.Problem;
import picocli.CommandLine.Option;

/** All that is wrong in the input: on screen file by file, and as a list to work through. */
final class FaultList {
  private static final List<String> COLUMNS =
      List.of("file", "line", "column", "weight", "about", "found", "allowed", "suggestion");

  @Option(
      names = "--faults",
      paramLabel = "FILE.csv",
      description = "Write the list of faults there too, to work through it in a spreadsheet.")
  private Path file;

  /** Whether the list is asked for as a file. */
  boolean wanted() {
    return file != null;
  }

  /** Prints {@code problems} grouped by file, each group under its count. */
  static void print(List<Problem> problems, PrintWriter err) {
    Map<String, List<Problem>> byFile =
        problems.stream()
            .collect(
                Collectors.groupingBy(
                    p -> p.origin().file(), LinkedHashMap::new, Collectors.toList()));
    byFile.forEach(
        (name, told) -> {
          err.println(name + ": " + counts(told));
          told.forEach(p -> err.println(p.text()));
          err.println();
        });
  }

  private static String counts(List<Problem> problems) {
    long faults = problems.stream().filter(Problem::isFault).count();
    long remarks = problems.size() - faults;
    return Stream.of(
            faults == 0 ? "" : count(faults, "fault", "faults"),
            remarks == 0 ? "" : count(remarks, "remark", "remarks"))
        .filter(c -> !c.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** {@code 1 fault}, {@code 3 faults}. */
  static String count(long n, String one, String more) {
    return n + " " + (n == 1 ? one : more);
  }

  /**
   * Writes the list where {@code --faults} asks for it.
   *
   * @throws org.belthigh.files.Unwritable if it cannot be written there
   */
  void write(List<Problem> problems) {
    if (file == null) {
      return;
    }
    Path whole = file.toAbsolutePath().normalize();
    List<List<String>> rows = new ArrayList<>(List.of(COLUMNS));
    problems.forEach(p -> rows.add(row(p)));
    try (Output output = Output.into(whole.getParent())) {
      output.put(whole.getFileName().toString(), Csv.text(rows).getBytes(StandardCharsets.UTF_8));
      output.commit();
    }
  }

  private static List<String> row(Problem problem) {
    return Stream.of(
            problem.origin().file(),
            number(problem.origin().line()),
            number(problem.origin().column()),
            problem.weight().id(),
            problem.subject(),
            problem.found(),
            problem.allowed(),
            problem.maybe())
        .map(Csv::harmless)
        .toList();
  }

  private static String number(int place) {
    return place == 0 ? "" : Integer.toString(place);
  }
}
