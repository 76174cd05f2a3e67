package org.belthigh.handout.kit;

import java.util.Locale;

/**
 * The words that the page itself adds.
 *
 * @param pageOf page number and count, as {@code %d} and {@code %d}
 * @param continued title of a print on its later pages, as {@code %s}
 */
record PageWords(String pageOf, String continued) {
  private static final PageWords ENGLISH = new PageWords("page %d of %d", "%s (continued)");
  private static final PageWords SPANISH = new PageWords("página %d de %d", "%s (continuación)");

  static PageWords of(Locale language) {
    return language.getLanguage().equals("es") ? SPANISH : ENGLISH;
  }
}
