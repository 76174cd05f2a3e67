package org.belthigh.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.belthigh.model.Coded;

/** The first language of a new club: of its page, its comments and its samples. */
public enum Language implements Coded {
  /** English. */
  EN("READ-ME.txt"),
  /** Spanish. */
  ES("LEEME.txt");

  private final String readMe;

  Language(String readMe) {
    this.readMe = readMe;
  }

  /** The name of the page that explains a club folder. */
  public String readMe() {
    return readMe;
  }

  String either(String english, String spanish) {
    return this == EN ? english : spanish;
  }

  Explained explained() {
    return new Explained(path("headings.properties"));
  }

  /** A text of a new club in this language. */
  String text(String name) {
    try (InputStream in = Language.class.getResourceAsStream(path(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String path(String name) {
    return "/start/" + id() + "/" + name;
  }
}
