package org.belthigh.docs;

import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Parameter;
import org.belthigh.catalogue.RuleBook;
import org.belthigh.catalogue.RuleEntry;
import org.belthigh.catalogue.Source;

/** {@code sources.md}: where everything comes from, how it was read, and what rests on it. */
final class SourcesPage {
  private static final Map<String, String> SURENESS =
      Map.of(
          "primary", "the publisher's own page or paper was read",
          "secondary", "read in a reproduction, a report or a file that quotes it",
          "abstract", "only the abstract or a catalogue extract was read",
          "title-page", "only the title was seen",
          "computed", "worked out here and checked against published values",
          "common-practice", "nothing published; ours",
          "from-memory", "not read: never shown as fact");

  private final Catalogue catalogue;

  SourcesPage(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** A link to {@code source} with how sure we are of it. */
  static String link(Source source) {
    return "["
        + source.shortName()
        + "](sources.md#"
        + source.id()
        + ") ("
        + source.sureness()
        + ")";
  }

  String text() {
    Markdown page = new Markdown("Sources");
    page.paragraph("How a source was read:");
    page.bullets(
        new TreeSet<>(SURENESS.keySet()).stream().map(s -> s + ": " + SURENESS.get(s)).toList());
    catalogue.sources().values().forEach(source -> source(page, source));
    return page.toString();
  }

  private void source(Markdown page, Source source) {
    page.heading(2, source.id());
    page.paragraph(
        dotted(source.author())
            + dotted(source.title())
            + dotted(source.year())
            + source.locator());
    page.bullets(
        java.util.stream.Stream.of(
                "How sure: " + source.sureness(),
                source.readOn().isEmpty() ? "" : "Read on " + source.readOn(),
                source.url().isEmpty() ? "" : "<" + source.url() + ">",
                used(source.id()))
            .filter(line -> !line.isEmpty())
            .toList());
  }

  private static String dotted(String part) {
    return part.isEmpty() ? "" : part + ". ";
  }

  private String used(String id) {
    SortedSet<String> users = new TreeSet<>();
    for (RuleEntry rule : catalogue.rules().values()) {
      if (rule.source().equals(id)) {
        users.add("[" + rule.id() + "](rules.md)");
      }
    }
    for (RuleBook book : catalogue.ruleBooks().values()) {
      if (book.allSources().contains(id)) {
        users.add("[`" + book.id() + "`](rules.md#rule-books)");
      }
    }
    for (Parameter parameter : catalogue.parameters().values()) {
      if (parameter.values().stream().anyMatch(v -> v.source().equals(id))) {
        users.add("[`" + parameter.id() + "`](parameters.md#" + parameter.id() + ")");
      }
    }
    return users.isEmpty() ? "" : "Behind " + users.stream().collect(Collectors.joining(", "));
  }
}
