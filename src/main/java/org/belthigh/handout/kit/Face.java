package org.belthigh.handout.kit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The two faces of the prints: Liberation Sans, regular and bold (SIL Open Font License 1.1).
 *
 * <p>Each file is parsed once and shared by all documents. Glyph substitution is off: it costs most
 * of the time of a page and gives only ligatures.
 */
final class Face {
  static final Face REGULAR = new Face("LiberationSans-Regular.ttf");
  static final Face BOLD = new Face("LiberationSans-Bold.ttf");
  static final List<Face> ALL = List.of(REGULAR, BOLD);

  /** Code points up to here are Latin, with their accents. */
  private static final int USUAL = 0x180;

  /** A box, which stands in for characters that the font lacks, however many on end. */
  static final int STAND_IN = 0x25a1;

  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final int unitsPerEm;

  /** Advances of the letters of most languages, and of the others as they come. */
  private final int[] usual = new int[USUAL];

  private final Map<Integer, Integer> advances = new ConcurrentHashMap<>();

  private Face(String file) {
    try (InputStream in = Face.class.getResourceAsStream("/liberation/" + file)) {
      if (in == null) {
        throw new IllegalStateException("font file liberation/" + file + " is not in the jar.");
      }
      font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      font.setEnableGsub(false);
      glyphs = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
      Arrays.setAll(usual, this::readAdvance);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  TrueTypeFont font() {
    return font;
  }

  boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** Advance width of a text at a type size, in points. */
  double width(String text, double size) {
    return width(units(text), size);
  }

  /** Advance width at a type size, in points. */
  double width(long units, double size) {
    return units * size / unitsPerEm;
  }

  /** Advance width of a text in the font's own units. */
  long units(String text) {
    long units = 0;
    for (int at = 0; at < text.length(); ) {
      int codePoint = text.codePointAt(at);
      units += advance(codePoint);
      at += Character.charCount(codePoint);
    }
    return units;
  }

  private int advance(int codePoint) {
    return codePoint < USUAL
        ? usual[codePoint]
        : advances.computeIfAbsent(codePoint, this::readAdvance);
  }

  private int readAdvance(int codePoint) {
    try {
      return font.getAdvanceWidth(glyphs.getGlyphId(codePoint));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
