package org.belthigh.handout;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.belthigh.handout.kit.PageWords;
import org.belthigh.handout.kit.Text;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;
import org.belthigh.plan.Label;
import org.belthigh.words.Words;

/**
 * The words of one reader: a language, and the units that go with it.
 *
 * @param language {@code en} or {@code es}
 */
record Voice(Words words, String language) {
  private static final double METRES_PER_FOOT = 0.3048;
  private static final double CM_PER_INCH = 2.54;

  String say(Phrase phrase) {
    return words.say(phrase, language);
  }

  String say(LocalText text) {
    return text.in(language);
  }

  /** The words of {@code key}, its holes filled with names and values in turn. */
  String say(String key, Object... namesAndValues) {
    return say(Phrase.of(key, namesAndValues));
  }

  List<Text> all(List<Phrase> phrases) {
    return phrases.stream().map(this::say).map(Text::of).toList();
  }

  Locale locale() {
    return Locale.forLanguageTag(language);
  }

  /** What pages add by themselves. */
  PageWords pages() {
    return new PageWords(
        locale(), words.template("page.of", language), words.template("page.continued", language));
  }

  /** A distance on the ground, from whole feet. */
  String distance(int feet) {
    return say("distance", "feet", feet, "metres", feet * METRES_PER_FOOT);
  }

  /** A height above the ground, to the whole inch or centimetre. */
  String height(double cm) {
    double unit = language.equals("en") ? CM_PER_INCH : 1;
    return say("picture.height", "length", Math.round(cm / unit));
  }

  /** First name and shirt number, as every sheet names a player. */
  String name(Label who) {
    OptionalInt number = who.number();
    return number.isPresent()
        ? say("card.name", "player", who.name(), "number", number.getAsInt())
        : who.name();
  }
}
