package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Breaks files for as long as it is told to: {@code mvn -Pfuzz test -Dfuzz.minutes=10
 * -Dfuzz.seed=1}. Prints how many executions each reader stood, and the heap that was in use. No
 * part of the ordinary tests.
 */
class FuzzRun {
  private static final int BATCH = 500;
  private static final long MOST_GROWN = 64L << 20;

  @Test
  void every_reader_stands_it_for_as_long_as_it_is_told_to() {
    double minutes = Double.parseDouble(System.getProperty("fuzz.minutes", "1"));
    long seed = Long.parseLong(System.getProperty("fuzz.seed", "1"));
    Fuzzing fuzzing = new Fuzzing(seed);
    Map<String, Long> executions = new TreeMap<>();
    long start = System.nanoTime();
    long heapAtFirst = 0;
    while (System.nanoTime() - start < minutes * 60e9) {
      for (String reader : fuzzing.readers()) {
        // readers take turns by time, not by number: a slow one must not hold up the others
        long turn = System.nanoTime();
        while (System.nanoTime() - turn < 200_000_000L) {
          for (int i = 0; i < BATCH / 10; i++) {
            fuzzing.execute(reader);
          }
          executions.merge(reader, (long) BATCH / 10, Long::sum);
        }
      }
      if (heapAtFirst == 0) {
        heapAtFirst = heap() - fuzzing.kept();
      }
    }
    long grown = heap() - fuzzing.kept() - heapAtFirst;
    executions.forEach((reader, n) -> System.out.printf(Locale.ROOT, "%-18s %,d%n", reader, n));
    System.out.printf(
        Locale.ROOT,
        "seed %d: %,d executions in %.1f minutes, %,d rows read, heap %+d KiB since the first round%n",
        seed,
        executions.values().stream().mapToLong(Long::longValue).sum(),
        (System.nanoTime() - start) / 60e9,
        fuzzing.used(),
        grown >> 10);
    assertThat(fuzzing.used()).isPositive();
    assertThat(grown).isLessThan(MOST_GROWN);
  }

  private static long heap() {
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
