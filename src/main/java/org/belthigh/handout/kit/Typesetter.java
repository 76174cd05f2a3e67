package org.belthigh.handout.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets a text into lines no wider than a column, by real advance widths.
 *
 * <p>Lines break at spaces, and after a hyphen or slash between letters. A word wider than the
 * whole column is broken with a hyphen, at least three letters on each side; where not even that
 * fits, {@link Overflow}.
 */
final class Typesetter {
  private static final int LEAST_LETTERS = 3;

  enum Glue {
    NONE,
    SPACE,
    LINE_BREAK
  }

  /**
   * A part of a word in one face.
   *
   * @param units advance width in the font's own units
   */
  private record Fragment(Face face, String text, long units) {
    static Fragment of(Face face, String text) {
      return new Fragment(face, text, face.units(text));
    }

    double width(double size) {
      return face.width(units, size);
    }

    Fragment spaced() {
      return new Fragment(face, " " + text, face.units(" ") + units);
    }
  }

  /** What a line may not break: fragments that belong together, and what stands before them. */
  record Chunk(Glue before, List<Fragment> fragments) {
    Chunk {
      fragments = List.copyOf(fragments);
    }

    double width(double size) {
      return fragments.size() == 1
          ? fragments.get(0).width(size)
          : fragments.stream().mapToDouble(fragment -> fragment.width(size)).sum();
    }
  }

  /** Fragments in a row that are one run of the line. */
  private record Open(Face face, StringBuilder text) {}

  private final double size;
  private final double room;
  private final List<Line> lines = new ArrayList<>();
  private final List<Open> current = new ArrayList<>();
  private double filled;

  private Typesetter(double size, double room) {
    this.size = size;
    this.room = room;
  }

  /**
   * The lines of a text; none if it is empty.
   *
   * @param size type size, in points
   * @param room width of the column, in points
   */
  static List<Line> set(Text text, double size, double room) {
    Typesetter setter = new Typesetter(size, room);
    for (Chunk chunk : text.chunks()) {
      setter.place(chunk);
    }
    setter.endLine(false);
    return List.copyOf(setter.lines);
  }

  /** Width of the text on one line (the widest, if it has line breaks). */
  static double preferredWidth(Text text, double size) {
    double widest = 0;
    double filled = 0;
    boolean begun = false;
    for (Chunk chunk : text.chunks()) {
      filled = chunk.before() == Glue.LINE_BREAK ? 0 : filled;
      boolean spaced = chunk.before() == Glue.SPACE && begun;
      begun = true;
      for (int i = 0; i < chunk.fragments().size(); i++) {
        Fragment fragment = chunk.fragments().get(i);
        filled += (spaced && i == 0 ? fragment.spaced() : fragment).width(size);
      }
      widest = Math.max(widest, filled);
    }
    return widest;
  }

  /** Width of the widest part that a line may not break. */
  static double leastWidth(Text text, double size) {
    double widest = 0;
    for (Chunk chunk : text.chunks()) {
      widest = Math.max(widest, chunk.width(size));
    }
    return widest;
  }

  private void place(Chunk chunk) {
    if (chunk.before() == Glue.LINE_BREAK) {
      endLine(false);
    }
    boolean spaced = chunk.before() == Glue.SPACE && !current.isEmpty();
    double space = spaced ? Face.REGULAR.width(" ", size) : 0;
    double width = chunk.width(size);
    if (filled + space + width <= room + 0.01) {
      append(chunk.fragments(), spaced);
    } else {
      endLine(spaced);
      placeOnNewLine(chunk, width);
    }
  }

  private void placeOnNewLine(Chunk chunk, double width) {
    if (width <= room + 0.01) {
      append(chunk.fragments(), false);
      return;
    }
    chunk.fragments().forEach(this::breakWord);
  }

  /** Fills line after line with the letters of a word, a hyphen at each line's end. */
  private void breakWord(Fragment word) {
    Face face = word.face();
    String rest = word.text();
    while (filled + face.width(rest, size) > room) {
      int letters = lettersThatFit(face, rest);
      if (letters < LEAST_LETTERS) {
        if (!current.isEmpty()) {
          endLine(false);
          continue;
        }
        throw new Overflow("text", 0, word.text(), "is wider than its column even when broken");
      }
      append(List.of(Fragment.of(face, rest.substring(0, letters) + "-")), false);
      endLine(false);
      rest = rest.substring(letters);
    }
    append(List.of(Fragment.of(face, rest)), false);
  }

  private int lettersThatFit(Face face, String word) {
    int letters = Math.max(0, word.length() - LEAST_LETTERS);
    while (letters > 0
        && (Character.isLowSurrogate(word.charAt(letters))
            || filled + face.width(word.substring(0, letters) + "-", size) > room)) {
      letters--;
    }
    return letters;
  }

  private void append(List<Fragment> fragments, boolean spaced) {
    for (int i = 0; i < fragments.size(); i++) {
      Fragment fragment = spaced && i == 0 ? fragments.get(i).spaced() : fragments.get(i);
      int last = current.size() - 1;
      if (last >= 0 && current.get(last).face() == fragment.face()) {
        current.get(last).text().append(fragment.text());
      } else {
        current.add(new Open(fragment.face(), new StringBuilder(fragment.text())));
      }
      filled += fragment.width(size);
    }
  }

  private void endLine(boolean goesOn) {
    if (!current.isEmpty()) {
      List<Text.Run> runs =
          current.stream().map(open -> new Text.Run(open.face(), open.text().toString())).toList();
      lines.add(new Line(runs, filled, goesOn));
      current.clear();
      filled = 0;
    }
  }

  /** What a line may not break, in order. */
  static List<Chunk> chunks(Text text) {
    List<Chunk> chunks = new ArrayList<>();
    List<Fragment> open = new ArrayList<>();
    Glue before = Glue.NONE;
    for (Text.Run run : text.runs()) {
      String letters = run.text();
      int start = 0;
      for (int i = 0; i < letters.length(); i++) {
        char c = letters.charAt(i);
        if (c == ' ' || c == '\n') {
          addRun(open, run.face(), letters.substring(start, i));
          before = close(chunks, open, before);
          before = c == '\n' ? Glue.LINE_BREAK : strongest(before, Glue.SPACE);
          start = i + 1;
        } else if (mayBreakAfter(letters, i)) {
          addRun(open, run.face(), letters.substring(start, i + 1));
          before = close(chunks, open, before);
          start = i + 1;
        }
      }
      addRun(open, run.face(), letters.substring(start));
    }
    close(chunks, open, before);
    return List.copyOf(chunks);
  }

  private static Glue close(List<Chunk> chunks, List<Fragment> open, Glue before) {
    if (open.isEmpty()) {
      return before;
    }
    chunks.add(new Chunk(before, open));
    open.clear();
    return Glue.NONE;
  }

  private static Glue strongest(Glue one, Glue other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static void addRun(List<Fragment> open, Face face, String text) {
    if (!text.isEmpty()) {
      open.add(Fragment.of(face, text));
    }
  }

  private static boolean mayBreakAfter(String letters, int at) {
    char c = letters.charAt(at);
    return (c == '-' || c == '/' || c == '–')
        && at > 0
        && at + 1 < letters.length()
        && Character.isLetter(letters.charAt(at - 1))
        && Character.isLetter(letters.charAt(at + 1));
  }
}
