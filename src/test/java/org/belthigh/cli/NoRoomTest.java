package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A disk without room, by processes of their own. That files may not grow beyond a limit of the
 * shell stands for a full disk: the write fails in the middle of a file all the same.
 */
class NoRoomTest {
  private static final Path SHELL = Path.of("/bin/bash");

  @TempDir private Path folder;

  private Ran run(String shell, String java, String... line) throws Exception {
    File out = folder.resolve("out.txt").toFile();
    File err = folder.resolve("err.txt").toFile();
    List<String> command =
        new ArrayList<>(List.of(SHELL.toString(), "-c", shell + " exec \"$@\"", "-"));
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:-UsePerfData", "-XX:TieredStopAtLevel=1", java));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Belthigh.class.getName()));
    command.addAll(List.of(line));
    int status =
        new ProcessBuilder(command).redirectOutput(out).redirectError(err).start().waitFor();
    return new Ran(status, Files.readString(out.toPath()), Files.readString(err.toPath()));
  }

  private Path temporary() throws IOException {
    return Files.createDirectories(folder.resolve("temporary"));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void a_new_club_that_found_no_room_leaves_nothing_in_the_way(boolean thereBefore)
      throws Exception {
    assumeThat(SHELL).isExecutable();
    Path club = folder.resolve("club");
    if (thereBefore) {
      Files.createDirectory(club);
    }
    String java = "-Djava.io.tmpdir=" + temporary();

    Ran full = run("ulimit -f 1;", java, "new", club.toString());

    assertThat(full.status()).isEqualTo(4);
    assertThat(full.err()).contains("the disk is full", "Maybe ").doesNotContain("\tat ");
    assertThat(Files.exists(club)).isEqualTo(thereBefore);
    assertThat(temporary()).isEmptyDirectory();
    assertThat(run("", java, "new", club.toString()).status()).isZero();
    assertThat(club.resolve("READ-ME.txt")).exists();
  }

  @Test
  void pictures_of_pages_need_no_place_for_temporary_files() throws Exception {
    assumeThat(SHELL).isExecutable();
    Path club = folder.resolve("club");
    Runs.run("new", club.toString(), "--from", "2027-03-01");

    Ran ran =
        run(
            "",
            "-Djava.io.tmpdir=" + folder.resolve("nowhere"),
            "plan",
            club.toString(),
            "--out",
            folder + "/out",
            "--from",
            "2027-03-01",
            "--weeks",
            "1",
            "--prints",
            "overview",
            "--preview");

    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isZero();
    assertThat(folder.resolve("out/u10/overview.png")).isNotEmptyFile();
  }

  @Test
  void a_workbook_that_finds_no_place_for_temporary_files_is_told() throws Exception {
    assumeThat(SHELL).isExecutable();
    Path club = folder.resolve("club");

    Ran ran = run("", "-Djava.io.tmpdir=" + folder.resolve("nowhere"), "new", club.toString());

    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.err()).contains("nowhere: nothing can be written here").doesNotContain("\tat ");
    assertThat(club).doesNotExist();
  }
}
