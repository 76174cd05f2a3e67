package org.belthigh.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 5);

  /** Inches here, centimetres there: phrases that give both and let the language choose. */
  private static final Set<String> IN_UNITS_OF_THE_LANGUAGE = Set.of("picture.height", "distance");

  private static Words words(String en, String es) {
    return Words.load(Map.of("k", LocalText.of(en, es)));
  }

  @Test
  void every_language_has_the_same_keys_and_no_text_is_empty() {
    Words words = Words.load(Map.of());

    assertThat(words.keys("es")).isEqualTo(words.keys("en"));
    for (String language : Words.LANGUAGES) {
      assertThat(words.keys(language))
          .allSatisfy(key -> assertThat(words.template(key, language)).isNotBlank());
    }
  }

  @Test
  void no_language_has_a_hole_that_english_lacks() {
    Words words = Words.load(Map.of());

    for (String key : words.keys("en")) {
      if (IN_UNITS_OF_THE_LANGUAGE.contains(key)) {
        continue;
      }
      assertThat(holes(words, key, "en")).as(key).containsAll(holes(words, key, "es"));
    }
  }

  private static Set<String> holes(Words words, String key, String language) {
    return new MessageFormat(words.template(key, language), ULocale.forLanguageTag(language))
        .getArgumentNames();
  }

  @Test
  void plurals_follow_the_language() {
    Words words =
        words(
            "{n, plural, one {# toss} other {# tosses}}",
            "{n, plural, one {# lanzamiento} other {# lanzamientos}}");

    assertThat(words.say(Phrase.of("k", "n", 1), "en")).isEqualTo("1 toss");
    assertThat(words.say(Phrase.of("k", "n", 12), "es")).isEqualTo("12 lanzamientos");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTC", "Pacific/Kiritimati", "Pacific/Pago_Pago", "America/New_York"})
  void a_date_is_the_same_day_in_every_time_zone(String zone) {
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      com.ibm.icu.util.TimeZone.setDefault(com.ibm.icu.util.TimeZone.getTimeZone(zone));
      Words words = words("{d, date, ::EEEEMMMMd}", "{d, date, ::EEEEMMMMd}");

      assertThat(words.say(Phrase.of("k", "d", DAY), "en")).isEqualTo("Monday, April 5");
      assertThat(words.say(Phrase.of("k", "d", DAY), "es")).isEqualTo("lunes, 5 de abril");
    } finally {
      TimeZone.setDefault(before);
      com.ibm.icu.util.TimeZone.setDefault(com.ibm.icu.util.TimeZone.getTimeZone(before.getID()));
    }
  }

  @Test
  void a_time_of_day_is_itself() {
    Words words = words("{t, time, ::jmm}", "{t, time, ::jmm}");

    assertThat(words.say(Phrase.of("k", "t", LocalTime.of(17, 30)), "en")).matches("5:30.PM");
  }

  @Test
  void texts_lists_and_phrases_go_into_holes() {
    Words words = words("{a} and {b}", "{a} y {b}");
    Phrase inner = Phrase.of("k", "a", LocalText.of("low", "baja"), "b", List.of("x", "y", "z"));

    assertThat(words.say(Phrase.of("k", "a", inner, "b", 2), "en"))
        .isEqualTo("low and x, y, and z and 2");
    assertThat(words.say(Phrase.of("k", "a", inner, "b", 2), "es"))
        .isEqualTo("baja y x, y y z y 2");
  }

  @Test
  void a_hole_without_a_value_throws() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> words("{a}", "{a}").say(Phrase.of("k"), "en"))
        .withMessage("The phrase 'k' has nothing for its hole {a}");
  }

  @Test
  void a_key_that_is_not_known_throws() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> words("a", "b").say("nothing", "en"))
        .withMessage("No words for 'nothing' in language en");
  }
}
