package org.belthigh.cli;

import java.util.List;
import org.belthigh.model.Problem;

/** Nothing could be done; exit status 4. */
final class NothingDone extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Nothing could be done because of {@code problems}. */
  NothingDone(List<Problem> problems) {
    super(String.join("\n", problems.stream().map(Problem::text).toList()));
  }

  /** Nothing could be done, for the reason and with the next step that {@code message} says. */
  NothingDone(String message) {
    super(message);
  }
}
