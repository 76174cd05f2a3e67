package org.belthigh.intake;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.model.Coded;

/**
 * Whether a text that stands where a drill or a toss should speaks of pain or illness: it belongs
 * into {@code wellness.csv}, and until it is there the child is asked about first. What the matter
 * is, nobody guesses from it.
 */
final class HealthWords {
  /**
   * Words of people for what hurts, beside those of {@code wellness.csv}; our own choice. None that
   * a log uses for a hit, such as {@code golpe}.
   */
  private static final Set<String> SAID =
      Set.of(
          "hurt",
          "hurts",
          "hurting",
          "pain",
          "sore",
          "ache",
          "aches",
          "injury",
          "injured",
          "concussion",
          "sick",
          "ill",
          "dolor",
          "duele",
          "dolia",
          "doler",
          "lesion",
          "lastimado",
          "lastimada",
          "enfermo",
          "enferma",
          "conmocion");

  private HealthWords() {}

  static boolean in(String text) {
    String plain = Vocabulary.plain(text, '-');
    return Vocabulary.word("kind", text)
            .or(() -> Optional.of(plain))
            .flatMap(word -> Coded.find(Wellness.Kind.class, word))
            .filter(Wellness.Kind::holds)
            .isPresent()
        || Stream.of(plain.split("-", -1)).anyMatch(SAID::contains);
  }
}
