package org.belthigh.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.belthigh.intake.ShortMarks.Word;
import org.belthigh.model.Bats;
import org.belthigh.model.Problem;

/**
 * The words that name the player of a typed line, as sheets print names: {@code José}, {@code José
 * 7}, {@code Ana O. 12}. The word behind them may belong to the name or be the first toss.
 *
 * @param either the word that may be both; empty where the next one is clear
 */
record LineName(List<Word> words, Optional<Word> either) {
  /** A single letter or two are marks; a surname is longer. */
  private static final int LONGEST_MARK = 2;

  LineName {
    words = List.copyOf(words);
  }

  /** Gives all whom a name may mean in a group, those of the group first. */
  interface Who {
    /** All whom {@code text} may mean; none where nobody fits. */
    List<Player> called(String text, String group);
  }

  /**
   * What the name turned out to be.
   *
   * @param player the name, at the place of its first word
   * @param withEither whether the word that may be both belongs to it
   * @param known whether it names exactly one player
   * @param doubt where the word that may be both could have been read otherwise: what to say
   */
  record Resolved(Word player, boolean withEither, boolean known, Optional<Doubt> doubt) {}

  /**
   * A word that was read as one of two things.
   *
   * @param behind the name before it
   * @param id of the player
   * @param name whether it was read as part of the name, and not as a toss
   */
  record Doubt(Word word, String behind, String id, boolean name) {
    /** What is said of it and of {@code others} like it in the same file. */
    Problem told(int others) {
      return Problem.warning(
          word.origin(),
          "",
          "'"
              + word.text()
              + "' behind '"
              + behind
              + "' can belong to the name or be a toss, and is read as "
              + (name ? "the name" : "a toss")
              + (others == 0 ? "" : "; so in " + Notes.rows(others) + " below"),
          "a line begins with the shirt number, a name or the id",
          "Maybe begin the line with "
              + id
              + (name ? ", if a toss is meant." : ", if the name is meant."));
    }
  }

  private String text() {
    return words.stream().map(Word::text).collect(Collectors.joining(" ")).replace("#", "");
  }

  /**
   * How many of the words are the name, where those behind it speak of health: the longest name
   * that anybody has. All of them where none do.
   */
  int beforeHealth(Who who, String group) {
    if (who.called(text(), group).isEmpty()) {
      for (int cut = words.size() - 1; cut > 0; cut--) {
        boolean health = HealthWords.in(said(words.subList(cut, words.size())));
        if (health && (cut == 1 || !who.called(said(words.subList(0, cut)), group).isEmpty())) {
          return cut;
        }
      }
    }
    return words.size();
  }

  private static String said(List<Word> words) {
    return String.join(" ", ShortWords.texts(words));
  }

  Resolved resolve(Who who, String group) {
    List<Player> alone = who.called(text(), group);
    if (either.isPresent()) {
      List<Player> longer = who.called(text() + " " + either.get().text(), group);
      if (longer.size() == 1) {
        return either(alone, longer.get(0));
      }
    }
    return new Resolved(words.get(0).with(text()), false, alone.size() == 1, Optional.empty());
  }

  /** The longer name fits one player: it is meant, unless the word is a mark beyond doubt. */
  private Resolved either(List<Player> alone, Player longer) {
    Word word = either.orElseThrow();
    boolean needed = alone.size() != 1;
    boolean side = ShortMarks.side(word.small()).isPresent();
    if (side && !needed) {
      return side(alone.get(0));
    }
    boolean number = word.text().chars().allMatch(Character::isDigit);
    boolean name = needed || number || word.text().length() > LONGEST_MARK;
    return new Resolved(
        words.get(0).with(name ? text() + " " + word.text() : text()),
        name,
        true,
        needed ? Optional.empty() : Optional.of(new Doubt(word, text(), longer.id(), name)));
  }

  private Resolved side(Player player) {
    boolean name = player.bats() != Bats.SWITCH;
    return new Resolved(words.get(0).with(text()), name, true, Optional.empty());
  }
}
