package org.belthigh.handout.kit;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequence;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequenceWithProperties;
import org.apache.pdfbox.contentstream.operator.markedcontent.EndMarkedContentSequence;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.w3c.dom.Document;

/**
 * Checks of a finished document that veraPDF does not make: header cells with a scope, tab order,
 * titles that agree, embedded fonts, type sizes, margins, nothing over anything else, and an order
 * of reading that goes down the page.
 */
public final class PdfLint {
  private static final double LEAST_MARGIN = Length.mm(12.7);
  private static final double LEAST_TYPE = 8;
  private static final double RENDER_SCALE = 2;

  private final List<String> faults = new ArrayList<>();
  private final PDDocument document;

  private PdfLint(PDDocument document) {
    this.document = document;
  }

  /** A stretch of text on one baseline, in points from the top left corner of its page. */
  record TextLine(
      int page,
      String tag,
      int content,
      double left,
      double right,
      double baseline,
      double size,
      String text) {
    boolean decoration() {
      return tag.equals("Artifact");
    }

    boolean above(TextLine other) {
      return baseline < other.baseline - 1;
    }

    boolean sharesColumn(TextLine other) {
      return Math.min(right, other.right) - Math.max(left, other.left) > 0.5;
    }

    boolean touches(TextLine other) {
      double top = Math.max(baseline - 0.7 * size, other.baseline - 0.7 * other.size);
      double bottom = Math.min(baseline + 0.2 * size, other.baseline + 0.2 * other.size);
      return sharesColumn(other) && bottom - top > 0.3;
    }
  }

  /** What is wrong with a document; empty if nothing is. */
  public static List<String> faults(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PdfLint lint = new PdfLint(document);
      lint.checkTitles();
      lint.checkHeaderCells(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject());
      lint.checkReadingOrderOfTags();
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        lint.checkPage(i);
      }
      return lint.faults;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a reader meets, footers and repeated heads aside: the words of all lines in order. */
  public static String words(byte[] pdf) {
    return lines(pdf).stream()
        .filter(line -> !line.decoration())
        .map(TextLine::text)
        .collect(Collectors.joining(" "));
  }

  /** All lines of text, in the order of drawing. */
  static List<TextLine> lines(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<TextLine> lines = new ArrayList<>();
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        lines.addAll(Reader.lines(document, i));
      }
      return lines;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void checkTitles() throws IOException {
    String info = document.getDocumentInformation().getTitle();
    byte[] xmp = document.getDocumentCatalog().getMetadata().toByteArray();
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      Document tree = factory.newDocumentBuilder().parse(new ByteArrayInputStream(xmp));
      String title =
          tree.getElementsByTagNameNS("http://purl.org/dc/elements/1.1/", "title")
              .item(0)
              .getTextContent();
      check(title.equals(info), "titles differ: \"%s\" and \"%s\"".formatted(title, info));
    } catch (javax.xml.parsers.ParserConfigurationException | org.xml.sax.SAXException e) {
      faults.add("XMP: " + e.getMessage());
    }
  }

  private void checkHeaderCells(COSDictionary element) {
    if ("TH".equals(element.getNameAsString(COSName.S))) {
      COSDictionary attributes = element.getCOSDictionary(COSName.A);
      check(attributes != null && attributes.getNameAsString("Scope") != null, "a TH has no Scope");
    }
    for (COSBase kid : kids(element)) {
      if (kid instanceof COSDictionary child && child.getItem(COSName.S) != null) {
        checkHeaderCells(child);
      }
    }
  }

  /** Marked content of a page must come in the same order in the tree as on the page. */
  private void checkReadingOrderOfTags() {
    Map<COSDictionary, Integer> lastByPage = new HashMap<>();
    walk(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), lastByPage);
  }

  private void walk(COSDictionary element, Map<COSDictionary, Integer> lastByPage) {
    for (COSBase kid : kids(element)) {
      if (kid instanceof COSInteger id) {
        reach(element.getCOSDictionary(COSName.PG), id.intValue(), lastByPage);
      } else if (kid instanceof COSDictionary child) {
        if (child.getItem(COSName.S) != null) {
          walk(child, lastByPage);
        } else {
          reach(child.getCOSDictionary(COSName.PG), child.getInt(COSName.MCID), lastByPage);
        }
      }
    }
  }

  private void reach(COSDictionary page, int id, Map<COSDictionary, Integer> lastByPage) {
    Integer last = lastByPage.put(page, id);
    check(
        last == null || id > last,
        "content %d is read after %d but drawn before it".formatted(id, last));
  }

  static List<COSBase> kids(COSDictionary element) {
    COSBase kids = element.getDictionaryObject(COSName.K);
    List<COSBase> all = new ArrayList<>();
    if (kids instanceof COSArray array) {
      array.forEach(kid -> all.add(kid instanceof COSObject object ? object.getObject() : kid));
    } else if (kids != null) {
      all.add(kids);
    }
    return all;
  }

  private void checkPage(int index) throws IOException {
    PDPage page = document.getPage(index);
    check("S".equals(page.getCOSObject().getNameAsString("Tabs")), "page has no tab order");
    for (COSName name : page.getResources().getFontNames()) {
      PDFont font = page.getResources().getFont(name);
      check(font.isEmbedded(), font.getName() + " is not embedded");
    }
    checkInk(page);
    checkWhiteMargins(index);
    checkLines(Reader.lines(document, index), page);
  }

  /** Black, and white under labels; no other grey, no colour. */
  private void checkInk(PDPage page) throws IOException {
    List<Object> operands = new ArrayList<>();
    for (Object token : new PDFStreamParser(page).parse()) {
      if (!(token instanceof Operator operator)) {
        operands.add(token);
        continue;
      }
      switch (operator.getName()) {
        case "rg", "RG", "k", "K", "sc", "SC", "scn", "SCN" ->
            faults.add("colour: " + operands + " " + operator.getName());
        case "g", "G" -> {
          float grey = ((COSNumber) operands.get(0)).floatValue();
          check(grey == 0 || grey == 1, "grey: " + grey);
        }
        default -> {}
      }
      operands.clear();
    }
  }

  private void checkWhiteMargins(int index) throws IOException {
    BufferedImage image =
        new PDFRenderer(document).renderImage(index, (float) RENDER_SCALE, ImageType.GRAY);
    int margin = (int) (LEAST_MARGIN * RENDER_SCALE);
    for (int y = 0; y < image.getHeight(); y++) {
      boolean edgeRow = y < margin || y >= image.getHeight() - margin;
      for (int x = 0; x < image.getWidth(); x++) {
        boolean edge = edgeRow || x < margin || x >= image.getWidth() - margin;
        if (edge && (image.getRGB(x, y) & 0xff) < 200) {
          faults.add("page %d: ink in the margin at %d, %d".formatted(index + 1, x, y));
          return;
        }
      }
    }
  }

  private void checkLines(List<TextLine> lines, PDPage page) {
    double right = page.getMediaBox().getWidth() - LEAST_MARGIN;
    for (int i = 0; i < lines.size(); i++) {
      TextLine line = lines.get(i);
      check(line.size() >= LEAST_TYPE, "type of %.1f: %s".formatted(line.size(), line.text()));
      check(line.left() >= LEAST_MARGIN && line.right() <= right, "beyond margin: " + line.text());
      for (TextLine before : lines.subList(0, i)) {
        check(!line.touches(before), "\"%s\" over \"%s\"".formatted(line.text(), before.text()));
        boolean read = !line.decoration() && !before.decoration() && !line.tag().equals("Figure");
        check(
            !read || !line.sharesColumn(before) || !line.above(before),
            "\"%s\" is read after \"%s\" but stands above".formatted(line.text(), before.text()));
      }
    }
  }

  private void check(boolean right, String fault) {
    if (!right) {
      faults.add(fault);
    }
  }

  /** Collects the lines of a page with the marked content that they belong to. */
  private static final class Reader extends PDFTextStripper {
    private final int page;
    private final List<TextLine> lines = new ArrayList<>();
    private String tag = "";
    private int content = -1;

    private Reader(int page) {
      this.page = page;
      addOperator(new BeginMarkedContentSequence(this));
      addOperator(new BeginMarkedContentSequenceWithProperties(this));
      addOperator(new EndMarkedContentSequence(this));
    }

    static List<TextLine> lines(PDDocument document, int page) throws IOException {
      Reader reader = new Reader(page);
      reader.setStartPage(page + 1);
      reader.setEndPage(page + 1);
      reader.getText(document);
      return reader.lines;
    }

    @Override
    public void beginMarkedContentSequence(COSName name, COSDictionary properties) {
      tag = name.getName();
      content = properties == null ? -1 : properties.getInt(COSName.MCID, -1);
    }

    @Override
    public void endMarkedContentSequence() {
      tag = "";
      content = -1;
    }

    @Override
    protected void processTextPosition(TextPosition glyph) {
      if (tag.isEmpty()) {
        throw new IllegalStateException("untagged: " + glyph.getUnicode());
      }
      if (glyph.getUnicode().isBlank()) {
        return;
      }
      double left = glyph.getXDirAdj();
      double right = left + glyph.getWidthDirAdj();
      double baseline = glyph.getYDirAdj();
      int last = lines.size() - 1;
      if (last >= 0 && continues(lines.get(last), left, baseline, glyph.getYScale())) {
        TextLine open = lines.get(last);
        String gap = left - open.right() > 1.5 ? " " : "";
        lines.set(
            last,
            new TextLine(
                page,
                tag,
                content,
                open.left(),
                right,
                baseline,
                open.size(),
                open.text() + gap + glyph.getUnicode()));
      } else {
        lines.add(
            new TextLine(
                page, tag, content, left, right, baseline, glyph.getYScale(), glyph.getUnicode()));
      }
    }

    private boolean continues(TextLine open, double left, double baseline, double size) {
      return open.tag().equals(tag)
          && open.content() == content
          && Math.abs(open.baseline() - baseline) < 0.01
          && Math.abs(open.size() - size) < 0.01
          && left >= open.right() - 1
          && left - open.right() < size;
    }
  }
}
