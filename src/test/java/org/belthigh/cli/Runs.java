package org.belthigh.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;

/** Commands as a coordinator gives them, on 5 April 2027. */
final class Runs {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2027-04-05T09:00:00Z"), ZoneOffset.UTC);

  private Runs() {}

  static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Belthigh.commandLine(TODAY, new PrintWriter(out), new PrintWriter(err)).execute(args);
    return new Ran(status, out.toString(), err.toString());
  }

  /**
   * A copy of the demo club without the file that has the planted faults, and without what a run of
   * the demo left behind.
   */
  static Path cleanDemo(Path folder) throws IOException {
    Path club = folder.resolve("club");
    try (Stream<Path> files = Files.walk(Path.of("demo-players"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.endsWith("u10-practice-0330.csv")
            && !file.startsWith(Path.of("demo-players", "history"))) {
          Path copy = club.resolve(Path.of("demo-players").relativize(file).toString());
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy);
        }
      }
    }
    return club;
  }
}
