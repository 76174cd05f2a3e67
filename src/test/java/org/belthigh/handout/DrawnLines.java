package org.belthigh.handout;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The straight lines that a page draws: boxes to tick, rules, tables, hatching, pictures. */
final class DrawnLines extends PDFGraphicsStreamEngine {
  /**
   * One line.
   *
   * @param dashed whether it has gaps on purpose
   */
  record Stroke(Point2D from, Point2D to, boolean dashed) {
    /** In points. */
    double length() {
      return from.distance(to);
    }
  }

  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Stroke> path = new ArrayList<>();
  private final double height;
  private Point2D first = new Point2D.Double();
  private Point2D at = new Point2D.Double();

  private DrawnLines(PDPage page) {
    super(page);
    height = page.getMediaBox().getHeight();
  }

  /** The lines of {@code page}, in points from its top left. */
  static List<Stroke> of(PDPage page) throws IOException {
    DrawnLines lines = new DrawnLines(page);
    lines.processPage(page);
    return lines.strokes;
  }

  private Point2D down(Point2D point) {
    return new Point2D.Double(point.getX(), height - point.getY());
  }

  private void line(Point2D to) {
    boolean dashed = getGraphicsState().getLineDashPattern().getDashArray().length > 0;
    path.add(new Stroke(down(at), down(to), dashed));
    at = to;
  }

  @Override
  public void moveTo(float x, float y) {
    at = new Point2D.Double(x, y);
    first = at;
  }

  @Override
  public void lineTo(float x, float y) {
    line(new Point2D.Double(x, y));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    at = new Point2D.Double(x3, y3);
  }

  @Override
  public void closePath() {
    line(first);
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    at = a;
    first = a;
    List.of(b, c, d, a).forEach(this::line);
  }

  @Override
  public Point2D getCurrentPoint() {
    return at;
  }

  @Override
  public void strokePath() {
    strokes.addAll(path);
    path.clear();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    strokePath();
  }

  @Override
  public void fillPath(int windingRule) {
    path.clear();
  }

  @Override
  public void endPath() {
    path.clear();
  }

  @Override
  public void clip(int windingRule) {
    // what is cut away here is drawn nowhere that a copy is looked at
  }

  @Override
  public void drawImage(PDImage image) {
    throw new AssertionError("no print has an image");
  }

  @Override
  public void shadingFill(COSName shading) {
    throw new AssertionError("no print has a shading");
  }
}
