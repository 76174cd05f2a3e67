package org.belthigh.decide;

import org.belthigh.model.Coded;

/** Which age and which count an answer goes by. */
public enum Reckoning implements Coded {
  /** The book's own age, every pitch counted: the answer that holds. */
  BOOK,
  /** The other age, every pitch counted; the stricter of both ages is shown beside the answer. */
  OTHER_AGE,
  /**
   * The book's own age, and pitches to the last batter left out where the book allows that; shown
   * beside the answer, never planned with.
   */
  LAST_BATTER
}
