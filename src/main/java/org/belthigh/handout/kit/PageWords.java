package org.belthigh.handout.kit;

import java.util.Locale;

/**
 * The words that the page itself adds.
 *
 * @param pageOf with {@code {page}} and {@code {count}}
 * @param continued title of a print on its later pages, with {@code {title}}
 */
record PageWords(String pageOf, String continued) {
  private static final PageWords ENGLISH =
      new PageWords("page {page} of {count}", "{title} (continued)");
  private static final PageWords SPANISH =
      new PageWords("página {page} de {count}", "{title} (continuación)");

  static PageWords of(Locale language) {
    return language.getLanguage().equals("es") ? SPANISH : ENGLISH;
  }

  String page(int page, int count) {
    return pageOf.replace("{page}", String.valueOf(page)).replace("{count}", String.valueOf(count));
  }

  String continuing(String title) {
    return continued.replace("{title}", title);
  }
}
