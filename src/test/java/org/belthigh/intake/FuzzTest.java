package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A short run of {@link Fuzzing}, and all that a long one ever found. */
class FuzzTest {
  private static final long SEED = 20270308L;
  private static final int EXECUTIONS = 300;
  private static final Path FOUND = Path.of("src/test/resources/found.txt");

  @Test
  void no_reader_breaks_down_or_hangs_on_broken_bytes() {
    Fuzzing fuzzing = new Fuzzing(SEED);
    for (String reader : fuzzing.readers()) {
      for (int i = 0; i < EXECUTIONS; i++) {
        fuzzing.execute(reader);
      }
    }
    assertThat(fuzzing.used()).as("rows that were sound all the same").isPositive();
  }

  @Test
  void what_was_found_once_stays_repaired() throws IOException {
    Fuzzing fuzzing = new Fuzzing(SEED);
    for (String line : Files.readAllLines(FOUND)) {
      if (!line.startsWith("#")) {
        List<String> parts = List.of(line.split(" ", 2));
        fuzzing.feed(parts.get(0), HexFormat.of().parseHex(parts.get(1)));
      }
    }
  }
}
