package org.belthigh.handout.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/**
 * What a screen reader says of a document, in its order: each block of the structure tree with its
 * kind, the words that are drawn for it, and alternate text in place of a picture.
 */
public final class ReadAloud {
  /** Kinds that hold words of their own; what is in them is one line. */
  private static final Set<String> LINES =
      Set.of("H1", "H2", "H3", "H4", "P", "TH", "TD", "LBody", "Caption");

  private final Map<COSDictionary, Map<Integer, String>> words = new HashMap<>();
  private final List<String> lines = new ArrayList<>();

  private ReadAloud() {}

  /** The lines, such as {@code H1 Oscar · 4}. */
  public static List<String> lines(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      ReadAloud aloud = new ReadAloud();
      for (PDPage page : document.getPages()) {
        aloud.hear(page);
      }
      COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
      aloud.walk(root);
      return aloud.lines;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void hear(PDPage page) throws IOException {
    PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
    extractor.processPage(page);
    Map<Integer, String> here = words.computeIfAbsent(page.getCOSObject(), p -> new HashMap<>());
    for (PDMarkedContent content : extractor.getMarkedContents()) {
      if (content.getMCID() >= 0) {
        here.merge(content.getMCID(), text(content), (a, b) -> a + " " + b);
      }
    }
  }

  private static String text(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    TextPosition last = null;
    for (Object part : content.getContents()) {
      if (part instanceof TextPosition glyph) {
        boolean newLine = last != null && Math.abs(glyph.getYDirAdj() - last.getYDirAdj()) > 1;
        boolean gap =
            last != null && glyph.getXDirAdj() - last.getXDirAdj() - last.getWidthDirAdj() > 1.5;
        text.append(newLine || gap ? " " : "").append(glyph.getUnicode());
        last = glyph;
      }
    }
    return text.toString();
  }

  private void walk(COSDictionary element) {
    String kind = element.getNameAsString(COSName.S);
    String alternate = element.getString(COSName.ALT);
    if (alternate != null) {
      lines.add(kind + " " + alternate);
    } else if (kind != null && LINES.contains(kind) && !holdsLines(element)) {
      String said = said(element).replaceAll("\\s+", " ").strip();
      if (!said.isEmpty()) {
        lines.add(kind + " " + said);
      }
    } else {
      children(element).forEach(this::walk);
    }
  }

  private static boolean holdsLines(COSDictionary element) {
    return children(element).stream()
        .anyMatch(
            c ->
                c.getString(COSName.ALT) != null
                    || LINES.contains(c.getNameAsString(COSName.S))
                    || holdsLines(c));
  }

  private String said(COSDictionary element) {
    StringBuilder said = new StringBuilder();
    for (COSBase kid : PdfLint.kids(element)) {
      if (kid instanceof COSInteger id) {
        said.append(' ').append(drawn(element.getCOSDictionary(COSName.PG), id.intValue()));
      } else if (kid instanceof COSDictionary child) {
        said.append(' ')
            .append(
                child.getItem(COSName.S) == null
                    ? drawn(child.getCOSDictionary(COSName.PG), child.getInt(COSName.MCID))
                    : said(child));
      }
    }
    return said.toString();
  }

  private String drawn(COSDictionary page, int id) {
    return words.getOrDefault(page, Map.of()).getOrDefault(id, "");
  }

  private static List<COSDictionary> children(COSDictionary element) {
    return PdfLint.kids(element).stream()
        .filter(k -> k instanceof COSDictionary child && child.getItem(COSName.S) != null)
        .map(COSDictionary.class::cast)
        .toList();
  }
}
