package org.belthigh.audit;

import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** What is wrong with one plan, as far as it was looked through. */
final class Findings {
  private static final String NEXT = "Do not hand this plan out. Write it anew.";

  private final String file;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * @param file how messages name the plan
   */
  Findings(String file) {
    this.file = file;
  }

  /** The file cannot be read at all. */
  void unreadable(int line, String found) {
    problems.add(
        Problem.fault(
            Origin.of(file, line), "", found, "a plan is written by belthigh plan", NEXT));
  }

  /** Something about the form of the plan. */
  void fault(String where, String found, String allowed) {
    problems.add(Problem.fault(Origin.of(file), where, found, allowed, NEXT));
  }

  /** A limit that is not kept, and where the limit comes from. */
  void broken(String where, String found, String limit, String source) {
    fault(where, found, limit + " (" + source + ")");
  }

  /** All, in the order found, each once. */
  List<Problem> all() {
    return problems.stream().distinct().toList();
  }
}
