package org.belthigh.audit;

import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** What is wrong with the prints of one plan. */
final class PaperFindings {
  private static final String NEXT = "Do not hand this sheet out. Plan and print anew.";

  private final String file;
  private final List<Problem> problems = new ArrayList<>();

  /**
   * @param file how messages name the plan
   */
  PaperFindings(String file) {
    this.file = file;
  }

  /**
   * A print that must not be handed out.
   *
   * @param where path of the print, and the player's id where it is about one
   */
  void fault(String where, String found, String allowed) {
    problems.add(Problem.fault(Origin.of(file), where, found, allowed, NEXT));
  }

  /** Something that does no harm as long as it stays where it is. */
  void remark(String where, String found, String allowed, String maybe) {
    problems.add(Problem.warning(Origin.of(file), where, found, allowed, maybe));
  }

  /** All, in the order found, each once. */
  List<Problem> all() {
    return problems.stream().distinct().toList();
  }
}
