package org.belthigh.handout.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Black ink on a page: text, rules and shapes.
 *
 * <p>Only a {@link Canvas} gives one out, and only inside marked content.
 */
final class Ink {
  private static final double HATCH = 0.4;
  private static final float[] SOLID = {};
  private static final float[] DASHES = {3, 2.5f};

  private interface Stroke {
    void run() throws IOException;
  }

  private final PDPageContentStream out;
  private final Fonts fonts;
  private final double paperHeight;
  private double weight = -1;

  Ink(PDPageContentStream out, Fonts fonts, double paperHeight) {
    this.out = out;
    this.fonts = fonts;
    this.paperHeight = paperHeight;
  }

  void text(Line line, double x, double baseline, double size) {
    run(
        () -> {
          out.beginText();
          out.newLineAtOffset(round(x), up(baseline));
          int last = line.runs().size() - 1;
          for (int i = 0; i <= last; i++) {
            Text.Run run = line.runs().get(i);
            out.setFont(fonts.of(run.face()), (float) size);
            out.showText(i == last && line.goesOn() ? run.text() + " " : run.text());
          }
          out.endText();
        });
  }

  void rule(double fromX, double fromY, double toX, double toY, double weight) {
    run(
        () -> {
          weight(weight);
          out.moveTo(round(fromX), up(fromY));
          out.lineTo(round(toX), up(toY));
          out.stroke();
        });
  }

  void dashes(double fromX, double fromY, double toX, double toY, double weight) {
    run(() -> out.setLineDashPattern(DASHES, 0));
    rule(fromX, fromY, toX, toY, weight);
    run(() -> out.setLineDashPattern(SOLID, 0));
  }

  void frame(double x, double top, double width, double height, double weight) {
    run(
        () -> {
          weight(weight);
          out.addRect(round(x), up(top + height), round(width), round(height));
          out.stroke();
        });
  }

  void block(double x, double top, double width, double height) {
    run(
        () -> {
          out.addRect(round(x), up(top + height), round(width), round(height));
          out.fill();
        });
  }

  /** White paper again, under a label that stands on lines. */
  void blank(double x, double top, double width, double height) {
    run(() -> out.setNonStrokingColor(1f));
    block(x, top, width, height);
    run(() -> out.setNonStrokingColor(0f));
  }

  /** A path through points given as x, y, x, y …. */
  void path(double[] points, boolean closed, boolean filled, double weight) {
    run(
        () -> {
          weight(weight);
          out.moveTo(round(points[0]), up(points[1]));
          for (int i = 2; i < points.length; i += 2) {
            out.lineTo(round(points[i]), up(points[i + 1]));
          }
          finish(closed, filled);
        });
  }

  private void finish(boolean closed, boolean filled) throws IOException {
    if (closed) {
      out.closePath();
    }
    if (filled) {
      out.fillAndStroke();
    } else {
      out.stroke();
    }
  }

  void circle(double x, double y, double radius, boolean filled, double weight) {
    // distance of the control points that brings four Bézier arcs closest to a circle
    double k = radius * 0.5523;
    run(
        () -> {
          weight(weight);
          out.moveTo(round(x + radius), up(y));
          arc(x + radius, y - k, x + k, y - radius, x, y - radius);
          arc(x - k, y - radius, x - radius, y - k, x - radius, y);
          arc(x - radius, y + k, x - k, y + radius, x, y + radius);
          arc(x + k, y + radius, x + radius, y + k, x + radius, y);
          finish(true, filled);
        });
  }

  private void arc(double x1, double y1, double x2, double y2, double x3, double y3)
      throws IOException {
    out.curveTo(round(x1), up(y1), round(x2), up(y2), round(x3), up(y3));
  }

  /**
   * Slanting lines across a rectangle; they meet those of a rectangle next to it.
   *
   * @param pitch distance between the lines along x, in points
   */
  void hatch(double x, double top, double width, double height, double pitch) {
    double bottom = top + height;
    double right = x + width;
    // lines x + y = c, each cut off at the edges of the rectangle
    run(
        () -> {
          weight(HATCH);
          for (double c = Math.ceil((x + top) / pitch) * pitch; c < right + bottom; c += pitch) {
            double fromX = Math.max(x, c - bottom);
            double toX = Math.min(right, c - top);
            out.moveTo(round(fromX), up(c - fromX));
            out.lineTo(round(toX), up(c - toX));
          }
          out.stroke();
        });
  }

  /** What {@code drawing} draws, smaller around a corner that stays where it is. */
  void shrunk(double x, double top, double factor, Runnable drawing) {
    float still = (float) (1 - factor);
    run(
        () -> {
          out.saveGraphicsState();
          out.transform(
              new Matrix((float) factor, 0, 0, (float) factor, still * round(x), still * up(top)));
        });
    drawing.run();
    run(out::restoreGraphicsState);
    weight = -1;
  }

  private void weight(double wanted) throws IOException {
    if (weight != wanted) {
      out.setLineWidth((float) wanted);
      weight = wanted;
    }
  }

  private float up(double y) {
    return round(paperHeight - y);
  }

  private static float round(double length) {
    return Math.round(length * 100) / 100f;
  }

  private static void run(Stroke stroke) {
    try {
      stroke.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
