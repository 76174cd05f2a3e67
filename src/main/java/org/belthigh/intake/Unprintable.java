package org.belthigh.intake;

import org.belthigh.model.Origin;
import org.belthigh.model.Problem;

/** Words in letters that the faces of the sheets do not have. */
final class Unprintable {
  private static final String ALLOWED =
      "sheets have Latin, Greek, Cyrillic and Hebrew letters and common signs";

  private Unprintable() {}

  /** What is said of a text, in {@code rows} rows, of which sheets cannot show every letter. */
  static Problem told(Origin origin, String column, int rows) {
    return Problem.warning(
        origin,
        column,
        "letters stand in "
            + Notes.rows(rows)
            + " that sheets cannot show; a box stands for them there",
        ALLOWED,
        "Maybe write it in letters that sheets have.");
  }

  /** What is said of a child whose name sheets cannot show. */
  static Problem name(Origin origin, String id, String shown) {
    return Problem.warning(
        origin,
        "first_name",
        "the name of " + id + " has letters that sheets cannot show, so sheets say '" + shown + "'",
        ALLOWED,
        "Maybe write the name as the family writes it in such letters.");
  }
}
