package org.belthigh.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What each column is for, in a sentence. */
final class Explained {
  private final String file;
  private final Properties texts = new Properties();

  Explained(String file) {
    this.file = file;
    try (InputStream in = Explained.class.getResourceAsStream(file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      texts.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sentence for a column; never empty. */
  String of(String table, String column) {
    String text = texts.getProperty(table + "." + column);
    if (text == null) {
      throw new IllegalStateException(file + " says nothing of " + table + "." + column);
    }
    return text;
  }
}
