package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/** Breaks pieces into pages. */
final class Galley {
  /** A piece and the distance of its top from the top of the page's body, in points. */
  record Placed(Piece piece, double top) {}

  private final double firstRoom;
  private final double laterRoom;
  private final List<List<Placed>> pages = new ArrayList<>();
  private List<Placed> page = new ArrayList<>();
  private double bottom;

  private Galley(double firstRoom, double laterRoom) {
    this.firstRoom = firstRoom;
    this.laterRoom = laterRoom;
    pages.add(page);
  }

  /**
   * Pages of pieces, in order; one empty page if there are none.
   *
   * @param firstRoom height of the first page's body, in points
   * @param laterRoom height of the other pages' bodies, in points
   * @throws Overflow if a single piece is higher than a page
   */
  static List<List<Placed>> pages(List<Piece> pieces, double firstRoom, double laterRoom) {
    Galley galley = new Galley(firstRoom, laterRoom);
    galley.placeAll(pieces);
    return galley.pages;
  }

  private void placeAll(List<Piece> pieces) {
    int brokenUpTo = 0;
    int next = 0;
    boolean breakAsked = false;
    while (next < pieces.size()) {
      if (pieces.get(next).breaksBefore()) {
        breakAsked = !page.isEmpty();
        next++;
        continue;
      }
      boolean broken = next < brokenUpTo;
      int end = endOfRun(pieces, next, broken ? Piece.Glue.TIGHT : Piece.Glue.GROUP);
      List<Piece> run = pieces.subList(next, end);
      if (breakAsked) {
        newPage();
        breakAsked = false;
      }
      if (fits(run) || fitsOnNewPage(run)) {
        placeRun(run);
        next = end;
      } else if (broken) {
        placeRun(run.subList(0, 1));
        next++;
      } else {
        brokenUpTo = end;
      }
    }
  }

  /** The end (exclusive) of the pieces from {@code start} that hold on to each other. */
  private static int endOfRun(List<Piece> pieces, int start, Piece.Glue glue) {
    int end = start;
    while (end < pieces.size() - 1
        && pieces.get(end).glue().compareTo(glue) >= 0
        && !pieces.get(end + 1).breaksBefore()) {
      end++;
    }
    return end + 1;
  }

  private void placeRun(List<Piece> run) {
    if (!fits(run)) {
      if (!fitsOnNewPage(run)) {
        Piece piece = run.get(0);
        throw new Overflow(
            piece.what(),
            pages.size(),
            Math.round(piece.height()) + " points high",
            "is higher than a page");
      }
      newPage();
    }
    for (Piece piece : run) {
      place(piece);
    }
  }

  private boolean fits(List<Piece> run) {
    return bottom + gapTo(run.get(0)) + headFor(run.get(0)) + Stack.height(run)
        <= room(pages.size()) + 0.01;
  }

  private boolean fitsOnNewPage(List<Piece> run) {
    double head = run.get(0).repeat().map(Piece::height).orElse(0.0);
    return head + Stack.height(run) <= laterRoom + 0.01;
  }

  private void place(Piece piece) {
    double gap = gapTo(piece);
    if (headFor(piece) > 0) {
      put(piece.repeat().orElseThrow(), 0);
      gap = 0;
    }
    put(piece, gap);
  }

  private void put(Piece piece, double gap) {
    page.add(new Placed(piece, bottom + gap));
    bottom += gap + piece.height();
  }

  /** Height of what is repeated above a piece if it starts a later page. */
  private double headFor(Piece piece) {
    boolean starts = page.isEmpty() && pages.size() > 1;
    return starts ? piece.repeat().map(Piece::height).orElse(0.0) : 0;
  }

  private double gapTo(Piece piece) {
    return page.isEmpty() ? 0 : Stack.gap(page.get(page.size() - 1).piece(), piece);
  }

  private double room(int pageNumber) {
    return pageNumber == 1 ? firstRoom : laterRoom;
  }

  private void newPage() {
    page = new ArrayList<>();
    pages.add(page);
    bottom = 0;
  }
}
