package org.belthigh.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class FolderTest {
  @TempDir private Path path;
  private final List<Problem> problems = new ArrayList<>();

  private String found() {
    assertThat(problems).hasSize(1);
    return problems.get(0).found();
  }

  @Test
  void a_byte_order_mark_is_left_out() throws IOException {
    Files.write(path.resolve("x.csv"), new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'a'});

    assertThat(Folder.of(path).text("x.csv", problems::add)).contains("a");
  }

  @Test
  void bytes_that_are_no_utf_8_are_refused() throws IOException {
    Files.write(path.resolve("x.csv"), new byte[] {'P', 'e', (byte) 0xF1, 'a'});

    assertThat(Folder.of(path).text("x.csv", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("the file is not UTF-8 text");
  }

  @Test
  void nul_bytes_are_refused() throws IOException {
    Files.write(path.resolve("x.csv"), new byte[] {'a', 0, 'b'});

    assertThat(Folder.of(path).text("x.csv", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("the file is not UTF-8 text");
  }

  @Test
  void a_file_over_the_limit_is_refused() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(path.resolve("x.csv").toFile(), "rw")) {
      file.setLength(Folder.MOST_BYTES + 1);
    }

    assertThat(Folder.of(path).text("x.csv", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("the file is larger than 16 MiB");
  }

  @Test
  @Timeout(20)
  void a_pipe_is_refused_and_not_waited_for() throws Exception {
    Process made = new ProcessBuilder("mkfifo", path.resolve("x.csv").toString()).start();
    assertThat(made.waitFor()).isZero();

    assertThat(Folder.of(path).text("x.csv", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("this is a device or a pipe, no file");
  }

  @Test
  void a_yaml_file_of_more_than_a_mebibyte_is_refused() throws IOException {
    Files.writeString(path.resolve("club.yaml"), "name: " + "x".repeat(1 << 20));

    assertThat(Folder.of(path).text("club.yaml", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("the file is larger than 1 MiB");
  }

  @Test
  void a_link_out_of_the_folder_is_not_followed(@TempDir Path elsewhere) throws IOException {
    Files.writeString(elsewhere.resolve("secret.csv"), "a,b");
    Files.createSymbolicLink(path.resolve("x.csv"), elsewhere.resolve("secret.csv"));

    assertThat(Folder.of(path).text("x.csv", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("it is a link to a file outside the folder");
  }

  @Test
  void a_folder_in_place_of_a_file_cannot_be_read() throws IOException {
    Files.createDirectory(path.resolve("x.csv"));

    assertThat(Folder.of(path).text("x.csv", problems::add)).isEmpty();
    assertThat(found()).isEqualTo("the file cannot be read");
  }

  @Test
  void names_come_sorted_without_hidden_and_lock_files() throws IOException {
    Files.createDirectories(path.resolve("logs/sub"));
    for (String name : List.of("b.csv", "a.csv", ".hidden.csv", "~$lock.csv")) {
      Files.createFile(path.resolve("logs").resolve(name));
    }

    assertThat(Folder.of(path).names("logs")).containsExactly("logs/a.csv", "logs/b.csv");
    assertThat(Folder.of(path).names("nowhere")).isEmpty();
  }

  @Test
  void files_are_shown_as_the_user_named_the_folder() {
    assertThat(Folder.of(Path.of("demo-players")).shown("logs/x.csv"))
        .isEqualTo("demo-players/logs/x.csv");
  }
}
