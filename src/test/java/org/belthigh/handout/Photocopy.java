package org.belthigh.handout;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A page as a poor copier gives it back: coarse dots, smeared, then black or white and nothing
 * between.
 *
 * <p>For every word the black of the copy is held against the black of a clean page of the same
 * coarseness, inside the word's own box; every line drawn (boxes to tick, rules, tables, hatching)
 * must be black along its length. What this shows: no word fades, no word fills up into a blot, and
 * its strokes stay where they were. What it does not show: that a person can read the word. Nothing
 * here reads; there is no recognition of letters, and small print that is legible to the measure
 * may not be to a tired eye.
 */
final class Photocopy {
  private static final double POINTS_PER_INCH = 72;

  /** Darker than this is black, of 0 to 255: a copier's plain setting, a little light. */
  private static final int BLACK = 150;

  /** A word keeps so much of its black, and no more than so much is added. */
  private static final double LEAST_INK = 0.6;

  private static final double MOST_INK = 1.6;

  /** Twice the black in common over all the black of both: 1 where the two are the same. */
  private static final double LEAST_ALIKE = 0.7;

  /** So much of a line stays black; an arrow's barb is eight dots long, and may lose one. */
  private static final double LEAST_LINE = 0.8;

  private static final double LEAST_DASHED = 0.4;

  private final double scale;
  private final boolean[][] clean;
  private final boolean[][] copy;
  private final List<String> lost = new ArrayList<>();

  private Photocopy(BufferedImage page, double scale) {
    this.scale = scale;
    int[][] grey = grey(page);
    this.clean = black(grey);
    this.copy = black(smeared(grey));
  }

  /**
   * The words and lines that a copy of a document loses; empty if none.
   *
   * @param dotsPerInch coarseness of the copier
   */
  static List<String> lost(byte[] pdf, int dotsPerInch) throws IOException {
    List<String> lost = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        BufferedImage page = renderer.renderImageWithDPI(i, dotsPerInch, ImageType.GRAY);
        Photocopy copy = new Photocopy(page, dotsPerInch / POINTS_PER_INCH);
        new Words(copy, i + 1).getText(document);
        DrawnLines.of(document.getPage(i)).forEach(copy::look);
        lost.addAll(copy.lost);
      }
    }
    return lost;
  }

  /** Holds one word of the copy against the clean page; the box is in points from the top left. */
  private void look(String word, double left, double top, double right, double bottom) {
    int before = 0;
    int after = 0;
    int both = 0;
    for (int y = at(top, clean.length); y < at(bottom, clean.length); y++) {
      for (int x = at(left, clean[0].length); x < at(right, clean[0].length); x++) {
        before += clean[y][x] ? 1 : 0;
        after += copy[y][x] ? 1 : 0;
        both += clean[y][x] && copy[y][x] ? 1 : 0;
      }
    }
    double alike = 2.0 * both / (before + after);
    if (after < LEAST_INK * before || after > MOST_INK * before || !(alike >= LEAST_ALIKE)) {
      lost.add("%s (black %d of %d, alike %.2f)".formatted(word, after, before, alike));
    }
  }

  /** Holds one line of the copy against what it should be: black nearly all along. */
  private void look(DrawnLines.Stroke line) {
    int steps = (int) (line.length() * scale);
    int black = 0;
    for (int i = 0; i < steps; i++) {
      double part = (i + 0.5) / steps;
      black +=
          near(
                  line.from().getX() + part * (line.to().getX() - line.from().getX()),
                  line.from().getY() + part * (line.to().getY() - line.from().getY()))
              ? 1
              : 0;
    }
    if (black < (line.dashed() ? LEAST_DASHED : LEAST_LINE) * steps) {
      lost.add(
          "a line from %s to %s (black %d of %d)".formatted(line.from(), line.to(), black, steps));
    }
  }

  /** Whether a dot there or beside it is black. */
  private boolean near(double x, double y) {
    int column = (int) (x * scale);
    int row = (int) (y * scale);
    for (int r = Math.max(0, row - 1); r <= Math.min(copy.length - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(copy[0].length - 1, column + 1); c++) {
        if (copy[r][c]) {
          return true;
        }
      }
    }
    return false;
  }

  private int at(double points, int most) {
    return (int) Math.max(0, Math.min(most, Math.round(points * scale)));
  }

  private static int[][] grey(BufferedImage page) {
    int[][] grey = new int[page.getHeight()][page.getWidth()];
    for (int y = 0; y < grey.length; y++) {
      page.getRaster().getPixels(0, y, page.getWidth(), 1, grey[y]);
    }
    return grey;
  }

  /** Each dot mixed with its neighbours: half its own, the other half theirs. */
  private static int[][] smeared(int[][] grey) {
    int[][] out = new int[grey.length][grey[0].length];
    for (int y = 0; y < grey.length; y++) {
      for (int x = 0; x < grey[0].length; x++) {
        int around = 0;
        for (int[] step : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
          int ny = Math.min(grey.length - 1, Math.max(0, y + step[1]));
          int nx = Math.min(grey[0].length - 1, Math.max(0, x + step[0]));
          around += grey[ny][nx];
        }
        out[y][x] = (4 * grey[y][x] + around) / 8;
      }
    }
    return out;
  }

  private static boolean[][] black(int[][] grey) {
    boolean[][] black = new boolean[grey.length][grey[0].length];
    for (int y = 0; y < grey.length; y++) {
      for (int x = 0; x < grey[0].length; x++) {
        black[y][x] = grey[y][x] < BLACK;
      }
    }
    return black;
  }

  /** Finds the words of one page and their boxes. */
  private static final class Words extends PDFTextStripper {
    private final Photocopy copy;

    Words(Photocopy copy, int page) {
      this.copy = copy;
      setStartPage(page);
      setEndPage(page);
    }

    @Override
    protected void writeString(String text, List<TextPosition> letters) {
      List<TextPosition> word = new ArrayList<>();
      for (TextPosition letter : letters) {
        if (letter.getUnicode().isBlank()) {
          end(word);
        } else {
          word.add(letter);
        }
      }
      end(word);
    }

    private void end(List<TextPosition> word) {
      if (word.isEmpty()) {
        return;
      }
      StringBuilder letters = new StringBuilder();
      word.forEach(l -> letters.append(l.getUnicode()));
      TextPosition first = word.get(0);
      TextPosition last = word.get(word.size() - 1);
      double size = first.getYScale();
      copy.look(
          letters.toString(),
          first.getXDirAdj(),
          first.getYDirAdj() - 0.8 * size,
          last.getXDirAdj() + last.getWidthDirAdj(),
          first.getYDirAdj() + 0.25 * size);
      word.clear();
    }
  }
}
