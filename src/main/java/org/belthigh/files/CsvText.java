package org.belthigh.files;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.belthigh.model.Origin;

/** The raw text of a CSV file: where its lines begin, and where in them a cell begins. */
final class CsvText implements Table.Places {
  private static final String SEPARATORS = ",;\t|";

  /** How many lines of title may stand above a header. */
  private static final int MOST_TITLES = 10;

  private final String file;
  private final PlainText plain;
  private final String text;
  private final char separator;
  private final int[] lineStarts;

  CsvText(String file, PlainText plain) {
    this.file = file;
    this.plain = plain;
    this.text = plain.text();
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

  @Override
  public List<String> form() {
    List<String> form = new ArrayList<>();
    if (!plain.charset().equals(StandardCharsets.UTF_8)) {
      form.add("as " + plain.charset().displayName(Locale.ROOT) + " text");
    }
    if (separator != ',') {
      String name = separator == ';' ? "semicolons" : separator == '\t' ? "tabs" : "bars";
      form.add("with " + name + " between the cells");
    }
    return form;
  }

  @Override
  public boolean breaksOff(int line) {
    return line == lineStarts.length;
  }

  @Override
  public Origin row(int line) {
    return Origin.of(file, line);
  }

  @Override
  public Origin cell(int line, int index) {
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

  /**
   * What separates the cells: what the first line says, as spreadsheets write {@code sep=;}, else
   * the sign that stands most often outside quotes in the first line that has any; a comma in
   * doubt.
   */
  private static char separator(String text) {
    Optional<Character> said = saidSeparator(text);
    return said.orElseGet(
        () ->
            text.lines()
                .limit(MOST_TITLES)
                .map(CsvText::mostOften)
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(','));
  }

  private static String firstLine(String text) {
    int end = 0;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return text.substring(0, end);
  }

  /** The separator that a first line {@code sep=;} names. */
  static Optional<Character> saidSeparator(String text) {
    if (!text.startsWith("sep=")) {
      return Optional.empty();
    }
    String line = firstLine(text);
    boolean one = line.length() == 5 && SEPARATORS.indexOf(line.charAt(4)) >= 0;
    return one ? Optional.of(line.charAt(4)) : Optional.empty();
  }

  private static Optional<Character> mostOften(String header) {
    int[] count = new int[SEPARATORS.length()];
    boolean quoted = false;
    for (int at = 0; at < header.length(); at++) {
      quoted ^= header.charAt(at) == '"';
      int sign = quoted ? -1 : SEPARATORS.indexOf(header.charAt(at));
      if (sign >= 0) {
        count[sign]++;
      }
    }
    int best = 0;
    for (int sign = 1; sign < count.length; sign++) {
      best = count[sign] > count[best] ? sign : best;
    }
    return count[best] == 0 ? Optional.empty() : Optional.of(SEPARATORS.charAt(best));
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[text.length() + 1];
    int count = 1;
    if (text.indexOf('\r') < 0) {
      // the usual file: looked through several letters at a time
      for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
        starts[count++] = end + 1;
      }
    } else {
      for (int at = 0; at < text.length(); at++) {
        if (endsLine(text, at)) {
          starts[count++] = at + 1;
        }
      }
    }
    return Arrays.copyOf(starts, count);
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
