package org.belthigh.intake;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.belthigh.catalogue.Drill;
import org.belthigh.intake.ShortMarks.Word;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Problem;

/**
 * Marks as log sheets ask for them, typed as they stand: ticks and dashes, where it was behind one
 * if that was written down ({@code + + -4 +5}), and in a countdown 1 and 2 for each swing.
 */
final class PaperMarks {
  private static final String SPOT = "(?:[1-9b0])?";
  private static final String TICK = "[+v✓✔√]" + SPOT;
  private static final String DASH = "[-–—−]" + SPOT;
  private static final Pattern TICKS = Pattern.compile("(?:" + TICK + "|" + DASH + ")+");
  private static final Pattern ONE = Pattern.compile(TICK + "|" + DASH);
  private static final String HARD = "1";
  private static final String OTHER = "2";

  private Optional<Word> first = Optional.empty();
  private int made;
  private int of;

  /** Whether a word is ticks and dashes, one or several. */
  static boolean isTicks(String word) {
    return TICKS.matcher(word).matches();
  }

  void add(Word word) {
    first = first.or(() -> Optional.of(word));
    ONE.matcher(word.small())
        .results()
        .forEach(
            mark -> {
              of++;
              made += mark.group().matches(TICK) ? 1 : 0;
            });
  }

  /** The first word of ticks; empty where there is none. */
  Optional<Word> first() {
    return first;
  }

  int made() {
    return made;
  }

  int of() {
    return of;
  }

  /** Whether a line of a countdown holds swings and nothing else. */
  static boolean areSwings(Optional<Drill> drill, List<Word> words) {
    return drill.filter(d -> d.kind() == DrillKind.COUNTDOWN).isPresent()
        && !words.isEmpty()
        && words.stream().map(Word::text).allMatch(t -> t.equals(HARD) || t.equals(OTHER));
  }

  /** The swings used until the count is at or below zero; 0 where it does not get there. */
  static int score(List<Word> words, int start) {
    int count = start;
    for (int used = 1; used <= words.size(); used++) {
      count -= Integer.parseInt(words.get(used - 1).text());
      if (count <= 0) {
        return used;
      }
    }
    return 0;
  }

  /** Whether a dash stands behind the spot, where a sheet asks for it before. */
  static boolean isBackwards(String word) {
    return word.matches("[1-9b0][-–—−]");
  }

  /** Spots that are all without a call, in a drill that is about calling them. */
  static Problem noCalls(Word first, Drill drill) {
    return Problem.warning(
        first.origin(),
        "",
        "no toss of this line has a call, and each is counted as let go",
        "in " + drill.id() + " the call stands behind the spot, such as 45: spot 4, called 5",
        "Maybe 4 5 was to be 45; else leave it.");
  }

  static Problem unfinished(Word word, int start) {
    return Problem.fault(
        word.origin(),
        "",
        "these 1 and 2 do not add up to " + start + ", so the line is left out",
        "a countdown must be counted to 0 with 1 and 2, or typed toss by toss, such as 5h 4m",
        "Maybe the round was not finished; then leave the line out.");
  }

  static Problem notCounted(Word word, Optional<Drill> drill) {
    String toss = drill.filter(d -> !d.swing()).isPresent() ? "45 55" : "5h 4m";
    return Problem.warning(
        word.origin(),
        "",
        "ticks and dashes in " + drill.map(Drill::id).orElse("this drill") + " are not counted",
        drill.filter(d -> d.kind() == DrillKind.COUNTDOWN).isPresent()
            ? "a countdown counts with 1 and 2 for each swing, or toss by toss, such as 5h 4m"
            : "this drill counts with the spot of each toss, such as " + toss,
        "Maybe another drill is meant.");
  }
}
