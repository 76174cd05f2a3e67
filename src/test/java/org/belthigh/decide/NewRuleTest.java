package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.CatalogueLoader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new rule of guidance is DRL, YAML and cases, and no Java: see {@link NewRule}. */
class NewRuleTest {
  /**
   * Apart from the other tests, since what travels in the jar may not define classes while it runs.
   */
  @Test
  void a_rule_is_added_by_drl_yaml_and_cases_alone(@TempDir Path folder) throws Exception {
    String libraries =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(library -> !library.contains("drools-wiring-static"))
            .collect(Collectors.joining(File.pathSeparator));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                libraries,
                NewRule.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said).contains("4 cases of the new rule", "cases of the rules before it");
  }

  @Test
  void a_limit_that_no_rule_reads_is_refused() {
    SortedMap<String, String> texts = NewRule.files("rules", "curricula");
    texts.keySet().removeIf(name -> !name.endsWith(".yaml"));
    texts.merge("rules/books/pitch-smart-2018.yaml", NewRule.LIMIT, String::concat);

    assertThat(CatalogueLoader.load(texts).problems())
        .anySatisfy(
            p ->
                assertThat(p.text())
                    .contains(
                        "there is no limit that a rule reads 'innings-caught-the-day-before'"));
  }
}
