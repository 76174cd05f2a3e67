package org.belthigh.intake;

import java.util.List;
import org.belthigh.model.Problem;

/** Nothing could be done with a club folder: no folder, no usable club file, no usable roster. */
public final class Unusable extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  Unusable(List<Problem> problems) {
    super(problems.isEmpty() ? "" : problems.get(0).text());
    this.problems = problems.stream().sorted(Causes.FIRST).toList();
  }

  /** Why, the causes first; at least one. */
  public List<Problem> problems() {
    return problems;
  }
}
