package org.belthigh.model;

import java.text.Normalizer;
import java.util.BitSet;

/**
 * Which characters the faces of the sheets have: Latin, Greek, Cyrillic and Hebrew letters, digits
 * and common signs. A test holds the table against the faces.
 */
public final class Printable {
  /** From and to, in hexadecimal; invisible and unassigned characters between them do no harm. */
  private static final String RANGES =
      "21-36f 374-375 37a-37e 384-3ce 3d0-513 51a-51d 591-5ea 5f0-5f4 1d00-1dca 1dfe-1e9b 1e9e"
          + " 1ea0-1ef9 1f00-2010 2012-2022 2026 2030 2032-2034 2039-203a 203c 203e 2044 205e"
          + " 2074-2075 2077-2078 207f 2090-2094 20a0-20b5 20bf 20f0 2105 2113 2116-2117 2122 2126"
          + " 212e 214d-214e 2153-2154 215b-215e 2184 2190-2195 21a8 2202 2206 220f 2211-2212 2215"
          + " 2219-221a 221e-221f 2229 222b 2248 2260-2262 2264-2265 2302 2310 2320-2321 2500 2502"
          + " 250c 2510 2514 2518 251c 2524 252c 2534 253c 2550-256c 2580 2584 2588 258c 2590-2593"
          + " 25a0-25a1 25aa-25ac 25b2 25ba 25bc 25c4 25ca-25cc 25cf 25d8-25d9 25e6 263a-263c 2640"
          + " 2642 2660 2663 2665-2666 2669-266c 266f 2c60-2c6d 2c71-2c77 2e17 a717-a721 a788-a78c"
          + " fb01-fb02 fb1d-fb4f fe20-fe23 fffc";

  private static final BitSet SHOWN = shown();

  private Printable() {}

  private static BitSet shown() {
    BitSet shown = new BitSet();
    for (String range : RANGES.split(" ", -1)) {
      String[] ends = range.split("-", -1);
      shown.set(Integer.parseInt(ends[0], 16), Integer.parseInt(ends[ends.length - 1], 16) + 1);
    }
    return shown;
  }

  /** Whether sheets show a character; blanks and invisible ones ask for nothing. */
  public static boolean has(int codePoint) {
    return SHOWN.get(codePoint) || isBlank(codePoint);
  }

  private static boolean isBlank(int codePoint) {
    int type = Character.getType(codePoint);
    return Character.isWhitespace(codePoint)
        || Character.isSpaceChar(codePoint)
        || type == Character.CONTROL
        || type == Character.FORMAT
        || (codePoint >= 0xfe00 && codePoint <= 0xfe0f);
  }

  /** Whether sheets show every character of a text, each composed where it can be. */
  public static boolean all(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().allMatch(Printable::has);
  }
}
