package org.belthigh.audit;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The few words that the auditor knows of each language, written down a second time: it must not
 * look where the prints took theirs.
 */
final class PaperWords {
  private static final Map<String, Map<String, String>> DECISIONS =
      Map.of(
          "en",
          Map.of(
              "move-up", "move up",
              "keep-going", "keep going",
              "firm-up", "firm up",
              "not-seen-enough", "not seen enough"),
          "es",
          Map.of(
              "move-up", "avanzar",
              "keep-going", "seguir",
              "firm-up", "afirmar",
              "not-seen-enough", "falta ver más"));

  private static final Map<String, String> MAY_PITCH =
      Map.of("en", "You may pitch on", "es", "Puedes pitchear el");

  private static final Map<String, String> UP_TO = Map.of("en", "up to", "es", "hasta");

  private PaperWords() {}

  static boolean knows(String language) {
    return MAY_PITCH.containsKey(language);
  }

  static String decision(String language, String id) {
    return DECISIONS.get(language).getOrDefault(id, id);
  }

  /** How a card's arm box begins that lets a child pitch. */
  static String mayPitch(String language) {
    return MAY_PITCH.get(language);
  }

  /** What stands before the most pitches of a day on the arm sheet. */
  static String upTo(String language) {
    return UP_TO.get(language);
  }

  /** Whether {@code day} stands in {@code text}, with its month's name, long or short. */
  static boolean dated(String text, LocalDate day, String language) {
    return Pattern.compile(date(day, language), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
        .matcher(text)
        .find();
  }

  /** The same with the year, as each foot has the day that the sheet is made for. */
  static boolean madeFor(String text, LocalDate day, String language) {
    String year = "\\W+(?:de\\s+)?" + day.getYear() + "\\b";
    return Pattern.compile(
            date(day, language) + year, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
        .matcher(text)
        .find();
  }

  private static String date(LocalDate day, String language) {
    String name = day.getMonth().getDisplayName(TextStyle.FULL, Locale.forLanguageTag(language));
    String month = shortened(name);
    return language.equals("es")
        ? "(?<!\\d)" + day.getDayOfMonth() + "\\s+(?:de\\s+)?" + month
        : month + "\\s+" + day.getDayOfMonth() + "(?!\\d)";
  }

  /** The name, or three letters and more of it. */
  private static String shortened(String name) {
    return name.length() <= 3 ? name : Pattern.quote(name.substring(0, 3)) + "\\p{L}*\\.?";
  }
}
