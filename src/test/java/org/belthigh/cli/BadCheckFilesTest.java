package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every curriculum, rule book and plan below {@code bad/check/} is broken in one way; the {@code
 * .txt} beside it holds all that {@code belthigh check} says of it.
 */
class BadCheckFilesTest {
  private static final Path BAD = Path.of("src/test/resources/bad/check");

  static Stream<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(BAD)) {
      return all
          .filter(f -> Files.isRegularFile(f) && !f.toString().endsWith(".txt"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("files")
  void is_told_word_for_word(Path file) throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();

    int status =
        Belthigh.commandLine(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err))
            .execute("check", file.toString());

    Path expected = Path.of(file.toString().replaceFirst("\\.\\w+$", ".txt"));
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(expected, err.toString());
    }
    assertThat(status).isEqualTo(3);
    assertThat(err.toString()).isEqualTo(Files.readString(expected));
  }
}
