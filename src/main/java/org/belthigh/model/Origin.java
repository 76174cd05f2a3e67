package org.belthigh.model;

/**
 * Where something was read.
 *
 * @param file path as the user would name it, with forward slashes
 * @param line 1 for the first line; 0 where a whole file is meant
 * @param column 1 for the first character of the line, or the first cell of the row; 0 where a
 *     whole line is meant
 * @param onSheet whether line and column are the row and the column of a spreadsheet
 */
public record Origin(String file, int line, int column, boolean onSheet)
    implements Comparable<Origin> {
  private static final int LETTERS = 26;

  /** A place in a text. */
  public Origin(String file, int line, int column) {
    this(file, line, column, false);
  }

  /** A whole file. */
  public static Origin of(String file) {
    return new Origin(file, 0, 0);
  }

  /** A whole line. */
  public static Origin of(String file, int line) {
    return new Origin(file, line, 0);
  }

  @Override
  public int compareTo(Origin other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }

  /** The letters over a column of a spreadsheet: A for 1, AA for 27. */
  private static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int left = column; left > 0; left = (left - 1) / LETTERS) {
      letters.insert(0, (char) ('A' + (left - 1) % LETTERS));
    }
    return letters.toString();
  }

  private String onSheetText() {
    return column > 0 ? file + " cell " + letters(column) + line : file + " row " + line;
  }

  /** As an editor or a spreadsheet shows it: {@code line 7 column 2}, {@code cell B7}. */
  @Override
  public String toString() {
    if (onSheet && line > 0) {
      return onSheetText();
    }
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(" line ").append(line);
    }
    return column > 0 ? text.append(" column ").append(column).toString() : text.toString();
  }
}
