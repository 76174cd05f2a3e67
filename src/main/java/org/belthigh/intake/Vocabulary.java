package org.belthigh.intake;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Other words for headings and for the members of closed lists: Spanish, and a few that English
 * spreadsheets use. Asked only where a word is not known as it stands, so that the words of the
 * documentation always mean what is said there.
 */
final class Vocabulary {
  private static final int LONGEST = 60;
  private static final Map<String, String> HEADINGS = load("headings");
  private static final Map<String, String> WORDS = load("words");
  private static final Set<String> SKIPPED = Set.of(WORDS.get("skip").split(" ", -1));

  /** What kind of words stand in a column. */
  private static final Map<String, String> KINDS = kinds();

  private Vocabulary() {}

  private static Map<String, String> kinds() {
    Map<String, String> kinds = new HashMap<>();
    for (String kind :
        List.of("hit", "timing", "ball", "feed", "place", "kind", "group", "language", "sex")) {
      kinds.put(kind, kind);
    }
    List.of("near", "swing", "pitches", "catches", "guest").forEach(c -> kinds.put(c, "answer"));
    List.of("zone", "called").forEach(c -> kinds.put(c, "spot"));
    List.of("field", "went").forEach(c -> kinds.put(c, "field"));
    List.of("bats", "throws").forEach(c -> kinds.put(c, "side"));
    kinds.put("clears", "kind");
    kinds.put("by", "who");
    kinds.put("home_days", "day");
    kinds.put("skill", "skill");
    return Map.copyOf(kinds);
  }

  private static Map<String, String> load(String name) {
    Properties words = new Properties();
    try (var in = Vocabulary.class.getResourceAsStream("/intake/" + name + ".properties")) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> known = new HashMap<>();
    words.stringPropertyNames().forEach(key -> known.put(key, words.getProperty(key)));
    return Map.copyOf(known);
  }

  /** The columns that a heading can stand for, the likeliest first; none for an unknown one. */
  static List<String> columns(String heading) {
    String plain = plain(heading, '_');
    List<String> columns = new ArrayList<>(List.of(plain));
    if (HEADINGS.containsKey(plain)) {
      columns.addAll(List.of(HEADINGS.get(plain).split(" ", -1)));
    }
    return columns;
  }

  /** The text of a cell in the words of the files; empty where it is not known here. */
  static Optional<String> word(String column, String text) {
    String kind = KINDS.get(column);
    if (kind == null || text.length() > LONGEST) {
      return Optional.empty();
    }
    String phrase = plain(text, '-');
    return Optional.ofNullable(WORDS.get(kind + "." + phrase)).or(() -> byWord(kind, phrase));
  }

  /**
   * What is asked about a text that is not read because it can mean more than one: the members that
   * it can mean. Empty where nothing is known of it.
   */
  static Optional<String> question(String column, String text) {
    String kind = KINDS.get(column);
    if (kind == null || text.length() > LONGEST) {
      return Optional.empty();
    }
    return Stream.of(plain(text, '-').split("-", -1))
        .map(word -> WORDS.get("ask." + kind + "." + word))
        .filter(Objects::nonNull)
        .findFirst();
  }

  private static Optional<String> byWord(String kind, String phrase) {
    List<String> words = new ArrayList<>();
    for (String word : phrase.split("-", -1)) {
      if (SKIPPED.contains(word)) {
        continue;
      }
      String known = WORDS.get(kind + "." + word);
      if (known == null) {
        return Optional.empty();
      }
      words.add(known);
    }
    return words.isEmpty() ? Optional.empty() : Optional.of(String.join("-", words));
  }

  /** Small letters and digits without accents, {@code joint} for all that stands between them. */
  static String plain(String text, char joint) {
    String bare = Normalizer.normalize(text, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    StringBuilder plain = new StringBuilder();
    for (int at = 0; at < bare.length(); at++) {
      char c = bare.charAt(at);
      if (Character.isLetterOrDigit(c)) {
        plain.append(c);
      } else if (Character.getType(c) != Character.NON_SPACING_MARK
          && plain.length() > 0
          && plain.charAt(plain.length() - 1) != joint) {
        plain.append(joint);
      }
    }
    int end = plain.length();
    return plain.substring(0, end > 0 && plain.charAt(end - 1) == joint ? end - 1 : end);
  }
}
