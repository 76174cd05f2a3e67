package org.belthigh.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.model.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What players and parents read is easy: every sheet, every drill, and no long sentence. */
class ReadingLevelTest {
  private static final double MOST_GRADE = 6;
  private static final double LEAST_EASE = 80;

  /** A single sentence may be a little harder than its sheet, but never long. */
  private static final int MOST_WORDS = 20;

  /** Shorter texts are too short for either formula. */
  private static final int SOME_LENGTH = 15;

  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Words WORDS = words();

  private static final Pattern HOLE = Pattern.compile("\\{(\\w+)(?:,\\s*(\\w+))?");

  /** What stands on each sheet that a family gets, as the keys begin. */
  private static final Map<String, List<String>> SHEETS =
      Map.of(
          "card",
          List.of(
              "card.", "picture.", "aim", "good.", "moves.", "well.", "day.", "week.", "settles."),
          "arm box and holds",
          List.of(
              "arm.may",
              "arm.from",
              "arm.no",
              "arm.ask",
              "arm.any",
              "arm.stopped",
              "hold.",
              "held.",
              "ends.",
              "HLD-"),
          "home sheet",
          List.of("home.", "reach.", "safety.", "target."),
          "own log",
          List.of(
              "own-log.",
              "log.zone-call",
              "log.choose",
              "log.countdown",
              "log.field-call",
              "log.plain"),
          "guide",
          List.of("guide."),
          "season report",
          List.of("season."),
          "emergency sheet",
          List.of("emergency."));

  private static Words words() {
    Map<String, LocalText> reasons = new LinkedHashMap<>();
    CATALOGUE.rules().forEach((id, rule) -> reasons.put(id, rule.reason()));
    return Words.load(reasons);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void every_sheet_of_a_family_is_easy_to_read(String language) {
    sheets(language).forEach((sheet, text) -> assertEasy(sheet, text, language));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void every_drill_for_home_is_easy_to_read(String language) {
    drills(language).forEach((drill, text) -> assertEasy(drill, text, language));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void every_ladder_is_easy_to_read(String language) {
    ladders(language).forEach((skill, text) -> assertEasy(skill, text, language));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void no_sentence_is_long(String language) {
    Map<String, String> all = new TreeMap<>(sheets(language));
    all.putAll(drills(language));
    all.putAll(ladders(language));

    assertThat(
            all.values().stream()
                .flatMap(text -> ReadingLevel.sentences(text).stream())
                .filter(s -> ReadingLevel.words(s).size() > MOST_WORDS))
        .isEmpty();
  }

  /** What is pooled could hide one hard text among easy ones. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void every_text_of_some_length_is_easy_by_itself(String language) {
    Map<String, String> all = new TreeMap<>(sheets(language));
    all.putAll(drills(language));

    assertThat(
            all.values().stream()
                .flatMap(String::lines)
                .filter(t -> ReadingLevel.words(t).size() >= SOME_LENGTH)
                .filter(t -> !easy(ReadingLevel.of(t, language), language)))
        .isEmpty();
  }

  private static boolean easy(ReadingLevel level, String language) {
    return language.equals("es") ? level.ease() >= LEAST_EASE : level.grade() <= MOST_GRADE;
  }

  private static void assertEasy(String what, String text, String language) {
    ReadingLevel level = ReadingLevel.of(text, language);
    assertThat(easy(level, language))
        .as("%s: grade %.1f, ease %.1f%n%s", what, level.grade(), level.ease(), text)
        .isTrue();
  }

  private static Map<String, String> sheets(String language) {
    Map<String, String> sheets = new TreeMap<>();
    SHEETS.forEach(
        (sheet, stems) -> {
          List<String> lines = new ArrayList<>();
          WORDS.keys(language).stream()
              .filter(key -> stems.stream().anyMatch(key::startsWith))
              .filter(key -> !key.contains(".alt"))
              .forEach(key -> lines.add(filled(key, language)));
          assertThat(lines).as(sheet).hasSizeGreaterThan(5);
          sheets.put(sheet, String.join("\n", lines));
        });
    return sheets;
  }

  /** The sentence of a key, with something ordinary in each hole. */
  private static String filled(String key, String language) {
    Phrase phrase = Phrase.of(key);
    Matcher hole = HOLE.matcher(WORDS.template(key, language));
    while (hole.find()) {
      phrase = phrase.with(hole.group(1), ordinary(String.valueOf(hole.group(2))));
    }
    return WORDS.say(phrase, language).replace("**", "");
  }

  private static Object ordinary(String kind) {
    return switch (kind) {
      case "plural", "number" -> 12;
      case "date" -> LocalDate.of(2027, 4, 5);
      case "time" -> LocalTime.of(17, 30);
      default -> "12";
    };
  }

  private static Map<String, String> drills(String language) {
    Map<String, String> drills = new TreeMap<>();
    CATALOGUE.curricula().values().stream()
        .flatMap(c -> c.drills().values().stream())
        .filter(d -> d.at(Place.HOME))
        .forEach(d -> drills.put(d.id(), text(d, language)));
    return drills;
  }

  private static String text(Drill drill, String language) {
    return String.join(
        "\n",
        Stream.of(drill.name(), drill.setup(), drill.cue(), drill.write(), drill.easier().text())
            .map(t -> t.in(language))
            .toList());
  }

  private static Map<String, String> ladders(String language) {
    Map<String, String> ladders = new TreeMap<>();
    CATALOGUE.curricula().values().stream()
        .flatMap(c -> c.ladders().values().stream())
        .forEach(
            ladder ->
                ladders.put(
                    ladder.skill().id(),
                    String.join(
                        "\n", ladder.steps().stream().map(s -> text(s, language)).toList())));
    return ladders;
  }

  private static String text(Step step, String language) {
    return step.name().in(language)
        + "\n"
        + step.aim().in(language)
        + "\n"
        + step.cue().in(language);
  }

  @Test
  void grades_and_ease_follow_the_formulas() {
    ReadingLevel english = ReadingLevel.of("The cat sat on the mat. It was happy.", "en");
    ReadingLevel spanish = ReadingLevel.of("La niña mira la pelota. Corre.", "es");

    assertThat(english).isEqualTo(new ReadingLevel(9, 2, 10));
    assertThat(english.grade()).isCloseTo(0.39 * 4.5 + 11.8 * 10 / 9 - 15.59, within(1e-9));
    assertThat(spanish).isEqualTo(new ReadingLevel(6, 2, 11));
    assertThat(spanish.ease()).isCloseTo(206.84 - 110 - 3.06, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "ball,1",
    "toss,1",
    "tosses,2",
    "hitter,2",
    "middle,2",
    "away,2",
    "strike,1",
    "strikes,1",
    "picture,2",
    "tired,1",
    "safe,1",
    "table,2",
    "plate,1",
    "week,1",
    "family,3",
    "safety,3",
    "distance,2",
    "called,1",
    "counted,2",
    "adult,2",
    "protection,3",
    "12,1",
    "balances,3",
    "ambulance,3",
    "eye,1",
    "heights,1",
    "inches,2",
    "player's,2"
  })
  void english_syllables_are_counted_by_spelling(String word, int syllables) {
    assertThat(ReadingLevel.syllables(word, "en")).isEqualTo(syllables);
  }

  @ParameterizedTest
  @CsvSource({
    "pelota,3",
    "quien,1",
    "batea,3",
    "cintura,3",
    "día,2",
    "guía,2",
    "pie,1",
    "muy,1",
    "y,1",
    "leer,2",
    "también,2",
    "estación,3",
    "lanzamiento,4",
    "afuera,3",
    "agua,2",
    "seguir,2",
    "12,1",
    "todavía,4",
    "hay,1",
    "adiós,2",
    "veintiún,2",
    "ahora,3",
    "yo,1",
    "ayuda,3"
  })
  void spanish_syllables_are_counted_by_spelling(String word, int syllables) {
    assertThat(ReadingLevel.syllables(word, "es")).isEqualTo(syllables);
  }
}
