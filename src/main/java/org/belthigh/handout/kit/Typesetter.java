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

  private enum Glue {
    NONE,
    SPACE,
    LINE_BREAK
  }

  /** What a line may not break: fragments that belong together, and what stands before them. */
  private record Chunk(Glue before, List<Text.Run> runs) {
    double width(double size) {
      return runs.stream().mapToDouble(run -> run.face().width(run.text(), size)).sum();
    }
  }

  private final double size;
  private final double room;
  private final List<Line> lines = new ArrayList<>();
  private final List<Text.Run> current = new ArrayList<>();
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
    for (Chunk chunk : chunks(text)) {
      setter.place(chunk);
    }
    setter.endLine(false);
    return List.copyOf(setter.lines);
  }

  /** Width of the text on one line (the widest, if it has line breaks). */
  static double preferredWidth(Text text, double size) {
    return set(text, size, Double.MAX_VALUE).stream().mapToDouble(Line::width).max().orElse(0);
  }

  /** Width of the widest part that a line may not break. */
  static double leastWidth(Text text, double size) {
    return chunks(text).stream().mapToDouble(chunk -> chunk.width(size)).max().orElse(0);
  }

  private void place(Chunk chunk) {
    if (chunk.before() == Glue.LINE_BREAK) {
      endLine(false);
    }
    boolean spaced = chunk.before() == Glue.SPACE && !current.isEmpty();
    double space = spaced ? Face.REGULAR.width(" ", size) : 0;
    double width = chunk.width(size);
    if (filled + space + width <= room + 0.01) {
      append(chunk.runs(), spaced);
    } else {
      endLine(spaced);
      placeOnNewLine(chunk, width);
    }
  }

  private void placeOnNewLine(Chunk chunk, double width) {
    if (width <= room + 0.01) {
      append(chunk.runs(), false);
      return;
    }
    for (Text.Run run : chunk.runs()) {
      breakWord(run);
    }
  }

  /** Fills line after line with the letters of a word, a hyphen at each line's end. */
  private void breakWord(Text.Run run) {
    String rest = run.text();
    while (filled + run.face().width(rest, size) > room) {
      int letters = lettersThatFit(run.face(), rest);
      if (letters < LEAST_LETTERS) {
        if (!current.isEmpty()) {
          endLine(false);
          continue;
        }
        throw new Overflow("text", 0, run.text(), "is wider than its column even when broken");
      }
      append(List.of(new Text.Run(run.face(), rest.substring(0, letters) + "-")), false);
      endLine(false);
      rest = rest.substring(letters);
    }
    append(List.of(new Text.Run(run.face(), rest)), false);
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

  private void append(List<Text.Run> runs, boolean spaced) {
    for (int i = 0; i < runs.size(); i++) {
      Text.Run run = runs.get(i);
      String text = spaced && i == 0 ? " " + run.text() : run.text();
      int last = current.size() - 1;
      if (last >= 0 && current.get(last).face() == run.face()) {
        current.set(last, new Text.Run(run.face(), current.get(last).text() + text));
      } else {
        current.add(new Text.Run(run.face(), text));
      }
      filled += run.face().width(text, size);
    }
  }

  private void endLine(boolean goesOn) {
    if (!current.isEmpty()) {
      lines.add(new Line(current, filled, goesOn));
      current.clear();
      filled = 0;
    }
  }

  private static List<Chunk> chunks(Text text) {
    List<Chunk> chunks = new ArrayList<>();
    List<Text.Run> open = new ArrayList<>();
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
    return chunks;
  }

  private static Glue close(List<Chunk> chunks, List<Text.Run> open, Glue before) {
    if (open.isEmpty()) {
      return before;
    }
    chunks.add(new Chunk(before, List.copyOf(open)));
    open.clear();
    return Glue.NONE;
  }

  private static Glue strongest(Glue one, Glue other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static void addRun(List<Text.Run> open, Face face, String text) {
    if (!text.isEmpty()) {
      open.add(new Text.Run(face, text));
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
