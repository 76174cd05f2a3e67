package org.belthigh.words;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;

/**
 * Puts phrases into a language.
 *
 * <p>Templates are ICU message formats with named holes, kept in {@code
 * words/LANGUAGE/*.properties} and, for the reasons of rules, in {@code rules/}. A hole that a
 * phrase does not fill is our own fault and throws: half a sentence never reaches paper.
 */
public final class Words {
  /** The languages that have bundles. */
  public static final List<String> LANGUAGES = List.of("en", "es");

  /** A day on which no clock changes, to hang a time of day on. */
  private static final LocalDate WINTER_DAY = LocalDate.of(2000, 1, 15);

  private static final List<String> BUNDLES =
      List.of("decide", "plan", "handout", "team", "sheets", "cli");

  private final Map<String, Map<String, String>> templates;
  private final Map<String, MessageFormat> parsed = new ConcurrentHashMap<>();

  private Words(Map<String, Map<String, String>> templates) {
    this.templates = templates;
  }

  /**
   * Loads every bundle.
   *
   * @param more further templates by key, such as the reasons of rules
   */
  public static Words load(Map<String, LocalText> more) {
    Map<String, Map<String, String>> all = new TreeMap<>();
    for (String language : LANGUAGES) {
      Map<String, String> texts = new TreeMap<>();
      BUNDLES.forEach(bundle -> texts.putAll(bundle(language, bundle)));
      more.forEach((key, text) -> texts.put(key, text.in(language)));
      all.put(language, Collections.unmodifiableMap(texts));
    }
    return new Words(Collections.unmodifiableMap(all));
  }

  /**
   * These words, and those of one more language.
   *
   * @param language ISO 639 code
   * @param texts a template for every key that English has
   * @throws IllegalArgumentException if a key is missing
   */
  public Words with(String language, Map<String, String> texts) {
    Set<String> missing = keys(LocalText.FALLBACK);
    missing.removeAll(texts.keySet());
    if (!missing.isEmpty()) {
      throw new IllegalArgumentException("language " + language + " has no words for " + missing);
    }
    Map<String, Map<String, String>> all = new TreeMap<>(templates);
    all.put(language, Map.copyOf(texts));
    return new Words(Collections.unmodifiableMap(all));
  }

  private static Map<String, String> bundle(String language, String name) {
    String path = "/words/" + language + "/" + name + ".properties";
    try (InputStream in = Words.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("The message bundle " + path + " is missing");
      }
      Properties properties = new Properties();
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      Map<String, String> texts = new HashMap<>();
      properties.stringPropertyNames().forEach(k -> texts.put(k, properties.getProperty(k)));
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All keys of {@code language}, sorted. */
  public Set<String> keys(String language) {
    return new TreeSet<>(templates.get(language).keySet());
  }

  /** The template as written. @throws IllegalArgumentException if the key is not known */
  public String template(String key, String language) {
    String template = templates.getOrDefault(language, Map.of()).get(key);
    if (template == null) {
      throw new IllegalArgumentException("No words for '" + key + "' in language " + language);
    }
    return template;
  }

  /** The sentence of a phrase without holes. */
  public String say(String key, String language) {
    return say(Phrase.of(key), language);
  }

  /**
   * The sentence.
   *
   * @throws IllegalArgumentException if the key is not known or a hole is left open
   */
  public String say(Phrase phrase, String language) {
    MessageFormat format =
        parsed.computeIfAbsent(
            language + '|' + phrase.key(),
            ignored ->
                new MessageFormat(
                    template(phrase.key(), language), ULocale.forLanguageTag(locale(language))));
    Map<String, Object> values = new HashMap<>();
    phrase.values().forEach((name, value) -> values.put(name, spoken(value, language)));
    for (String hole : format.getArgumentNames()) {
      if (!values.containsKey(hole)) {
        throw new IllegalArgumentException(
            "The phrase '" + phrase.key() + "' has nothing for its hole {" + hole + "}");
      }
    }
    synchronized (format) {
      return format.format(values);
    }
  }

  /** English as in the United States, Spanish as spoken there. */
  private static String locale(String language) {
    return language + "-US";
  }

  private Object spoken(Object value, String language) {
    if (value instanceof Phrase nested) {
      return say(nested, language);
    }
    if (value instanceof LocalText text) {
      return text.in(language);
    }
    if (value instanceof LocalDate day) {
      // noon where the formatter stands: the same day in every time zone
      return Date.from(day.atTime(12, 0).atZone(ZoneId.systemDefault()).toInstant());
    }
    if (value instanceof LocalTime time) {
      return Date.from(time.atDate(WINTER_DAY).atZone(ZoneId.systemDefault()).toInstant());
    }
    if (value instanceof List<?> several) {
      return several(several, language);
    }
    return value;
  }

  private String several(List<?> values, String language) {
    List<String> parts = values.stream().map(v -> String.valueOf(spoken(v, language))).toList();
    return com.ibm.icu.text.ListFormatter.getInstance(ULocale.forLanguageTag(locale(language)))
        .format(parts);
  }
}
