package org.belthigh.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A sentence that has not been put into a language yet: the key of a template and the values that
 * fill its holes.
 *
 * <p>A reason is typed data first and a sentence second; {@code words} makes the sentence. Values
 * are text, whole or decimal numbers, {@link java.time.LocalDate}, {@link LocalText} or another
 * phrase.
 *
 * @param key the template, such as {@code card.good-enough} or a rule id
 * @param values by the name of the hole, in insertion order
 */
public record Phrase(String key, Map<String, Object> values) {
  public Phrase {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** A phrase without holes. */
  public static Phrase of(String key) {
    return new Phrase(key, Map.of());
  }

  /** A phrase from names and values in turn: {@code of("k", "made", 3, "seen", 8)}. */
  public static Phrase of(String key, Object... namesAndValues) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      values.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return new Phrase(key, values);
  }

  /** A copy with one more value. */
  public Phrase with(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(values);
    more.put(name, value);
    return new Phrase(key, more);
  }
}
