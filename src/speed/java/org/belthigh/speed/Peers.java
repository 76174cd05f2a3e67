package org.belthigh.speed;

import com.lowagie.text.Document;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfWriter;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.geom.PathIterator;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/**
 * A card on tagged paper by two general-purpose libraries: the same words, a paragraph a line, and
 * by the first of them every line and shape that our card draws. Neither has a table, so what they
 * have to do is rather less.
 */
final class Peers {
  private static final String FONT = "/liberation/LiberationSans-Regular.ttf";
  private static final int SIZE = 8;

  private final byte[] font;
  private final BaseFont parsed;

  Peers() throws IOException {
    try (InputStream in = Peers.class.getResourceAsStream(FONT)) {
      font = in.readAllBytes();
    }
    // parsed once and shared, as ours is
    parsed = BaseFont.createFont(FONT, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, font, null);
  }

  /** With OpenPDF. */
  byte[] openPdf(List<DrawnPage> pages) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document = new Document(PageSize.LETTER, 40, 40, 40, 40);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    writer.setTagged();
    document.open();
    Font type = new Font(parsed, SIZE);
    for (DrawnPage page : pages) {
      document.newPage();
      for (String line : page.lines()) {
        document.add(new Paragraph(SIZE + 1F, line, type));
      }
      draw(page, writer.getDirectContent());
    }
    document.close();
    return out.toByteArray();
  }

  private static void draw(DrawnPage page, PdfContentByte canvas) {
    float[] at = new float[6];
    for (DrawnPage.Drawn shape : page.shapes()) {
      for (PathIterator i = shape.path().getPathIterator(null); !i.isDone(); i.next()) {
        switch (i.currentSegment(at)) {
          case PathIterator.SEG_MOVETO -> canvas.moveTo(at[0], at[1]);
          case PathIterator.SEG_LINETO -> canvas.lineTo(at[0], at[1]);
          case PathIterator.SEG_CUBICTO -> canvas.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
          case PathIterator.SEG_CLOSE -> canvas.closePath();
          default -> throw new IllegalStateException("PDF has no such line");
        }
      }
      if (shape.width() > 0) {
        canvas.setLineWidth(shape.width());
        canvas.stroke();
      } else {
        canvas.fill();
      }
    }
  }

  /** With openhtmltopdf. */
  byte[] html(List<DrawnPage> pages) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(() -> new ByteArrayInputStream(font), "Liberation");
    builder.usePdfUaAccessibility(true);
    builder.withHtmlContent(page(pages), "file:///");
    builder.toStream(out);
    builder.run();
    return out.toByteArray();
  }

  private static String page(List<DrawnPage> pages) {
    StringBuilder html = new StringBuilder();
    html.append(
        "<html lang=\"en\"><head><title>Card</title><meta name=\"subject\" content=\"Card\"/>");
    html.append(
        "<meta name=\"description\" content=\"Card\"/><style>@page {size: letter; margin: 40pt}");
    html.append("body {font: 8pt/9pt Liberation} p {margin: 0} td {border: 1pt solid black;");
    html.append(
        " width: 14pt; height: 14pt} .next {page-break-before: always}</style></head><body>");
    for (int i = 0; i < pages.size(); i++) {
      html.append(i == 0 ? "<div>" : "<div class=\"next\">");
      for (String line : pages.get(i).lines()) {
        html.append("<p>").append(escaped(line)).append("</p>");
      }
      html.append("<table>").append("<tr><td/><td/><td/></tr>".repeat(3)).append("</table></div>");
    }
    return html.append("</body></html>").toString();
  }

  private static String escaped(String line) {
    return line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
