package org.belthigh.speed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.belthigh.handout.Handouts;
import org.belthigh.handout.Print;
import org.belthigh.plan.Plan;
import org.belthigh.words.Words;

/** A plan's prints, and what is in them. */
final class Paper {
  private static final byte[] STREAM = "stream".getBytes(StandardCharsets.ISO_8859_1);

  private Paper() {}

  /** The documents that printing only {@code print} gives. */
  static List<byte[]> documents(Plan plan, Words words, Print print) {
    List<byte[]> documents = new ArrayList<>();
    new Handouts(words).print(plan, EnumSet.of(print), (path, pdf) -> documents.add(pdf));
    return documents;
  }

  /** The card of each player, with its home sheets: a document each. */
  static List<byte[]> cards(Plan plan, Words words) {
    List<byte[]> documents = new ArrayList<>();
    new Handouts(words)
        .print(plan, EnumSet.of(Print.CARD, Print.HOME), (path, pdf) -> documents.add(pdf));
    return documents;
  }

  static int pages(List<byte[]> documents) throws IOException {
    int pages = 0;
    for (byte[] document : documents) {
      try (PDDocument pdf = Loader.loadPDF(document)) {
        pages += pdf.getNumberOfPages();
      }
    }
    return pages;
  }

  /** Every deflated stream of a document as it was before: pages, structure, fonts. */
  static List<byte[]> inflated(byte[] document) {
    List<byte[]> streams = new ArrayList<>();
    for (int at = 0; at < document.length - STREAM.length; at++) {
      if (begins(document, at)) {
        int data = at + STREAM.length + (document[at + STREAM.length] == '\r' ? 2 : 1);
        inflate(document, data, streams);
      }
    }
    return streams;
  }

  private static boolean begins(byte[] document, int at) {
    for (int i = 0; i < STREAM.length; i++) {
      if (document[at + i] != STREAM[i]) {
        return false;
      }
    }
    // not the end of one
    return at < 3 || document[at - 1] != 'd';
  }

  private static void inflate(byte[] document, int from, List<byte[]> streams) {
    Inflater inflater = new Inflater();
    inflater.setInput(document, from, document.length - from);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    try {
      while (!inflater.finished()) {
        int count = inflater.inflate(buffer);
        if (count == 0) {
          return;
        }
        bytes.write(buffer, 0, count);
      }
      streams.add(bytes.toByteArray());
    } catch (DataFormatException e) {
      // a stream that is not deflated, such as the metadata
    } finally {
      inflater.end();
    }
  }

  /**
   * Deflates each of {@code streams}, at the level that PDFBox uses. @return bytes that came out
   */
  static long deflated(List<byte[]> streams) {
    byte[] buffer = new byte[1 << 16];
    long all = 0;
    for (byte[] stream : streams) {
      Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION);
      deflater.setInput(stream);
      deflater.finish();
      while (!deflater.finished()) {
        all += deflater.deflate(buffer);
      }
      deflater.end();
    }
    return all;
  }
}
