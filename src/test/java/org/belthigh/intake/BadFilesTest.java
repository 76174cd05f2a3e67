package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every file below {@code bad/} is broken in one way. Its folder says which file of the club it
 * stands in for; the {@code .txt} beside it holds every message that reading the club gives. After
 * a change of the messages, {@code -Dbelthigh.accept=true} writes them anew, to be read.
 */
class BadFilesTest {
  private static final Path BAD = Path.of("src/test/resources/bad");

  @Test
  void there_are_two_hundred_and_each_has_its_message() throws IOException {
    try (Stream<Path> all = Files.walk(BAD)) {
      List<Path> broken =
          all.filter(f -> Files.isRegularFile(f) && !f.toString().endsWith(".txt")).toList();
      assertThat(broken).hasSizeGreaterThanOrEqualTo(200);
      assertThat(broken)
          .allMatch(f -> Files.exists(Path.of(f.toString().replaceFirst("\\.\\w+$", ".txt"))));
    }
  }

  static Stream<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(BAD)) {
      return all
          .filter(Files::isRegularFile)
          .filter(f -> !f.toString().endsWith(".txt"))
          .sorted()
          .map(BAD::relativize)
          .filter(f -> !f.startsWith("check"))
          .toList()
          .stream();
    }
  }

  /** {@code logs} stands for a log in CSV, {@code logs.xlsx} for one in a workbook. */
  private static String place(String folder) {
    if (!folder.startsWith("logs")) {
      return folder;
    }
    return folder.equals("logs") ? "logs/log.csv" : folder.replace("logs.", "logs/log.");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("files")
  void is_told_word_for_word(Path file, @TempDir Path temp) throws IOException {
    TestClub club = TestClub.in(temp);
    Path place = club.folder().resolve(place(file.getParent().toString()));
    Files.createDirectories(place.getParent());
    Files.copy(BAD.resolve(file), place, StandardCopyOption.REPLACE_EXISTING);

    List<String> messages = club.messages();

    Path expected = BAD.resolve(file.toString().replaceFirst("\\.\\w+$", ".txt"));
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(expected, String.join("\n", messages) + "\n");
    }
    assertThat(String.join("\n", messages) + "\n").isEqualTo(Files.readString(expected));
  }
}
