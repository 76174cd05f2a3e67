package org.belthigh.handout.kit;

/**
 * A paper's measures as a print counts them: in points of the usual print, of which a larger print
 * has fewer to a sheet.
 *
 * @param width of the sheet
 * @param height of the sheet
 * @param margin white edge on all four sides
 * @param scale points on paper to a point of the print, 1 or more
 */
record Frame(double width, double height, double margin, double scale) {
  /** {@code paper} for a print that is {@code scale} times as large as usual. */
  static Frame of(Paper paper, double scale) {
    return new Frame(paper.width() / scale, paper.height() / scale, Paper.MARGIN / scale, scale);
  }

  /** Width between the margins. */
  double textWidth() {
    return width - 2 * margin;
  }

  /** A line to cut along, at the right edge. */
  void cutLine(Ink ink) {
    ink.dashes(width, margin, width, height - margin, Style.THIN);
  }
}
