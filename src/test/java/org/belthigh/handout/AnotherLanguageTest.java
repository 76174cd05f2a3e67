package org.belthigh.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.handout.kit.Conformance;
import org.belthigh.handout.kit.PdfLint;
import org.belthigh.model.LocalText;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * A language that nobody wrote: English with accents, and every vowel twice, so about a third
 * longer, in messages and in all that the catalogue says of drills, steps and rules.
 */
class AnotherLanguageTest {
  /** A code of a real language, since files name one; none of its words are used. */
  private static final String CODE = "eo";

  private static final String VOWELS = "aeiouAEIOU";
  private static final String ACCENTED = "áéîöúÁÉÎÖÚ";

  private static final Words WORDS = SamplePlans.WORDS.with(CODE, longer());

  private static Map<String, String> longer() {
    return SamplePlans.WORDS.keys("en").stream()
        .collect(Collectors.toMap(k -> k, k -> longer(SamplePlans.WORDS.template(k, "en"))));
  }

  /**
   * A template with longer words between its holes. What stands in a hole is left alone, but for
   * the texts to choose from in it, which stand in braces of their own.
   */
  private static String longer(String template) {
    StringBuilder out = new StringBuilder();
    int depth = 0;
    for (int i = 0; i < template.length(); i++) {
      char c = template.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      int vowel = VOWELS.indexOf(c);
      if (depth % 2 == 0 && vowel >= 0) {
        out.append(ACCENTED.charAt(vowel)).append(Character.toLowerCase(c));
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  /** All that the catalogue says, in this language too. */
  private static Catalogue speaking(Catalogue catalogue) {
    return (Catalogue) speaking((Object) catalogue);
  }

  /** Rebuilds records and what they hold; a text in several languages gets one more. */
  private static Object speaking(Object value) {
    if (value instanceof LocalText text) {
      Map<String, String> more = new TreeMap<>(text.byLanguage());
      more.put(CODE, longer(text.in("en")));
      return new LocalText(more);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(AnotherLanguageTest::speaking).toList();
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(AnotherLanguageTest::speaking);
    }
    if (value instanceof Map<?, ?> map) {
      Map<Object, Object> all = new LinkedHashMap<>();
      map.forEach((key, held) -> all.put(key, speaking(held)));
      return all;
    }
    return value instanceof Record parts ? rebuilt(parts) : value;
  }

  private static Object rebuilt(Record parts) {
    try {
      RecordComponent[] components = parts.getClass().getRecordComponents();
      Class<?>[] types = new Class<?>[components.length];
      Object[] values = new Object[components.length];
      for (int i = 0; i < components.length; i++) {
        types[i] = components[i].getType();
        components[i].getAccessor().setAccessible(true);
        values[i] = speaking(components[i].getAccessor().invoke(parts));
      }
      Constructor<?> constructor = parts.getClass().getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(parts.getClass().getName(), e);
    }
  }

  @Test
  void a_choice_of_plurals_and_a_drill_are_longer_too() {
    assertThat(longer("{n, plural, one {# toss} other {# tosses}} left"))
        .isEqualTo("{n, plural, one {# töoss} other {# töossées}} léeft");
    assertThat(speaking(SamplePlans.CATALOGUE).curricula().get("belthigh-2027"))
        .extracting(c -> c.drill("countdown").name().in(CODE))
        .isEqualTo("Cöoúuntdöown");
  }

  @Test
  void it_is_about_a_third_longer_and_has_accents() {
    int english = 0;
    int longer = 0;
    for (String key : SamplePlans.WORDS.keys("en")) {
      english += SamplePlans.WORDS.template(key, "en").replaceAll("\\{[^}]*}", "").length();
      longer += WORDS.template(key, CODE).replaceAll("\\{[^}]*}", "").length();
    }

    assertThat((double) longer / english).isBetween(1.25, 1.4);
    assertThat(WORDS.say("guide.title", CODE)).isEqualTo("Höow töo réeáad yöoúur cáard");
  }

  @ParameterizedTest
  @ValueSource(strings = {"letter", "a4"})
  void every_print_survives_it(String paper) {
    Map<String, byte[]> prints = new TreeMap<>();
    new Handouts(WORDS).print(plan(paper), EnumSet.allOf(Print.class), prints::put);

    assertThat(prints.keySet())
        .extracting(path -> path.replaceAll(".*/|-.*|\\.pdf", ""))
        .contains("overview", "practice", "arm", "emergency", "guide", "p12", "evaluation", "log");
    prints.forEach(
        (path, pdf) -> {
          assertThat(Conformance.faults(pdf, PDFAFlavour.PDFUA_1)).as(path).isEmpty();
          if (!path.endsWith("packet.pdf")) {
            assertThat(PdfLint.faults(pdf)).as(path).isEmpty();
          }
        });
  }

  @Test
  void a_language_with_a_word_missing_is_refused() {
    Map<String, String> texts = longer();
    texts.remove("guide.title");

    assertThatThrownBy(() -> SamplePlans.WORDS.with(CODE, texts))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("language eo has no words for [guide.title]");
  }

  private static Plan plan(String paper) {
    return SamplePlans.demo(
        speaking(SamplePlans.CATALOGUE),
        2,
        Set.of(),
        Set.of("p01", "p12", "p16"),
        paper,
        Optional.of(CODE));
  }
}
