package org.belthigh.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.belthigh.model.Problem;

/** The problems of one file, in which the same trouble on many rows is told once. */
final class Notes {
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Repeat> repeats = new LinkedHashMap<>();

  private record Repeat(int rows, IntFunction<Problem> told) {}

  void add(Problem problem) {
    problems.add(problem);
  }

  /**
   * Notes a trouble that may come back on later rows.
   *
   * @param key the same for the same trouble
   * @param told makes the problem from the number of rows; the first row's is kept
   */
  void again(String key, IntFunction<Problem> told) {
    repeats.merge(key, new Repeat(1, told), (a, b) -> new Repeat(a.rows + 1, a.told));
  }

  /** Everything noted. */
  List<Problem> all() {
    List<Problem> all = new ArrayList<>(problems);
    repeats.values().forEach(r -> all.add(r.told.apply(r.rows)));
    return all;
  }

  /** {@code 1 row}, {@code 3 rows}. */
  static String rows(int count) {
    return count + (count == 1 ? " row" : " rows");
  }
}
