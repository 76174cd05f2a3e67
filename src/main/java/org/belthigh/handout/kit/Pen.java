package org.belthigh.handout.kit;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws a picture: black on white, in points from the picture's top left corner.
 *
 * <p>Nothing may reach out of the picture, and no label may touch another.
 */
public final class Pen {
  /** A line's weight and dashes. */
  public enum Stroke {
    THIN(Style.THIN, false),
    MEDIUM(Style.MEDIUM, false),
    THICK(Style.THICK, false),
    DASHED(Style.MEDIUM, true);

    private final double weight;
    private final boolean dashed;

    Stroke(double weight, boolean dashed) {
      this.weight = weight;
      this.dashed = dashed;
    }
  }

  private static final double TOLERANCE = 0.5;
  private static final double ARROW = 6;

  private final Ink ink;
  private final double left;
  private final double top;
  private final double width;
  private final double height;
  private final Style style;
  private final int page;
  private final List<Rectangle2D> labels = new ArrayList<>();

  Pen(Ink ink, double left, double top, double width, double height, Style style, int page) {
    this.ink = ink;
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
    this.style = style;
    this.page = page;
  }

  /** Width of the picture, in points. */
  public double width() {
    return width;
  }

  /** Height of the picture, in points. */
  public double height() {
    return height;
  }

  /** A straight line. */
  public void line(double fromX, double fromY, double toX, double toY, Stroke stroke) {
    double x1 = x(fromX);
    double y1 = y(fromY);
    if (stroke.dashed) {
      ink.dashes(x1, y1, x(toX), y(toY), stroke.weight);
    } else {
      ink.rule(x1, y1, x(toX), y(toY), stroke.weight);
    }
  }

  /** A straight line with a head at its end. */
  public void arrow(double fromX, double fromY, double toX, double toY, Stroke stroke) {
    double angle = Math.atan2(toY - fromY, toX - fromX);
    double backX = toX - ARROW * Math.cos(angle);
    double backY = toY - ARROW * Math.sin(angle);
    double half = ARROW * 0.4;
    line(fromX, fromY, backX, backY, stroke);
    shape(
        Stroke.THIN,
        true,
        toX,
        toY,
        backX - half * Math.sin(angle),
        backY + half * Math.cos(angle),
        backX + half * Math.sin(angle),
        backY - half * Math.cos(angle));
  }

  /** A rectangle's outline. */
  public void rect(double x, double y, double rectWidth, double rectHeight, Stroke stroke) {
    if (stroke.dashed) {
      line(x, y, x + rectWidth, y, stroke);
      line(x + rectWidth, y, x + rectWidth, y + rectHeight, stroke);
      line(x + rectWidth, y + rectHeight, x, y + rectHeight, stroke);
      line(x, y + rectHeight, x, y, stroke);
    } else {
      inside(x + rectWidth, y + rectHeight);
      ink.frame(x(x), y(y), rectWidth, rectHeight, stroke.weight);
    }
  }

  /** A rectangle filled with slanting lines. */
  public void hatch(double x, double y, double rectWidth, double rectHeight) {
    inside(x + rectWidth, y + rectHeight);
    ink.hatch(x(x), y(y), rectWidth, rectHeight, 4);
  }

  /** A rectangle filled with black. */
  public void fill(double x, double y, double rectWidth, double rectHeight) {
    inside(x + rectWidth, y + rectHeight);
    ink.block(x(x), y(y), rectWidth, rectHeight);
  }

  /** A circle's outline. */
  public void circle(double x, double y, double radius, Stroke stroke) {
    inside(x - radius, y - radius);
    inside(x + radius, y + radius);
    if (!stroke.dashed) {
      ink.circle(x(x), y(y), radius, false, stroke.weight);
      return;
    }
    int arcs = Math.max(12, (int) Math.round(radius * Math.PI / 4));
    double step = Math.PI / arcs;
    for (int i = 0; i < 2 * arcs; i += 2) {
      ink.rule(
          x(x + radius * Math.cos(i * step)),
          y(y + radius * Math.sin(i * step)),
          x(x + radius * Math.cos((i + 1) * step)),
          y(y + radius * Math.sin((i + 1) * step)),
          stroke.weight);
    }
  }

  /** A black disc. */
  public void dot(double x, double y, double radius) {
    inside(x - radius, y - radius);
    inside(x + radius, y + radius);
    ink.circle(x(x), y(y), radius, true, Style.THIN);
  }

  /**
   * Straight lines from point to point.
   *
   * @param points x, y, x, y …; at least two points
   */
  public void polyline(Stroke stroke, double... points) {
    ink.path(onPage(points), false, false, stroke.weight);
  }

  /**
   * A closed shape.
   *
   * @param filled with black
   * @param points x, y, x, y …; at least two points
   */
  public void shape(Stroke stroke, boolean filled, double... points) {
    ink.path(onPage(points), true, filled, stroke.weight);
  }

  /**
   * A word or two in the body size; blanks the paper behind it.
   *
   * @param y of the middle of the letters' height
   */
  public void label(double x, double y, Align align, String text) {
    label(x, y, align, Text.of(text), style.body());
  }

  /** A bold label; {@link #label}. */
  public void boldLabel(double x, double y, Align align, String text) {
    label(x, y, align, Text.bold(text), style.body());
  }

  /** A label in the small size, for scales that are not acted on; {@link #label}. */
  public void smallLabel(double x, double y, Align align, String text) {
    label(x, y, align, Text.of(text), style.small());
  }

  /** Width of a label, in points. */
  public double labelWidth(String text) {
    return Face.REGULAR.width(Text.of(text).plain(), style.body().type());
  }

  private void label(double x, double y, Align align, Text text, Style.Size size) {
    List<Line> lines = Typesetter.set(text, size.type(), Double.MAX_VALUE);
    if (lines.size() != 1) {
      throw new IllegalArgumentException(
          "label \"%s\": must be one line and not blank.".formatted(text));
    }
    Line line = lines.get(0);
    double from = x + align.offset(line.width(), 0);
    double capHeight = 0.72 * size.type();
    Rectangle2D place = new Rectangle2D.Double(from, y - capHeight / 2, line.width(), capHeight);
    claim(place, line);
    ink.blank(x(from) - 1, y(y) - capHeight / 2 - 1, line.width() + 2, capHeight + 2);
    // a space after it, so that labels are words of their own for who copies the text
    Line spaced = new Line(line.runs(), line.width(), true);
    ink.text(spaced, x(from), y(y) + capHeight / 2, size.type());
  }

  private void claim(Rectangle2D place, Line line) {
    if (place.getMinX() < -TOLERANCE
        || place.getMaxX() > width + TOLERANCE
        || place.getMinY() < -TOLERANCE
        || place.getMaxY() > height + TOLERANCE) {
      throw new Overflow("label", page, line.plain(), "reaches out of its picture");
    }
    for (Rectangle2D other : labels) {
      if (other.intersects(place)) {
        throw new Overflow("label", page, line.plain(), "touches another label");
      }
    }
    labels.add(place);
  }

  private double[] onPage(double... points) {
    if (points.length < 4 || points.length % 2 != 0) {
      throw new IllegalArgumentException(
          points.length + " coordinates: points are pairs, and there must be two or more.");
    }
    double[] onPage = new double[points.length];
    for (int i = 0; i < points.length; i += 2) {
      onPage[i] = x(points[i]);
      onPage[i + 1] = y(points[i + 1]);
    }
    return onPage;
  }

  private double x(double x) {
    inside(x, 0);
    return left + x;
  }

  private double y(double y) {
    inside(0, y);
    return top + y;
  }

  private void inside(double x, double y) {
    if (x < -TOLERANCE || x > width + TOLERANCE || y < -TOLERANCE || y > height + TOLERANCE) {
      throw new IllegalArgumentException(
          "picture %s × %s: the point %s, %s lies outside.".formatted(width, height, x, y));
    }
  }
}
