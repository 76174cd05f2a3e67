package org.belthigh.speed;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * What stands on one page of ours, for others to draw again: its lines of text, and its shapes.
 *
 * @param lines from top to bottom
 * @param shapes in the order in which they were drawn
 */
record DrawnPage(List<String> lines, List<Drawn> shapes) {
  DrawnPage {
    lines = List.copyOf(lines);
    shapes = List.copyOf(shapes);
  }

  /**
   * A line or a shape.
   *
   * @param width of its line in points; 0 where it is filled
   */
  record Drawn(Path2D path, float width) {}

  /** The pages of a document. */
  static List<DrawnPage> of(byte[] document) throws IOException {
    List<DrawnPage> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(document)) {
      for (int number = 1; number <= pdf.getNumberOfPages(); number++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        List<String> lines = stripper.getText(pdf).lines().filter(l -> !l.isBlank()).toList();
        Shapes shapes = new Shapes(pdf.getPage(number - 1));
        shapes.processPage(pdf.getPage(number - 1));
        pages.add(new DrawnPage(lines, shapes.all));
      }
    }
    return pages;
  }

  /** Looks on while a page is drawn. */
  private static final class Shapes extends PDFGraphicsStreamEngine {
    private final List<Drawn> all = new ArrayList<>();
    private Path2D path = new Path2D.Float();

    Shapes(PDPage page) {
      super(page);
    }

    private void draw(float width) {
      all.add(new Drawn(path, width));
      path = new Path2D.Float();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
      path.moveTo(p0.getX(), p0.getY());
      path.lineTo(p1.getX(), p1.getY());
      path.lineTo(p2.getX(), p2.getY());
      path.lineTo(p3.getX(), p3.getY());
      path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
      path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
      return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
      path.closePath();
    }

    @Override
    public void strokePath() {
      draw(getGraphicsState().getLineWidth());
    }

    @Override
    public void fillPath(int windingRule) {
      draw(0);
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      draw(0);
    }

    @Override
    public void endPath() {
      path = new Path2D.Float();
    }

    @Override
    public void drawImage(PDImage image) {
      throw new IllegalStateException("Our cards have no images");
    }

    @Override
    public void clip(int windingRule) {
      // nothing of ours is clipped
    }

    @Override
    public void shadingFill(COSName name) {
      throw new IllegalStateException("Our cards have no shadings");
    }
  }
}
