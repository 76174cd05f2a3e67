package org.belthigh.privacy;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A text file as the records that it is made of, byte for byte: what is kept of it is exactly what
 * stood there, whatever its encoding, separator or line ends.
 */
final class RawTable {
  private static final Set<String> PLAYER_COLUMNS =
      Set.of("player", "id", "jugador", "jugadora", "jugador/a");
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final String SEPARATORS = ",;\t";

  /** The bytes, one character each, so that none is lost. */
  private final String raw;

  private final Charset charset;
  private final char separator;
  private final List<Line> records;

  /**
   * One record of the table: where it begins and ends in the file, its line from 1, and its cells.
   */
  record Line(int begin, int end, int line, List<String> cells) {}

  private RawTable(String raw, Charset charset) {
    this.raw = raw;
    this.charset = charset;
    this.separator = separator(raw);
    this.records = records();
  }

  static RawTable of(byte[] bytes) {
    return new RawTable(new String(bytes, StandardCharsets.ISO_8859_1), charset(bytes));
  }

  /** Whether these bytes are text at all. */
  static boolean isText(byte[] bytes) {
    for (byte b : bytes) {
      if (b == 0) {
        return false;
      }
    }
    return true;
  }

  private static Charset charset(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      return WINDOWS;
    }
  }

  private static char separator(String raw) {
    String header =
        raw.lines().filter(l -> !l.isBlank() && !l.startsWith("sep=")).findFirst().orElse("");
    char most = ',';
    for (int i = 0; i < SEPARATORS.length(); i++) {
      char each = SEPARATORS.charAt(i);
      most = count(header, each) > count(header, most) ? each : most;
    }
    return most;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }

  private List<Line> records() {
    List<Line> all = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    boolean cellStarts = true;
    int begin = 0;
    int line = 1;
    int firstLine = 1;
    for (int at = 0; at < raw.length(); at++) {
      char c = raw.charAt(at);
      boolean lineEnds = c == '\n' || (c == '\r' && !raw.startsWith("\n", at + 1));
      if (lineEnds) {
        line++;
      }
      if (c == '"' && (quoted || cellStarts)) {
        boolean doubled = quoted && raw.startsWith("\"", at + 1);
        if (doubled) {
          cell.append(c);
          at++;
        } else {
          quoted = !quoted;
        }
        cellStarts = false;
      } else if (!quoted && lineEnds) {
        cells.add(text(cell));
        all.add(new Line(begin, at + 1, firstLine, List.copyOf(cells)));
        cells.clear();
        begin = at + 1;
        firstLine = line;
        cellStarts = true;
      } else if (!quoted && c == separator) {
        cells.add(text(cell));
        cellStarts = true;
      } else {
        cell.append(c);
        cellStarts = false;
      }
    }
    if (begin < raw.length()) {
      cells.add(text(cell));
      all.add(new Line(begin, raw.length(), firstLine, List.copyOf(cells)));
    }
    return all;
  }

  /** The cell as text, trimmed and without a byte-order mark; empties {@code cell}. */
  private String text(StringBuilder cell) {
    String text = new String(cell.toString().getBytes(StandardCharsets.ISO_8859_1), charset);
    cell.setLength(0);
    return text.replace("\uFEFF", "").strip();
  }

  List<Line> all() {
    return records;
  }

  /** The records whose player, by the header's word, is {@code id}; none without such a column. */
  List<Line> of(String id) {
    int column = -1;
    List<Line> found = new ArrayList<>();
    for (Line each : records) {
      if (column < 0) {
        column = playerColumn(each.cells());
      } else if (column < each.cells().size() && each.cells().get(column).equals(id)) {
        found.add(each);
      }
    }
    return found;
  }

  /** Whether a heading is that of the player's id. */
  static boolean isPlayer(String heading) {
    return PLAYER_COLUMNS.contains(heading.strip().toLowerCase(Locale.ROOT));
  }

  /** The column with the player's id; -1 where there is none. */
  static int playerColumn(List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (isPlayer(cells.get(i))) {
        return i;
      }
    }
    return -1;
  }

  /** The file without the records that {@code gone} says; every other byte as it was. */
  byte[] without(Predicate<Line> gone) {
    StringBuilder kept = new StringBuilder(raw.length());
    for (Line each : records) {
      if (!gone.test(each)) {
        kept.append(raw, each.begin(), each.end());
      }
    }
    return kept.toString().getBytes(StandardCharsets.ISO_8859_1);
  }
}
