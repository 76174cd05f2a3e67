package org.belthigh.handout.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.util.Matrix;

/**
 * A page being drawn.
 *
 * <p>Whatever is drawn belongs to a tag, or is declared decoration; content of one tag drawn in a
 * row is one piece of marked content.
 */
final class Canvas implements AutoCloseable {
  private final PDPage page;
  private final PDPageContentStream out;
  private final Ink ink;
  private final Frame frame;
  private final int number;
  private final double left;
  private final List<Tag> claimed = new ArrayList<>();
  private Tag open;
  private boolean unread;

  /**
   * A page, or a part of one that has others beside it, each with its own margins.
   *
   * @param number page within its section, from 1
   * @param left edge of the part, in points from the left of the page
   * @param before tags of what was drawn on the page already
   */
  Canvas(
      PDDocument document,
      PDPage page,
      Fonts fonts,
      Frame frame,
      int number,
      double left,
      List<Tag> before)
      throws IOException {
    this.page = page;
    this.frame = frame;
    this.number = number;
    this.left = left;
    this.claimed.addAll(before);
    this.out = new PDPageContentStream(document, page, AppendMode.APPEND, true);
    if (left != 0) {
      out.transform(Matrix.getTranslateInstance((float) left, 0));
    }
    this.ink = new Ink(out, fonts, frame.height());
    if (frame.scale() != 1) {
      float scale = (float) frame.scale();
      out.transform(Matrix.getScaleInstance(scale, scale));
    }
  }

  /** Draws content of a tag. */
  void draw(Tag tag, Consumer<Ink> drawing) {
    if (unread) {
      furniture("Header", drawing);
      return;
    }
    if (open != tag) {
      endOpen();
      tag.claim(page.getCOSObject(), claimed.size());
      begin(Names.of(tag.type()), claimed.size());
      claimed.add(tag);
      open = tag;
    }
    drawing.accept(ink);
  }

  /** Draws a line of text of a tag, which must stay between the margins. */
  void text(Tag tag, Line line, double x, double baseline, double size) {
    checkFits(line, x);
    draw(tag, pen -> pen.text(line, x, baseline, size));
  }

  /** Draws what carries no meaning of its own: rules, frames, hatching. */
  void decorate(Consumer<Ink> drawing) {
    artifact(null, drawing);
  }

  /** Draws what repeats on every page: {@code Header} or {@code Footer}. */
  void furniture(String subtype, Consumer<Ink> drawing) {
    COSDictionary properties = new COSDictionary();
    properties.setDirect(true);
    properties.setItem(COSName.TYPE, Names.of("Pagination"));
    properties.setItem(COSName.SUBTYPE, Names.of(subtype));
    artifact(PDPropertyList.create(properties), drawing);
  }

  /** Draws what was read before, such as a table's head on its second page, as page furniture. */
  void unread(Runnable drawing) {
    unread = true;
    drawing.run();
    unread = false;
  }

  private void artifact(PDPropertyList properties, Consumer<Ink> drawing) {
    endOpen();
    try {
      if (properties == null) {
        out.beginMarkedContent(COSName.ARTIFACT);
      } else {
        out.beginMarkedContent(COSName.ARTIFACT, properties);
      }
      drawing.accept(ink);
      out.endMarkedContent();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void checkFits(Line line, double x) {
    if (x < frame.margin() - 0.1 || x + line.width() > frame.width() - frame.margin() + 0.1) {
      throw new Overflow("line", number, line.plain(), "reaches beyond the margin");
    }
  }

  int number() {
    return number;
  }

  Frame frame() {
    return frame;
  }

  /** Left edge of what is drawn on, in points from the left of the page. */
  double left() {
    return left;
  }

  /** The tags by marked-content id, for the parent tree. */
  List<Tag> claimed() {
    return List.copyOf(claimed);
  }

  private void begin(COSName tag, int id) {
    try {
      out.beginMarkedContent(tag, id);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void endOpen() {
    if (open != null) {
      open = null;
      try {
        out.endMarkedContent();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  @Override
  public void close() throws IOException {
    endOpen();
    out.close();
  }
}
