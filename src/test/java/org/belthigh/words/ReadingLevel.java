package org.belthigh.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How easy a text is to read, by its words, sentences and syllables.
 *
 * <p>English: grade of Flesch and Kincaid, {@code 0.39 words/sentences + 11.8 syllables/words -
 * 15.59} (J. P. Kincaid, R. P. Fishburne, R. L. Rogers, B. S. Chissom, Derivation of new
 * readability formulas for Navy enlisted personnel, Research Branch Report 8-75, 1975). Spanish:
 * ease of Fernández Huerta, {@code 206.84 - 60 syllables/words - 1.02 words/sentences} (J.
 * Fernández Huerta, Medidas sencillas de lecturabilidad, Consigna 214, 1959), where 80 and more is
 * easy. Both formulas are from memory.
 *
 * <p>A line without a full stop is a sentence; so is what ends in a colon. A number is a word of
 * one syllable. Syllables are counted by spelling, good to about one word in twenty in English and
 * nearly exact in Spanish.
 *
 * @param words at least 1
 * @param sentences at least 1
 * @param syllables at least {@code words}
 */
record ReadingLevel(int words, int sentences, int syllables) {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['’.,/][\\p{L}\\p{N}]+)*");
  private static final Pattern STOP = Pattern.compile("[.!?:;]+(?:\\s|$)|\\n");

  /** Words whose spelling misleads the count. */
  private static final Map<String, Integer> ENGLISH =
      Map.ofEntries(
          Map.entry("belt-high", 2),
          Map.entry("being", 2),
          Map.entry("someone", 2),
          Map.entry("something", 2),
          Map.entry("sometimes", 2),
          Map.entry("somewhere", 2),
          Map.entry("elsewhere", 2),
          Map.entry("anywhere", 3),
          Map.entry("everyone", 3),
          Map.entry("area", 3),
          Map.entry("create", 2),
          Map.entry("idea", 3),
          Map.entry("doing", 2),
          Map.entry("going", 2),
          Map.entry("therapist", 3),
          Map.entry("physical", 3));

  private static final Pattern SILENT_E = Pattern.compile("[^aeiouyl]e$|[aeiouy]le$");
  private static final Pattern SILENT_ES =
      Pattern.compile("(?:[^aeioustxzgch]|[aeiouy]t|st|[^aeiou]t|[^sc]h)es$");
  private static final Pattern SILENT_ED = Pattern.compile("[^aeioutd]ed$");
  private static final Pattern ENGLISH_VOWELS = Pattern.compile("[aeiouy]+");

  /** One vowel that is strong or bears an accent, with the weak ones around it; or weak ones. */
  private static final Pattern SPANISH_VOWELS =
      Pattern.compile("[iuüy]?[aeoáéó][iuüy]?(?![aeiouáéíóú])|[iuü]?[aeoáéó]|[iuü]?[íú]|[iuüy]+");

  /** Counts a text of several lines. */
  static ReadingLevel of(String text, String language) {
    int words = 0;
    int sentences = 0;
    int syllables = 0;
    for (String sentence : sentences(text)) {
      List<String> own = words(sentence);
      words += own.size();
      sentences += own.isEmpty() ? 0 : 1;
      syllables += own.stream().mapToInt(w -> syllables(w, language)).sum();
    }
    return new ReadingLevel(words, sentences, syllables);
  }

  /** The sentences of a text, without their full stops. */
  static List<String> sentences(String text) {
    return STOP.splitAsStream(text).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  static List<String> words(String sentence) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(sentence);
    while (matcher.find()) {
      words.add(matcher.group());
    }
    return words;
  }

  /** Flesch-Kincaid grade of an English text. */
  double grade() {
    return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
  }

  /** Fernández Huerta's ease of a Spanish text, most at about 100. */
  double ease() {
    return 206.84 - 60.0 * syllables / words - 1.02 * words / sentences;
  }

  static int syllables(String word, String language) {
    String lower = word.toLowerCase(Locale.ROOT);
    if (!lower.matches(".*\\p{L}.*")) {
      return 1;
    }
    return Math.max(1, language.equals("es") ? spanish(lower) : english(lower));
  }

  private static int english(String word) {
    if (ENGLISH.containsKey(word)) {
      return ENGLISH.get(word);
    }
    String plain = word.replaceAll("['’]s?$", "").replaceAll("(?<=[aeiou])y(?=[aeiou])", "w");
    int count = count(ENGLISH_VOWELS, plain);
    boolean silent =
        SILENT_E.matcher(plain).find()
            || SILENT_ES.matcher(plain).find()
            || SILENT_ED.matcher(plain).find();
    return count > 1 && silent ? count - 1 : count;
  }

  private static int spanish(String word) {
    String heard = word.replaceAll("(?<=q)u(?=[eiéí])|(?<=g)u(?=[eiéí])", "");
    return count(SPANISH_VOWELS, heard.replaceAll("y(?=[aeiouáéíóú])", "ll"));
  }

  private static int count(Pattern pattern, String word) {
    return (int) pattern.matcher(word).results().count();
  }
}
