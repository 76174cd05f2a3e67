package org.belthigh.handout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/**
 * A page as a picture in sixteen greys, small enough to keep, and held against another.
 *
 * <p>Drawn by PDFBox from fonts that the page carries, so machines differ only in how they smooth
 * edges. Every page of the demo's Under 10 at 56 dots an inch, drawn by Java 17 and by Java 25,
 * differs by at most 9 of 255 in any dot; with a renderer set to a coarser grid (3 bits a dot each
 * way), by at most 32, which is two of the fifteen steps between black and white. So two steps are
 * allowed, in any number of dots, and not one dot may differ by more. A full stop is more than
 * that.
 */
final class PagePicture {
  /** Steps of grey between black and white. */
  static final int STEPS = 15;

  /** So many steps of grey are how a machine draws, and no change. */
  static final int TOLERANCE = 2;

  private static final int BITS = 4;
  private static final int MARK = 2;
  private static final int GAP = 8;
  private static final Color CHANGED = new Color(0xD0, 0x00, 0x00);

  private final int[][] greys;

  private PagePicture(int[][] greys) {
    this.greys = greys;
  }

  /**
   * A picture from a PNG file; in grey, of any depth.
   *
   * @throws UncheckedIOException if it is no picture
   */
  static PagePicture read(byte[] png) {
    try {
      return of(ImageIO.read(new ByteArrayInputStream(png)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Rounds each dot to the nearest of the sixteen greys. */
  static PagePicture of(BufferedImage image) {
    boolean indexed = image.getColorModel() instanceof IndexColorModel;
    Raster dots = image.getRaster();
    int[][] greys = new int[image.getHeight()][image.getWidth()];
    for (int y = 0; y < greys.length; y++) {
      for (int x = 0; x < greys[y].length; x++) {
        int grey = indexed ? image.getRGB(x, y) & 0xff : dots.getSample(x, y, 0);
        greys[y][x] = Math.round(grey * STEPS / 255f);
      }
    }
    return new PagePicture(greys);
  }

  /** As a PNG file of four bits a dot. */
  byte[] png() {
    byte[] levels = new byte[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      levels[i] = (byte) (i * 255 / STEPS);
    }
    BufferedImage image =
        new BufferedImage(
            width(),
            height(),
            BufferedImage.TYPE_BYTE_BINARY,
            new IndexColorModel(BITS, levels.length, levels, levels, levels));
    for (int y = 0; y < height(); y++) {
      image.getRaster().setSamples(0, y, width(), 1, 0, greys[y]);
    }
    return file(image);
  }

  /** Whether another picture shows the same page; of another size, it does not. */
  boolean like(PagePicture other) {
    if (width() != other.width() || height() != other.height()) {
      return false;
    }
    for (int y = 0; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        if (changed(other, x, y)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * For a person to see what changed: this picture as the one approved, then the other, then the
   * other again, faded, with red where it differs.
   *
   * @return a PNG file
   */
  byte[] beside(PagePicture now) {
    int width = Math.max(width(), now.width());
    int height = Math.max(height(), now.height());
    BufferedImage image =
        new BufferedImage(3 * width + 2 * GAP, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.DARK_GRAY);
    pen.fillRect(0, 0, image.getWidth(), height);
    paint(image, 0, 0);
    now.paint(image, width + GAP, 0);
    int left = 2 * (width + GAP);
    now.paint(image, left, STEPS / 2);
    pen.setColor(CHANGED);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (changed(now, x, y)) {
          pen.fillRect(left + x - MARK / 2, y - MARK / 2, MARK, MARK);
        }
      }
    }
    pen.dispose();
    return file(image);
  }

  private boolean changed(PagePicture other, int x, int y) {
    boolean both = has(x, y) && other.has(x, y);
    return both
        ? Math.abs(greys[y][x] - other.greys[y][x]) > TOLERANCE
        : has(x, y) || other.has(x, y);
  }

  /**
   * @param lighter steps of grey that black is raised by
   */
  private void paint(BufferedImage image, int left, int lighter) {
    for (int y = 0; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        int grey = (lighter + greys[y][x] * (STEPS - lighter) / STEPS) * 255 / STEPS;
        image.setRGB(left + x, y, new Color(grey, grey, grey).getRGB());
      }
    }
  }

  private boolean has(int x, int y) {
    return y < height() && x < width();
  }

  private int width() {
    return greys[0].length;
  }

  private int height() {
    return greys.length;
  }

  private static byte[] file(BufferedImage image) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
