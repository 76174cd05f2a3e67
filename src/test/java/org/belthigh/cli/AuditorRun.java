package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Plants every kind of fault in plans of made-up clubs, the demo club and its prints, and counts
 * which the auditor finds: {@code mvn -Pauditor test -Dauditor.clubs=20 -Dauditor.seed=1}; with
 * {@code -Dbelthigh.accept=true} it writes {@code docs/auditor.md}. No part of the ordinary tests.
 */
class AuditorRun {
  private static final int THREADS = 6;

  @Test
  void counts_what_is_found_of_what_is_planted() throws Exception {
    int clubs = Integer.getInteger("auditor.clubs", 20);
    long first = Long.getLong("auditor.seed", 1);
    AuditorTrial trial = all(clubs, first);
    AuditorPage page = new AuditorPage(trial, clubs, first);
    trial.missed().forEach(m -> System.out.println("missed | " + m));
    trial.untrue().forEach(f -> System.out.println("false finding | " + f));
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(Path.of("docs/auditor.md"), page.text());
    }
    System.out.println(page.summary());
    assertThat(trial.untrue()).as("findings in plans that nobody touched").isEmpty();
  }

  /** Side by side, and added up in their own order: the same page whatever the threads. */
  private static AuditorTrial all(int clubs, long first) throws Exception {
    List<Callable<AuditorTrial>> parts = new ArrayList<>();
    parts.add(() -> done(AuditorTrial::demo));
    parts.add(() -> done(AuditorTrial::papers));
    parts.add(() -> done(AuditorTrial::demoBreak));
    parts.add(() -> done(AuditorTrial::demoTournament));
    for (int i = 0; i < clubs; i++) {
      long seed = first + i;
      parts.add(() -> done(t -> t.club(seed)));
    }
    // what is not done by then is not counted
    int minutes = Integer.getInteger("auditor.minutes", 60);
    AuditorTrial whole = new AuditorTrial();
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      for (Future<AuditorTrial> part : threads.invokeAll(parts, minutes, TimeUnit.MINUTES)) {
        if (!part.isCancelled()) {
          whole.add(part.get());
        }
      }
    } finally {
      threads.shutdownNow();
    }
    return whole;
  }

  private static AuditorTrial done(Consumer<AuditorTrial> part) {
    AuditorTrial trial = new AuditorTrial();
    part.accept(trial);
    return trial;
  }
}
