package org.belthigh.intake;

import java.util.Map;
import java.util.Optional;

/**
 * One toss in the shortest honest form, a word such as {@code 4}, {@code 45}, {@code 5h} or {@code
 * bbf}: the spot, what was called if anything was, how it was hit, where it went.
 *
 * <p>The spot is 1 to 9, or {@code b} (or 0) for a ball; {@code ~} after it says that it was near
 * the edge. Called is a spot too, or coarser {@code k} strike, {@code u w l} up (high), waist
 * (belt), low, {@code i c a} in, center (middle), away, or {@code n} none. Then {@code h s m f}
 * hard, soft, miss, foul; a word without one of them is a take. Last, after a swing, {@code lf lc
 * cf rc rf} for the field, {@code p} for a pop-up, {@code =} for the field that was called.
 *
 * @param zone in the words of the log files, as all the rest; empty for what is not said
 */
record ShortToss(String zone, boolean near, String called, String hit, String went) {
  /** The whole form, for messages. */
  static final String ALLOWED =
      "a toss must be a spot (1 to 9 or b), then what was called, then h, s, m or f on a swing, then"
          + " where it went";

  /** Codes of the fields, as used for where a ball went and for what was called before it. */
  static final Map<String, String> FIELDS =
      Map.of(
          "lf", "left", "lc", "left-center", "cf", "center", "rc", "right-center", "rf", "right");

  private static final Map<Character, String> CALLS =
      Map.of(
          'k', "strike", 'u', "high", 'w', "belt", 'l', "low", 'i', "in", 'c', "middle", 'a',
          "away", 'n', "none");
  private static final Map<Character, String> HITS =
      Map.of('h', "hard", 's', "soft", 'm', "miss", 'f', "foul");
  private static final char BALL = 'b';

  /** Whether the hitter swung. */
  boolean swing() {
    return !hit.isEmpty();
  }

  /**
   * The toss that {@code word}, in small letters, says; empty where it says none.
   *
   * @param field the field called before, in the words of the log files; empty where none was
   */
  static Optional<ShortToss> parse(String word, String field) {
    String zone = spot(word, 0);
    int at = zone.isEmpty() ? 0 : 1;
    boolean near = at < word.length() && word.charAt(at) == '~';
    at += near ? 1 : 0;
    String called = call(word, at);
    at += called.isEmpty() ? 0 : 1;
    String hit = at < word.length() ? HITS.getOrDefault(word.charAt(at), "") : "";
    at += hit.isEmpty() ? 0 : 1;
    Optional<String> went = went(hit.isEmpty() ? "" : word.substring(at), field);
    boolean ended = !hit.isEmpty() || at == word.length();
    return zone.isEmpty() || !ended || went.isEmpty()
        ? Optional.empty()
        : Optional.of(new ShortToss(zone, near, called, hit, went.get()));
  }

  private static String spot(String word, int at) {
    if (at >= word.length()) {
      return "";
    }
    char c = word.charAt(at);
    if (c == BALL || c == '0') {
      return "ball";
    }
    return c >= '1' && c <= '9' ? String.valueOf(c) : "";
  }

  private static String call(String word, int at) {
    String spot = spot(word, at);
    return spot.isEmpty() && at < word.length() ? CALLS.getOrDefault(word.charAt(at), "") : spot;
  }

  private static Optional<String> went(String code, String field) {
    return switch (code) {
      case "" -> Optional.of("");
      case "=" -> Optional.of(field).filter(f -> !f.isEmpty());
      case "p" -> Optional.of("pop-up");
      default -> Optional.ofNullable(FIELDS.get(code));
    };
  }
}
