package org.belthigh.audit;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
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

  private static final Map<String, String> NO_PITCHING =
      Map.of("en", "no pitching", "es", "no pitchea");

  private static final Map<String, String> ASK_FIRST = Map.of("en", "ask first", "es", "preguntar");

  /** The lists of the box on top of a practice sheet, by what they stop; all others after them. */
  private static final Map<String, Map<String, String>> LISTS =
      Map.of(
          "en",
          Map.of(
              "everything", "Not today",
              "throwing", "No throwing",
              "resting-arm", "Arm rests",
              "swinging", "No swings",
              "asked", "Ask first before pitching",
              "resting", "No hitting today",
              "fewer", "Fewer swings"),
          "es",
          Map.of(
              "everything", "Hoy no",
              "throwing", "Sin lanzar",
              "resting-arm", "El brazo descansa",
              "swinging", "Sin batear",
              "asked", "Preguntar antes de pitchear",
              "resting", "Hoy sin bateo",
              "fewer", "Menos swings"));

  /** How the box on top of a practice sheet ends. */
  private static final Map<String, String> LISTS_END =
      Map.of("en", "Ask each player:", "es", "Pregunte a cada uno:");

  /** Gear of which sheets give a number; of the rest there are as many as there are. */
  private static final Set<String> NUMBERED =
      Set.of("tee", "bat", "helmet", "eyewear", "screen", "net", "machine", "target", "plate");

  /**
   * What the foot of a sheet calls it, by the sheet's id; in all languages, since one sheet has
   * two.
   */
  private static final Map<String, Set<String>> CALLED =
      Map.of(
          "card", Set.of("Card", "Home sheet", "Tarjeta", "Hoja de casa"),
          "home", Set.of("Home sheet", "Hoja de casa"),
          "overview", Set.of("Overview", "Resumen"),
          "practice",
              Set.of(
                  "Practice sheet",
                  "Evaluation day",
                  "If things change",
                  "Hoja de práctica",
                  "Día de evaluación",
                  "Si algo cambia"),
          "arm", Set.of("Arm sheet", "Hoja de brazos"),
          "emergency", Set.of("Emergency sheet", "Hoja de emergencia"),
          "guide", Set.of("How to read your card", "Cómo leer su tarjeta"),
          "season", Set.of("The season so far", "La temporada hasta hoy"),
          "tosses", Set.of("Toss lists", "Listas de lanzamientos"),
          "packet", Set.of("Packet", "Paquete"));

  private PaperWords() {}

  /** What the foot of a sheet calls it; nothing of sheets that are called after their drill. */
  static Set<String> called(String sheet) {
    return CALLED.getOrDefault(sheet, Set.of());
  }

  /** A thing of the gear as sheets name it, with its number where they give one. */
  static String gear(String id, String name, int count) {
    return NUMBERED.contains(id) ? name + " (" + count + ")" : name;
  }

  static String noPitching(String language) {
    return NO_PITCHING.get(language);
  }

  static String askFirst(String language) {
    return ASK_FIRST.get(language);
  }

  /** What stands on the practice sheet in each list of its box, by what the list stops. */
  static Map<String, String> lists(String text, String language) {
    int end = text.indexOf(LISTS_END.get(language));
    String box = end < 0 ? text : text.substring(0, end);
    TreeMap<Integer, String> begins = new TreeMap<>();
    LISTS
        .get(language)
        .forEach(
            (what, heading) -> {
              Matcher at =
                  Pattern.compile("^\\s*" + Pattern.quote(heading) + ":", Pattern.MULTILINE)
                      .matcher(box);
              if (at.find()) {
                begins.put(at.end(), what);
              }
            });
    Map<String, String> lists = new HashMap<>();
    begins.forEach(
        (at, what) -> {
          Integer next = begins.higherKey(at);
          lists.put(what, box.substring(at, next == null ? box.length() : next));
        });
    return lists;
  }

  /** The most pitches that a card's arm box allows; empty where it lets nobody pitch. */
  static OptionalInt mostPitches(String text, String language) {
    Matcher box =
        Pattern.compile(
                MAY_PITCH.get(language).replace(" ", "\\s+") + "\\s[^:]*:\\D{0,20}(\\d{1,3})")
            .matcher(text);
    return box.find() ? OptionalInt.of(Integer.parseInt(box.group(1))) : OptionalInt.empty();
  }

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
