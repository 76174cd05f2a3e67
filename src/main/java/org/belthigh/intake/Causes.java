package org.belthigh.intake;

import java.util.Comparator;
import org.belthigh.model.Problem;

/**
 * The order in which problems are told, so that a cause stands before what follows from it: the
 * club file, then the roster, then all that is checked against the two.
 */
final class Causes {
  static final Comparator<Problem> FIRST =
      Comparator.comparing((Problem p) -> rank(p.origin().file()))
          .thenComparing(Comparator.naturalOrder());

  private Causes() {}

  private static int rank(String file) {
    if (file.endsWith("club.yaml")) {
      return 0;
    }
    return file.endsWith(" sheet roster") || ClubFiles.base(file).equals("roster") ? 1 : 2;
  }
}
