package org.belthigh.model;

import java.util.Comparator;
import java.util.Objects;

/**
 * Something in the input that the user should look at.
 *
 * @param weight whether the row or file was set aside, or only remarked on
 * @param origin file, line and column
 * @param subject the column, key or thing, such as {@code zone}; empty for the whole row or file
 * @param found what was found, as a clause: {@code 10 is not a spot}
 * @param allowed what is allowed, as a clause: {@code zone must be 1 to 9, ball, or a word …}
 * @param maybe the next step, a sentence that begins with "Maybe" or tells what to do
 * @param consequence whether this only follows from other problems of its file, and stands after
 *     them
 */
public record Problem(
    Weight weight,
    Origin origin,
    String subject,
    String found,
    String allowed,
    String maybe,
    boolean consequence)
    implements Comparable<Problem> {
  private static final int LONGEST = 1_200;
  private static final int FRONT = 120;
  private static final int HIDDEN = 0xFFFD;
  private static final Comparator<Problem> ORDER =
      Comparator.comparing((Problem p) -> p.origin.file())
          .thenComparing(Problem::consequence)
          .thenComparing(Problem::origin)
          .thenComparing(Problem::text);

  /** How much a problem matters. */
  public enum Weight implements Coded {
    /** The row, file or key was set aside; exit status 3. */
    FAULT,
    /** Read all the same; exit status stays. */
    WARNING
  }

  public Problem {
    Objects.requireNonNull(weight);
    Objects.requireNonNull(origin);
    if (found.isBlank() || allowed.isBlank() || maybe.isBlank()) {
      throw new IllegalArgumentException(
          "A problem says what was found, what is allowed and what to do next, but has found='"
              + found
              + "', allowed='"
              + allowed
              + "', maybe='"
              + maybe
              + "'");
    }
    subject = visible(subject);
    found = visible(found);
    allowed = visible(allowed);
    maybe = visible(maybe);
  }

  /**
   * What a file holds goes to a terminal: no line ends, no control or direction marks, not endless.
   */
  private static String visible(String clause) {
    StringBuilder visible = new StringBuilder();
    clause
        .codePoints()
        .map(c -> Character.isWhitespace(c) ? ' ' : hidden(c) ? HIDDEN : c)
        .forEach(visible::appendCodePoint);
    int tail = visible.length() - LONGEST;
    return tail > 0 ? visible.replace(FRONT, FRONT + tail, " … ").toString() : visible.toString();
  }

  private static boolean hidden(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
  }

  /** What stands on its own. */
  public Problem(
      Weight weight, Origin origin, String subject, String found, String allowed, String maybe) {
    this(weight, origin, subject, found, allowed, maybe, false);
  }

  /** The same as what only follows from other problems of its file. */
  public Problem asConsequence() {
    return new Problem(weight, origin, subject, found, allowed, maybe, true);
  }

  /** A fault: something was set aside. */
  public static Problem fault(
      Origin origin, String subject, String found, String allowed, String maybe) {
    return new Problem(Weight.FAULT, origin, subject, found, allowed, maybe);
  }

  /** A remark: nothing was set aside. */
  public static Problem warning(
      Origin origin, String subject, String found, String allowed, String maybe) {
    return new Problem(Weight.WARNING, origin, subject, found, allowed, maybe);
  }

  /** Whether something was set aside. */
  public boolean isFault() {
    return weight == Weight.FAULT;
  }

  /** By file, in it the causes first, then by place. */
  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }

  /** Two lines: where, found and allowed; then the next step. */
  public String text() {
    String where = subject.isEmpty() ? origin.toString() : origin + ", " + subject;
    return where + ": " + found + "; " + allowed + ".\n" + maybe;
  }
}
