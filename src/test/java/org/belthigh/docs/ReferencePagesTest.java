package org.belthigh.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pages in {@code docs/} are those of the catalogue. After a change of {@code rules/}: {@code
 * mvn test -Dtest=ReferencePagesTest -Dbelthigh.accept=true}.
 */
class ReferencePagesTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final Map<String, String> PAGES = ReferencePages.of(CATALOGUE);

  static Stream<String> names() {
    return PAGES.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void the_page_is_not_stale(String name) throws IOException {
    Path file = Path.of("docs", name);
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(file, PAGES.get(name));
    }

    assertThat(Files.readString(file))
        .as("docs/%s; accept with -Dbelthigh.accept=true", name)
        .isEqualTo(PAGES.get(name));
  }

  @Test
  void every_rule_book_parameter_and_source_is_on_its_page() {
    assertThat(PAGES.get("rules.md")).contains(CATALOGUE.rules().keySet());
    assertThat(PAGES.get("rules.md"))
        .contains(CATALOGUE.ruleBooks().keySet().stream().map(id -> "`" + id + "`: ").toList());
    assertThat(PAGES.get("parameters.md"))
        .contains(CATALOGUE.parameters().keySet().stream().map(id -> "## " + id).toList());
    assertThat(PAGES.get("sources.md"))
        .contains(CATALOGUE.sources().keySet().stream().map(id -> "## " + id).toList());
  }

  @Test
  void a_row_that_is_not_confirmed_says_so() {
    assertThat(PAGES.get("rules.md"))
        .contains("| 26 to 50 | 2 (own row not confirmed; that of the next one) |");
  }

  @ParameterizedTest
  @MethodSource("names")
  void a_link_between_the_pages_leads_somewhere(String name) {
    java.util.regex.Pattern.compile("\\]\\((\\w+\\.md)(?:#([\\w-]+))?\\)")
        .matcher(PAGES.get(name))
        .results()
        .forEach(
            link -> {
              assertThat(PAGES).containsKey(link.group(1));
              if (link.group(2) != null) {
                assertThat(PAGES.get(link.group(1)).toLowerCase(java.util.Locale.ROOT))
                    .contains("# " + link.group(2).replace("rule-books", "rule books") + "\n");
              }
            });
  }
}
