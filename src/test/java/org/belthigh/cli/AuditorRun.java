package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Plants every kind of fault in plans of made-up clubs, the demo club and its prints, and counts
 * which the auditor finds: {@code mvn -Pauditor test -Dauditor.clubs=20 -Dauditor.seed=1}; with
 * {@code -Dbelthigh.accept=true} it writes {@code docs/auditor.md}. No part of the ordinary tests.
 */
class AuditorRun {
  @Test
  void counts_what_is_found_of_what_is_planted() throws Exception {
    int clubs = Integer.getInteger("auditor.clubs", 20);
    long first = Long.getLong("auditor.seed", 1);
    AuditorTrial trial = new AuditorTrial();
    for (long seed = first; seed < first + clubs; seed++) {
      trial.club(seed);
    }
    trial.demo();
    trial.papers();
    AuditorPage page = new AuditorPage(trial, clubs, first);
    trial.missed().forEach(m -> System.out.println("missed | " + m));
    trial.untrue().forEach(f -> System.out.println("false finding | " + f));
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(Path.of("docs/auditor.md"), page.text());
    }
    System.out.println(page.summary());
    assertThat(trial.untrue()).as("findings in plans that nobody touched").isEmpty();
  }
}
