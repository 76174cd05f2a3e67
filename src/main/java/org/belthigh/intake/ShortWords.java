package org.belthigh.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.belthigh.files.Blanks;
import org.belthigh.intake.ShortMarks.Word;
import org.belthigh.model.Origin;

/**
 * The words of a typed line, and those of the note behind {@code #}. A {@code #} right before a
 * number, where a shirt number can stand, is no note: {@code #7 55 5h}.
 *
 * @param words without the note
 * @param note its words without {@code #}; those that are empty left out
 */
record ShortWords(List<Word> words, List<Word> note) {
  private static final Pattern NUMBER = Pattern.compile("#\\d{1,3}[.,:]?");
  private static final Pattern NAME =
      Pattern.compile("[\\p{L}\\p{M}.,'’-]*\\p{L}[\\p{L}\\p{M}.,'’-]*");
  private static final String GUEST = "guest";

  /** What people write between two turns, and says nothing. */
  private static final String BETWEEN = "/";

  static ShortWords of(String line, String file, int number, Bearings.Drills drills) {
    List<Word> all = split(line, file, number);
    List<Word> words = new ArrayList<>();
    for (int at = 0; at < all.size(); at++) {
      Word word = all.get(at);
      boolean sharp = word.text().startsWith("#");
      if (sharp && !isNumber(all, at, drills)) {
        return new ShortWords(words, note(all.subList(at, all.size())));
      }
      words.add(word);
    }
    return new ShortWords(words, List.of());
  }

  private static List<Word> note(List<Word> words) {
    return words.stream()
        .map(word -> word.with(word.text().replace("#", "")))
        .filter(word -> !word.text().isEmpty())
        .toList();
  }

  /** Whether the word is a shirt number: in the place of one, and tosses or a drill behind it. */
  private static boolean isNumber(List<Word> all, int at, Bearings.Drills drills) {
    boolean form = isNumber(all.get(at));
    boolean guest = all.get(0).small().equals(GUEST);
    if (!form || guest) {
      return form;
    }
    boolean place = all.subList(0, at).stream().allMatch(ShortWords::isName);
    boolean last = at + 1 == all.size();
    boolean marks =
        !last
            && (ShortMarks.isMark(all.get(at + 1))
                || (isName(all.get(at + 1)) && marked(all, at + 1))
                || drills.words(texts(all), at + 1) > 0);
    return place && (marks || (last && at > 0));
  }

  /** Whether names and then a mark stand from {@code from} on: {@code #7 José 55}. */
  private static boolean marked(List<Word> all, int from) {
    int at = from;
    while (at < all.size() && isName(all.get(at)) && !ShortMarks.isMark(all.get(at))) {
      at++;
    }
    return at < all.size() && all.subList(at, all.size()).stream().allMatch(ShortMarks::isMark);
  }

  static List<String> texts(List<Word> words) {
    return words.stream().map(Word::text).toList();
  }

  /** Whether a word may be one of a name: letters and what stands between them. */
  static boolean isName(Word word) {
    return NAME.matcher(word.text()).matches();
  }

  /** Whether a word is a shirt number that says so: {@code #7}. */
  static boolean isNumber(Word word) {
    return NUMBER.matcher(word.text()).matches();
  }

  private static List<Word> split(String line, String file, int number) {
    List<Word> words = new ArrayList<>();
    int from = -1;
    for (int at = 0; at <= line.length(); at++) {
      boolean blank = at == line.length() || Blanks.strip(line.substring(at, at + 1)).isEmpty();
      if (!blank && from < 0) {
        from = at;
      } else if (blank && from >= 0) {
        String word = line.substring(from, at);
        if (!word.equals(BETWEEN)) {
          words.add(new Word(word, new Origin(file, number, from + 1)));
        }
        from = -1;
      }
    }
    return words;
  }

  /** Whether the note, which takes up the whole line, begins with a player and a toss. */
  private boolean noteIsPlayer(Bearings.Drills drills, Predicate<String> isPlayer) {
    if (!isPlayer.test(note.get(0).text())) {
      return false;
    }
    int at = 1;
    while (at < note.size() && isName(note.get(at)) && !ShortMarks.isMark(note.get(at))) {
      at++;
    }
    int drill = drills.words(texts(note), 1);
    at = drill > 0 ? 1 + drill : at;
    return at < note.size() && ShortMarks.isMark(note.get(at));
  }

  private boolean areMarks(int from) {
    return note.subList(from, note.size()).stream().allMatch(ShortMarks::isMark);
  }

  /**
   * Whether what stands in the note looks like tosses or a day, which nobody means to leave out.
   *
   * @param isPlayer whether a text names a player
   */
  boolean noteLooksMeant(Bearings.Drills drills, Predicate<String> isPlayer) {
    if (note.isEmpty()) {
      return false;
    }
    return words.isEmpty()
        ? DayWords.at(note, 0).isPresent() || noteIsPlayer(drills, isPlayer)
        : areMarks(0) && words.size() > 1;
  }
}
