package org.belthigh.handout.kit;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A text in runs of regular and bold.
 *
 * <p>Composed to NFC; runs of white space become one space, a line feed stays a line break. A
 * character that the fonts lack is shown as a box, once for several on end, so that a reader sees
 * that something is missing and the rest still prints; invisible characters are dropped. Words of
 * right-to-left scripts are set as {@link RightToLeft} says.
 */
public final class Text {
  /** The empty text. */
  public static final Text EMPTY = new Text(List.of());

  /** A stretch of text in one face. */
  record Run(Face face, String text) {}

  private final List<Run> runs;

  /** Where lines may break, found when it is first set; a second finding would be the same. */
  private List<Typesetter.Chunk> chunks;

  private Text(List<Run> runs) {
    this.runs = List.copyOf(runs);
  }

  /** Regular text, taken literally. */
  public static Text of(String text) {
    return one(Face.REGULAR, text);
  }

  /** Bold text, taken literally. */
  public static Text bold(String text) {
    return one(Face.BOLD, text);
  }

  /**
   * Text in which pairs of {@code **} switch bold on and off.
   *
   * @throws IllegalArgumentException if a {@code **} has no partner
   */
  public static Text marked(String text) {
    String[] parts = text.split("\\*\\*", -1);
    if (parts.length % 2 == 0) {
      throw new IllegalArgumentException(
          "text \"%s\": a ** has no partner; they must come in pairs.".formatted(text));
    }
    Text marked = EMPTY;
    for (int i = 0; i < parts.length; i++) {
      marked = marked.and(i % 2 == 0 ? of(parts[i]) : bold(parts[i]));
    }
    return marked;
  }

  /** This text followed by another, with nothing between them. */
  public Text and(Text more) {
    List<Run> both = new ArrayList<>(runs);
    both.addAll(more.runs);
    return new Text(both);
  }

  /** This text followed by regular text. */
  public Text and(String more) {
    return and(of(more));
  }

  /** The same words, all bold. */
  Text allBold() {
    return new Text(runs.stream().map(run -> new Run(Face.BOLD, run.text())).toList());
  }

  /** Whether there is nothing to draw. */
  public boolean isBlank() {
    return runs.stream().allMatch(run -> run.text().isBlank());
  }

  /** The words without their faces. */
  public String plain() {
    return runs.stream().map(Run::text).collect(Collectors.joining());
  }

  List<Run> runs() {
    return runs;
  }

  List<Typesetter.Chunk> chunks() {
    List<Typesetter.Chunk> found = chunks;
    if (found == null) {
      found = Typesetter.chunks(this);
      chunks = found;
    }
    return found;
  }

  @Override
  public String toString() {
    return plain();
  }

  private static Text one(Face face, String text) {
    String clean = clean(face, text);
    return clean.isEmpty() ? EMPTY : new Text(List.of(new Run(face, clean)));
  }

  private static String clean(Face face, String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder clean = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(codePoint -> appendShown(clean, face, codePoint));
    return RightToLeft.set(clean.toString());
  }

  /** Whether there are only letters that every font has and nothing else is made of. */
  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) < ' ' || text.charAt(at) > '~') {
        return false;
      }
    }
    return true;
  }

  private static void appendShown(StringBuilder to, Face face, int codePoint) {
    if (codePoint == '\n' || codePoint == '\u00a0') {
      to.appendCodePoint(codePoint);
    } else if (Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint)) {
      to.append(' ');
    } else if (isInvisible(codePoint)) {
      return;
    } else {
      appendKnown(to, face.has(codePoint) ? codePoint : Face.STAND_IN);
    }
  }

  private static void appendKnown(StringBuilder to, int codePoint) {
    boolean again =
        codePoint == Face.STAND_IN
            && to.length() > 0
            && to.codePointBefore(to.length()) == Face.STAND_IN;
    if (!again) {
      to.appendCodePoint(codePoint);
    }
  }

  private static boolean isInvisible(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || (codePoint >= 0xfe00 && codePoint <= 0xfe0f);
  }
}
