package org.belthigh.handout;

import java.io.IOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.belthigh.handout.kit.RightToLeft;

/**
 * A print read back from its bytes, with no knowledge of what was to be printed.
 *
 * @param title of the document; empty where it has none
 * @param language as the document says it, such as {@code es}; empty where it does not
 * @param pages first to last
 */
public record PrintedPages(String title, String language, List<Page> pages) {
  /** A packet of the largest group has some hundreds. */
  private static final int MOST_PAGES = 5_000;

  private static final int MOST_BYTES = 256 * 1024 * 1024;
  private static final int MOST_LETTERS = 200_000;

  public PrintedPages {
    pages = List.copyOf(pages);
  }

  /**
   * One page.
   *
   * @param text in reading order, lines apart
   * @param width in points, as {@code height}
   */
  public record Page(String text, double width, double height) {}

  /** That bytes are no print that can be read; the message is a clause that says why. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    Unreadable(String why, Throwable cause) {
      super(why, cause);
    }
  }

  /**
   * Reads a PDF.
   *
   * @throws Unreadable if it is broken, encrypted, no PDF at all, or larger than any print of ours
   */
  public static PrintedPages read(byte[] pdf) throws Unreadable {
    if (pdf.length > MOST_BYTES) {
      throw new Unreadable("it is larger than any print", null);
    }
    try (PDDocument document =
        Loader.loadPDF(pdf, "", null, null, IOUtils.createMemoryOnlyStreamCache())) {
      if (document.isEncrypted()) {
        throw new Unreadable("it is encrypted", null);
      }
      if (document.getNumberOfPages() > MOST_PAGES) {
        throw new Unreadable("it has more pages than any print", null);
      }
      return read(document);
    } catch (IOException | RuntimeException | StackOverflowError e) {
      throw new Unreadable("it is no PDF, or a broken one", e);
    }
  }

  private static PrintedPages read(PDDocument document) throws IOException, Unreadable {
    List<Page> pages = new ArrayList<>();
    for (int i = 1; i <= document.getNumberOfPages(); i++) {
      PDFTextStripper stripper = new LeftToRight();
      stripper.setStartPage(i);
      stripper.setEndPage(i);
      stripper.setLineSeparator("\n");
      String text = stripper.getText(document);
      if (text.length() > MOST_LETTERS) {
        throw new Unreadable("page " + i + " holds more letters than any print", null);
      }
      PDRectangle size = document.getPage(i - 1).getMediaBox();
      pages.add(new Page(text, size.getWidth(), size.getHeight()));
    }
    String title = document.getDocumentInformation().getTitle();
    String language = document.getDocumentCatalog().getLanguage();
    return new PrintedPages(title == null ? "" : title, language == null ? "" : language, pages);
  }

  /**
   * Reads each line as one that runs from left to right, as all of ours do, with what runs the
   * other way within it; by itself the library turns a line around that begins with such a name.
   */
  private static final class LeftToRight extends PDFTextStripper {
    @Override
    protected void writeString(String text, List<TextPosition> positions) throws IOException {
      char[] letters = text.toCharArray();
      boolean turns = Bidi.requiresBidi(letters, 0, letters.length);
      super.writeString(turns ? turned(positions) : text, positions);
    }

    /** The letters as they are shown, turned around where they were set so. */
    private static String turned(List<TextPosition> positions) {
      StringBuilder text = new StringBuilder();
      positions.forEach(position -> text.append(position.getUnicode()));
      return RightToLeft.set(text.toString());
    }
  }
}
