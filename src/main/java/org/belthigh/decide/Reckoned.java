package org.belthigh.decide;

/**
 * A fact for the rules of the pack {@code arm}: a book of the club, and a way to go by it. Public
 * only because the rules are built as a model of their own.
 *
 * @param books the book with all its editions
 * @param order its place among the books of the club, 0 for the first
 */
public record Reckoned(String books, int order, Reckoning reckoning) {
  /** Which outings' counts go into it: the league's own of that book, or every pitch. */
  public String count() {
    return reckoning == Reckoning.LAST_BATTER ? books : Threw.EVERY_PITCH;
  }
}
