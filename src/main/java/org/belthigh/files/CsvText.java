package org.belthigh.files;

import java.util.Optional;
import org.belthigh.model.Origin;

/** The raw text of a CSV file: where its lines begin, and where in them a cell begins. */
final class CsvText {
  private final String text;
  private final char separator;
  private final int[] lineStarts;

  CsvText(String text) {
    this.text = text;
    this.lineStarts = lineStarts(text);
    this.separator = separator(text);
  }

  String text() {
    return text;
  }

  char separator() {
    return separator;
  }

  boolean isBlank() {
    return text.isBlank();
  }

  /** The first line with more characters than that, from 1. */
  Optional<Integer> lineLongerThan(int most) {
    for (int line = 1; line <= lineStarts.length; line++) {
      int end = line < lineStarts.length ? lineStarts[line] : text.length();
      if (end - lineStarts[line - 1] > most) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  /** Where the cell at {@code index}, from 0, of the record that begins on {@code line} stands. */
  Origin origin(String file, int line, int index) {
    Walk walk = new Walk(line);
    boolean more = true;
    while (more && walk.cell < index) {
      more = walk.step();
    }
    return new Origin(file, walk.line, walk.at - lineStarts[walk.line - 1] + 1);
  }

  /** Whether the text ends inside a quoted cell of the record that begins on {@code line}. */
  boolean endsQuoted(int line) {
    Walk walk = new Walk(line);
    boolean more = true;
    while (more) {
      more = walk.step();
    }
    return walk.quoted;
  }

  private static char separator(String text) {
    String header = text.stripLeading().lines().findFirst().orElse("");
    if (header.indexOf(',') < 0 && header.indexOf(';') >= 0) {
      return ';';
    }
    return header.indexOf(',') < 0 && header.indexOf('\t') >= 0 ? '\t' : ',';
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[text.length() + 1];
    int count = 1;
    for (int at = 0; at < text.length(); at++) {
      if (endsLine(text, at)) {
        starts[count++] = at + 1;
      }
    }
    return java.util.Arrays.copyOf(starts, count);
  }

  /** Line ends are LF, CR LF or CR, as the reader counts them. */
  private static boolean endsLine(String text, int at) {
    char c = text.charAt(at);
    boolean crLf = c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
    return c == '\n' || (c == '\r' && !crLf);
  }

  /** A walk through the text from the start of a line, cell by cell, minding quotes. */
  private final class Walk {
    private int at;
    private int line;
    private int cell;
    private boolean quoted;
    private boolean cellStarts = true;
    private boolean cellIsQuoted;

    Walk(int line) {
      this.line = line;
      this.at = lineStarts[line - 1];
    }

    boolean step() {
      if (at >= text.length()) {
        return false;
      }
      char c = text.charAt(at);
      if (c == '"' && (cellStarts || cellIsQuoted)) {
        quoted = !quoted;
        cellIsQuoted = true;
        cellStarts = false;
      } else if (!quoted && c == separator) {
        nextCell();
      } else if (endsLine(text, at)) {
        line++;
        if (!quoted) {
          nextCell();
        }
      } else {
        cellStarts = false;
      }
      at++;
      return true;
    }

    private void nextCell() {
      cell++;
      cellStarts = true;
      cellIsQuoted = false;
    }
  }
}
