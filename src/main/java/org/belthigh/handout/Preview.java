package org.belthigh.handout;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The first page of a print as a picture, for who would rather look before printing. */
public final class Preview {
  private static final int DOTS_PER_INCH = 100;

  private Preview() {}

  /**
   * The first page of a document, in grey, at 100 dots an inch.
   *
   * @return a PNG file
   * @throws UncheckedIOException if {@code pdf} is no document with a page
   */
  public static byte[] png(byte[] pdf) {
    return png(pdf, DOTS_PER_INCH);
  }

  /** As {@link #png(byte[])}, at another size. */
  public static byte[] png(byte[] pdf, int dotsPerInch) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage page =
          new PDFRenderer(document).renderImageWithDPI(0, dotsPerInch, ImageType.GRAY);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(page, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
