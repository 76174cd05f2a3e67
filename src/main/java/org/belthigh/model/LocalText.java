package org.belthigh.model;

import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * A text that authors wrote in several languages, such as a drill's cue.
 *
 * @param byLanguage text by ISO 639 language code; English is always there
 */
public record LocalText(Map<String, String> byLanguage) {
  /** The language that stands in where another is missing. */
  public static final String FALLBACK = "en";

  public LocalText {
    byLanguage = Map.copyOf(new TreeMap<>(byLanguage));
    Objects.requireNonNull(byLanguage.get(FALLBACK), "English text is missing");
  }

  /** One English and one Spanish text. */
  public static LocalText of(String en, String es) {
    return new LocalText(Map.of("en", en, "es", es));
  }

  /** The text in {@code language}, or the English one where there is none. */
  public String in(String language) {
    return byLanguage.getOrDefault(language, byLanguage.get(FALLBACK));
  }
}
