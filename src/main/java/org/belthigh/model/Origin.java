package org.belthigh.model;

/**
 * Where something was read.
 *
 * @param file path as the user would name it, with forward slashes
 * @param line 1 for the first line; 0 where a whole file is meant
 * @param column 1 for the first character of the line; 0 where a whole line is meant
 */
public record Origin(String file, int line, int column) implements Comparable<Origin> {
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

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(" line ").append(line);
    }
    return column > 0 ? text.append(" column ").append(column).toString() : text.toString();
  }
}
