package org.belthigh.privacy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * An XLSX workbook as the parts it is packed from. Rows are emptied in the text of their sheet, and
 * shared words that only they used; every other part, with its formats, pictures and lists, stays
 * byte for byte.
 */
final class RawWorkbook {
  private static final int MOST_BYTES = 64 << 20;
  private static final Pattern ROW =
      Pattern.compile("<(?:x:)?row\\b([^>]*?)(?:/>|>(.*?)</(?:x:)?row>)", Pattern.DOTALL);
  private static final Pattern CELL =
      Pattern.compile("<(?:x:)?c\\b([^>]*?)(?:/>|>(.*?)</(?:x:)?c>)", Pattern.DOTALL);
  private static final Pattern VALUE =
      Pattern.compile("<(?:x:)?v\\b[^>]*>(.*?)</(?:x:)?v>", Pattern.DOTALL);
  private static final Pattern ITEM =
      Pattern.compile("<(?:x:)?si\\b[^>]*?(?:/>|>(.*?)</(?:x:)?si>)", Pattern.DOTALL);
  private static final Pattern TEXT =
      Pattern.compile("<(?:x:)?t\\b[^>]*?(?:/>|>(.*?)</(?:x:)?t>)", Pattern.DOTALL);
  private static final Pattern SHEET = Pattern.compile("<(?:x:)?sheet\\b([^>]*)/?>");
  private static final Pattern RELATION = Pattern.compile("<Relationship\\b([^>]*)/?>");
  private static final String SHARED = "xl/sharedStrings.xml";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();

  /** Part by the sheet's name, in small letters. */
  private final Map<String, String> sheets = new LinkedHashMap<>();

  private final List<String> shared = new ArrayList<>();

  /** A row with something in it: its number in the sheet, and its cells by column from 0. */
  record Line(int number, Map<Integer, String> cells) {}

  private RawWorkbook() {}

  /**
   * @throws IOException if these bytes are no workbook that can be taken apart
   */
  static RawWorkbook of(byte[] bytes) throws IOException {
    RawWorkbook book = new RawWorkbook();
    long left = MOST_BYTES;
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        byte[] part = in.readNBytes((int) left + 1);
        left -= part.length;
        if (left < 0) {
          throw new IOException("too large");
        }
        if (!e.isDirectory()) {
          book.parts.put(e.getName(), part);
        }
      }
    } catch (IllegalArgumentException e) {
      throw new IOException(e);
    }
    book.name();
    Matcher item = ITEM.matcher(book.text(SHARED));
    while (item.find()) {
      book.shared.add(words(item.group(1)));
    }
    if (book.sheets.isEmpty()) {
      throw new IOException("no sheets");
    }
    return book;
  }

  private void name() {
    Map<String, String> targets = new TreeMap<>();
    Matcher relation = RELATION.matcher(text("xl/_rels/workbook.xml.rels"));
    while (relation.find()) {
      String target = attribute(relation.group(1), "Target");
      targets.put(
          attribute(relation.group(1), "Id"),
          target.startsWith("/") ? target.substring(1) : "xl/" + target);
    }
    Matcher sheet = SHEET.matcher(text("xl/workbook.xml"));
    while (sheet.find()) {
      String part = targets.getOrDefault(attribute(sheet.group(1), "r:id"), "");
      if (parts.containsKey(part)) {
        sheets.put(attribute(sheet.group(1), "name").strip().toLowerCase(Locale.ROOT), part);
      }
    }
  }

  private String text(String part) {
    return new String(parts.getOrDefault(part, new byte[0]), StandardCharsets.UTF_8);
  }

  private static String attribute(String attributes, String name) {
    Matcher found =
        Pattern.compile("(?:^|\\s)" + name + "\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)')")
            .matcher(attributes);
    return found.find() ? plain(found.group(1) == null ? found.group(2) : found.group(1)) : "";
  }

  private static String words(String xml) {
    StringBuilder all = new StringBuilder();
    Matcher text = TEXT.matcher(xml == null ? "" : xml);
    while (text.find()) {
      all.append(text.group(1) == null ? "" : text.group(1));
    }
    return plain(all.toString());
  }

  /** Text as it is shown: without the marks that stand for signs. */
  private static String plain(String xml) {
    Matcher sign = Pattern.compile("&#(x?)([0-9a-fA-F]{1,6});").matcher(xml);
    String known =
        sign.replaceAll(
            m ->
                Matcher.quoteReplacement(
                    sign(Integer.parseInt(m.group(2), m.group(1).isEmpty() ? 10 : 16))));
    return known
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&apos;", "'")
        .replace("&amp;", "&");
  }

  private static String sign(int point) {
    return Character.isValidCodePoint(point) ? Character.toString(point) : "";
  }

  /** Names of the sheets, in small letters. */
  Set<String> sheets() {
    return sheets.keySet();
  }

  /** The rows of a sheet. */
  List<Line> lines(String sheet) {
    List<Line> all = new ArrayList<>();
    Matcher row = ROW.matcher(text(sheets.get(sheet)));
    int next = 1;
    while (row.find()) {
      int number = number(row, next);
      next = number + 1;
      Map<Integer, String> cells = cells(row.group(2));
      if (cells.values().stream().anyMatch(c -> !c.isBlank())) {
        all.add(new Line(number, cells));
      }
    }
    return all;
  }

  private static int number(Matcher row, int next) {
    String said = attribute(row.group(1), "r");
    return said.matches("\\d{1,8}") ? Integer.parseInt(said) : next;
  }

  private Map<Integer, String> cells(String xml) {
    Map<Integer, String> cells = new TreeMap<>();
    Matcher cell = CELL.matcher(xml == null ? "" : xml);
    int next = 0;
    while (cell.find()) {
      int column = column(attribute(cell.group(1), "r"), next);
      next = column + 1;
      cells.put(column, value(cell).strip());
    }
    return cells;
  }

  private static int column(String place, int next) {
    int column = 0;
    for (int i = 0; i < place.length() && Character.isLetter(place.charAt(i)); i++) {
      column = column * 26 + Character.toUpperCase(place.charAt(i)) - 'A' + 1;
    }
    return column == 0 ? next : column - 1;
  }

  private String value(Matcher cell) {
    String inside = cell.group(2) == null ? "" : cell.group(2);
    Matcher value = VALUE.matcher(inside);
    if (!value.find()) {
      return words(inside);
    }
    String plain = plain(value.group(1)).strip();
    if (!attribute(cell.group(1), "t").equals("s")) {
      return plain;
    }
    int at = plain.matches("\\d{1,8}") ? Integer.parseInt(plain) : -1;
    return at >= 0 && at < shared.size() ? shared.get(at) : "";
  }

  /** Empties the rows that {@code gone} says by sheet and number. */
  void empty(BiPredicate<String, Integer> gone) {
    Set<Integer> used = new TreeSet<>();
    for (Map.Entry<String, String> sheet : sheets.entrySet()) {
      StringBuilder kept = new StringBuilder();
      Matcher row = ROW.matcher(text(sheet.getValue()));
      int next = 1;
      while (row.find()) {
        int number = number(row, next);
        next = number + 1;
        if (gone.test(sheet.getKey(), number)) {
          row.appendReplacement(kept, "");
          kept.append("<row r=\"").append(number).append("\"/>");
        } else {
          use(row.group(2), used);
        }
      }
      row.appendTail(kept);
      parts.put(sheet.getValue(), kept.toString().getBytes(StandardCharsets.UTF_8));
    }
    forgetUnused(used);
  }

  private static void use(String xml, Set<Integer> used) {
    Matcher cell = CELL.matcher(xml == null ? "" : xml);
    while (cell.find()) {
      Matcher value = VALUE.matcher(cell.group(2) == null ? "" : cell.group(2));
      if (attribute(cell.group(1), "t").equals("s") && value.find()) {
        String at = value.group(1).strip();
        if (at.matches("\\d{1,8}")) {
          used.add(Integer.parseInt(at));
        }
      }
    }
  }

  private void forgetUnused(Set<Integer> used) {
    if (!parts.containsKey(SHARED)) {
      return;
    }
    StringBuilder kept = new StringBuilder();
    Matcher item = ITEM.matcher(text(SHARED));
    for (int at = 0; item.find(); at++) {
      if (!used.contains(at)) {
        item.appendReplacement(kept, "<si><t></t></si>");
      }
    }
    item.appendTail(kept);
    parts.put(SHARED, kept.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** Whether a word stands anywhere outside of the sheets' cells: notes, lists, names, pictures. */
  boolean elsewhere(Pattern word) {
    return parts.entrySet().stream()
        .filter(p -> !sheets.containsValue(p.getKey()) && !p.getKey().equals(SHARED))
        .anyMatch(
            p ->
                word.matcher(
                        plain(
                            new String(p.getValue(), StandardCharsets.UTF_8)
                                .replaceAll("<[^>\"']*>", "")))
                    .find());
  }

  /** Packed again, without a moment. */
  byte[] bytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0));
        out.putNextEntry(entry);
        out.write(part.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
