package org.belthigh.catalogue;

import java.util.List;
import org.belthigh.files.Fields;

/** Reads {@code rules/sources.yaml}. */
final class SourceFile {
  private SourceFile() {}

  static List<Source> read(Fields file, Places places) {
    return file.each("sources", f -> source(f, places));
  }

  private static Source source(Fields f, Places places) {
    String id = f.text("id");
    places.note("source", id, f);
    f.optionalDate("read_on");
    return new Source(
        id,
        f.text("title"),
        f.optionalText("author").orElse(""),
        f.optionalText("year").orElse(""),
        f.optionalText("locator").orElse(""),
        f.optionalText("url").orElse(""),
        f.optionalText("read_on").orElse(""),
        f.text("sureness"));
  }
}
