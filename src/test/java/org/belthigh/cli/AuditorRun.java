package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
 * {@code -Dbelthigh.accept=true} it writes {@code docs/auditor.md}. {@code
 * -Dauditor.parts=papers,demo} runs those parts alone. No part of the ordinary tests.
 */
class AuditorRun {
  private static final String PARTS = "papers,demo,break,tournament,clubs";

  private final long began = System.nanoTime();

  @Test
  void counts_what_is_found_of_what_is_planted() throws Exception {
    int clubs = Integer.getInteger("auditor.clubs", 20);
    long first = Long.getLong("auditor.seed", 1);
    List<String> cutOff = new ArrayList<>();
    AuditorTrial trial = all(parts(clubs, first), cutOff);
    AuditorPage page = new AuditorPage(trial, cutOff, command(clubs, first));
    trial.missed().forEach(m -> System.out.println("missed | " + m));
    trial.never().forEach(k -> System.out.println("never planted | " + k));
    trial.untrue().forEach(f -> System.out.println("false finding | " + f));
    cutOff.forEach(p -> System.out.println("cut off | " + p));
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(Path.of("docs/auditor.md"), page.text());
    }
    System.out.println(page.summary());
    assertThat(trial.untrue()).as("findings in plans that nobody touched").isEmpty();
  }

  private static String command(int clubs, long first) {
    String parts = System.getProperty("auditor.parts");
    return "mvn -Pauditor test -Dauditor.clubs=%d -Dauditor.seed=%d%s -Dbelthigh.accept=true"
        .formatted(clubs, first, parts == null ? "" : " -Dauditor.parts=" + parts);
  }

  /** What was asked for, in the order of the page. */
  private static Map<String, Consumer<AuditorTrial>> parts(int clubs, long first) {
    Set<String> asked =
        new TreeSet<>(Arrays.asList(System.getProperty("auditor.parts", PARTS).split(",")));
    assertThat(List.of(PARTS.split(","))).as("auditor.parts").containsAll(asked);
    Map<String, Consumer<AuditorTrial>> parts = new LinkedHashMap<>();
    parts.put("papers", AuditorTrial::papers);
    parts.put("demo", AuditorTrial::demo);
    parts.put("break", AuditorTrial::demoBreak);
    parts.put("tournament", AuditorTrial::demoTournament);
    parts.keySet().retainAll(asked);
    for (int i = 0; i < clubs && asked.contains("clubs"); i++) {
      long seed = first + i;
      parts.put("club " + seed, t -> t.club(seed));
    }
    return parts;
  }

  /** Side by side, and added up in their own order: the same page whatever the threads. */
  private AuditorTrial all(Map<String, Consumer<AuditorTrial>> parts, List<String> cutOff)
      throws Exception {
    List<Callable<AuditorTrial>> calls = new ArrayList<>();
    parts.forEach((name, part) -> calls.add(() -> done(name, part)));
    // what is not done by then is not counted, and the page says so
    int minutes = Integer.getInteger("auditor.minutes", 60);
    int threads = Integer.getInteger("auditor.threads", 2);
    AuditorTrial whole = new AuditorTrial();
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<AuditorTrial>> trials = pool.invokeAll(calls, minutes, TimeUnit.MINUTES);
      List<String> names = List.copyOf(parts.keySet());
      for (int i = 0; i < names.size(); i++) {
        if (trials.get(i).isCancelled()) {
          cutOff.add(names.get(i));
        } else {
          whole.add(trials.get(i).get());
        }
      }
    } finally {
      pool.shutdownNow();
    }
    return whole;
  }

  private AuditorTrial done(String name, Consumer<AuditorTrial> part) {
    AuditorTrial trial = new AuditorTrial();
    long start = System.nanoTime();
    part.accept(trial);
    System.out.printf(
        "%s | done after %d s, at %d s: %d planted, %d missed%n",
        name,
        seconds(start),
        seconds(began),
        trial.counts().values().stream().mapToInt(c -> c.planted).sum(),
        trial.missed().size());
    return trial;
  }

  private static long seconds(long since) {
    return Duration.ofNanos(System.nanoTime() - since).toSeconds();
  }
}
