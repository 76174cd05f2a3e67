package org.belthigh.docs;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** A page in the making. */
final class Markdown {
  private final StringBuilder text = new StringBuilder();

  Markdown(String title) {
    text.append("# ").append(title).append('\n');
    paragraph(
        "Written from `rules/` by `belthigh docs`; do not edit. The build fails when it is stale.");
  }

  Markdown heading(int level, String heading) {
    text.append('\n').append("#".repeat(level)).append(' ').append(heading).append('\n');
    return this;
  }

  Markdown paragraph(String sentence) {
    text.append('\n').append(sentence).append('\n');
    return this;
  }

  Markdown bullets(List<String> items) {
    if (!items.isEmpty()) {
      text.append('\n');
      items.forEach(item -> text.append("- ").append(item).append('\n'));
    }
    return this;
  }

  /** The head of a table; its rows follow at once. */
  Markdown head(String... cells) {
    text.append('\n');
    return row(cells).row(Collections.nCopies(cells.length, "---").toArray(String[]::new));
  }

  Markdown row(String... cells) {
    text.append(
        Arrays.stream(cells)
            .map(cell -> cell.replace("|", "\\|"))
            .collect(Collectors.joining(" | ", "| ", " |\n")));
    return this;
  }

  /** Lines as they are written, in {@code language}. */
  Markdown code(String language, String lines) {
    text.append("\n```").append(language).append('\n').append(lines).append("\n```\n");
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
