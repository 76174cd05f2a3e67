package org.belthigh.handout.kit;

import java.util.Locale;
import java.util.Objects;

/**
 * The language of a print, and the words that its pages add by themselves.
 *
 * @param pageOf with {@code {page}} and {@code {count}}
 * @param continued title of a print on its later pages, with {@code {title}}
 */
public record PageWords(Locale language, String pageOf, String continued) {
  public PageWords {
    Objects.requireNonNull(language);
    require(pageOf, "{page}");
    require(pageOf, "{count}");
    require(continued, "{title}");
  }

  private static void require(String words, String hole) {
    if (!words.contains(hole)) {
      throw new IllegalArgumentException("\"" + words + "\" has no " + hole);
    }
  }

  String page(int page, int count) {
    return pageOf.replace("{page}", String.valueOf(page)).replace("{count}", String.valueOf(count));
  }

  String continuing(String title) {
    return continued.replace("{title}", title);
  }
}
