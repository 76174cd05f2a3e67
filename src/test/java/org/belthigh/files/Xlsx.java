package org.belthigh.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook made by hand, so that a test can break any part of it. */
public final class Xlsx {
  private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String LINKS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();

  private Xlsx() {}

  /**
   * A workbook with one sheet.
   *
   * @param rows cells as XML, such as those of {@link #text}, {@link #number} and {@link #day}
   */
  public static Xlsx of(String sheet, List<List<String>> rows) {
    Xlsx book = new Xlsx();
    book.part(
        "[Content_Types].xml",
        "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + type("workbook", "sheet.main")
            + type("styles", "styles")
            + "</Types>");
    book.part(
        "_rels/.rels",
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"r1\" Type=\""
            + LINKS
            + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
    book.part(
        "xl/workbook.xml",
        "<workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + LINKS
            + "\"><sheets><sheet name=\""
            + sheet
            + "\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>");
    book.part(
        "xl/_rels/workbook.xml.rels",
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"r1\" Type=\""
            + LINKS
            + "/worksheet\" Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"r2\" Type=\""
            + LINKS
            + "/styles\" Target=\"styles.xml\"/></Relationships>");
    book.part(
        "xl/styles.xml",
        "<styleSheet xmlns=\""
            + MAIN
            + "\"><cellXfs count=\"3\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/>"
            + "<xf numFmtId=\"20\"/></cellXfs></styleSheet>");
    book.part("xl/worksheets/sheet1.xml", sheet(rows));
    return book;
  }

  private static String type(String part, String type) {
    return "<Override PartName=\"/xl/"
        + part
        + ".xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml."
        + type
        + "+xml\"/>";
  }

  private static String sheet(List<List<String>> rows) {
    StringBuilder xml = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
    for (int r = 0; r < rows.size(); r++) {
      xml.append("<row r=\"").append(r + 1).append("\">");
      for (int c = 0; c < rows.get(r).size(); c++) {
        xml.append(rows.get(r).get(c).replace("AT", (char) ('A' + c) + "" + (r + 1)));
      }
      xml.append("</row>");
    }
    return xml.append("</sheetData></worksheet>").toString();
  }

  /** A cell with a text. */
  public static String text(String text) {
    return "<c r=\"AT\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  /** A cell with a number. */
  public static String number(String number) {
    return "<c r=\"AT\"><v>" + number + "</v></c>";
  }

  /** A cell with a number that is shown as a day. */
  public static String day(int serial) {
    return "<c r=\"AT\" s=\"1\"><v>" + serial + "</v></c>";
  }

  /** A cell with a part of a day that is shown as a time. */
  public static String time(double part) {
    return "<c r=\"AT\" s=\"2\"><v>" + part + "</v></c>";
  }

  /** A row of texts. */
  public static List<String> texts(String... texts) {
    return List.of(texts).stream().map(Xlsx::text).toList();
  }

  /** Puts a part in, in place of one of that name. */
  public Xlsx part(String name, String xml) {
    return part(name, (HEAD + xml).getBytes(StandardCharsets.UTF_8));
  }

  /** Puts a part in, in place of one of that name. */
  public Xlsx part(String name, byte[] bytes) {
    parts.put(name, bytes);
    return this;
  }

  /** The workbook, packed. */
  public byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
