package org.belthigh.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Workbooks whose bytes depend on nothing but what is in them. */
public final class Timeless {
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private Timeless() {}

  /**
   * The same workbook without the moment it was made at. Its entries need not say their sizes up
   * front, so that it is read by its directory, which takes a file.
   */
  public static byte[] workbook(byte[] xlsx) throws IOException {
    Path file = room();
    try {
      Files.write(file, xlsx);
      return rewritten(file);
    } catch (IOException e) {
      throw Unwritable.because(file.getParent(), e);
    } finally {
      Files.delete(file);
    }
  }

  private static Path room() {
    try {
      return Files.createTempFile("belthigh", ".xlsx");
    } catch (IOException e) {
      throw Unwritable.because(Path.of(System.getProperty("java.io.tmpdir")), e);
    }
  }

  private static byte[] rewritten(Path file) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipFile in = new ZipFile(file.toFile());
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry : Collections.list(in.entries())) {
        byte[] content = in.getInputStream(entry).readAllBytes();
        if (entry.getName().equals("docProps/core.xml")) {
          content =
              new String(content, StandardCharsets.UTF_8)
                  .replaceAll(">\\d{4}-\\d{2}-\\d{2}T[^<]*<", ">2000-01-01T00:00:00Z<")
                  .getBytes(StandardCharsets.UTF_8);
        }
        ZipEntry plain = new ZipEntry(entry.getName());
        plain.setTimeLocal(NO_TIME);
        out.putNextEntry(plain);
        out.write(content);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
