package org.belthigh.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputTest {
  @TempDir private Path temp;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void write(Path folder, String path, String text) {
    try (Output output = Output.into(folder)) {
      output.put(path, bytes(text));
      output.commit();
    }
  }

  @Test
  void nothing_is_seen_before_the_commit_and_all_of_it_after() {
    Path folder = temp.resolve("a/b");
    try (Output output = Output.into(folder)) {
      output.put("u10/one.txt", bytes("1"));
      output.put("two.txt", bytes("2"));
      assertThat(folder.resolve("two.txt")).doesNotExist();
      output.commit();
    }

    assertThat(folder.resolve("u10/one.txt")).hasContent("1");
    assertThat(folder.resolve("two.txt")).hasContent("2");
    assertThat(folder.resolve(".belthigh")).doesNotExist();
  }

  @Test
  void a_folder_that_was_made_for_nothing_is_taken_away() {
    try (Output output = Output.into(temp.resolve("a/b"))) {
      output.put("one.txt", bytes("1"));
    }

    assertThat(temp.resolve("a")).doesNotExist();
  }

  @Test
  void what_a_killed_run_had_ready_is_completed_and_what_it_had_half_is_taken_away()
      throws IOException {
    Files.createDirectories(temp.resolve(".belthigh/ready/u10"));
    Files.createDirectories(temp.resolve(".belthigh/writing"));
    Files.writeString(temp.resolve(".belthigh/ready/u10/card.pdf"), "new");
    Files.writeString(temp.resolve(".belthigh/writing/plan.json"), "ha");
    Files.writeString(temp.resolve(".belthigh/lock"), "99999999");

    write(temp, "other.txt", "x");

    assertThat(temp.resolve("u10/card.pdf")).hasContent("new");
    assertThat(temp.resolve("plan.json")).doesNotExist();
    assertThat(temp.resolve(".belthigh")).doesNotExist();
  }

  @Test
  void a_second_run_on_the_same_folder_is_told_who_is_at_work() {
    try (Output first = Output.into(temp)) {
      assertThatExceptionOfType(Unwritable.class)
          .isThrownBy(() -> Output.into(temp))
          .matches(Unwritable::inUse)
          .withMessageContaining(
              "another run of belthigh is writing here (process "
                  + ProcessHandle.current().pid()
                  + ", begun ")
          .withMessageContaining("); one run at a time");
      first.put("one.txt", bytes("1"));
      first.commit();
    }

    write(temp, "two.txt", "2");

    assertThat(temp.resolve("one.txt")).hasContent("1");
    assertThat(temp.resolve("two.txt")).hasContent("2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../x.txt", "a/../../x.txt", "/etc/x.txt", "", "."})
  void a_path_that_leads_out_is_refused(String path) {
    try (Output output = Output.into(temp.resolve("in"))) {
      assertThatThrownBy(() -> output.put(path, bytes("x")))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("leads out of the output folder");
    }
  }

  @Test
  void a_link_that_leads_out_is_refused_and_nothing_is_moved() throws IOException {
    Path elsewhere = Files.createDirectory(temp.resolve("elsewhere"));
    Path folder = Files.createDirectory(temp.resolve("folder"));
    Files.createSymbolicLink(folder.resolve("u10"), elsewhere);
    try (Output output = Output.into(folder)) {
      output.put("a/first.txt", bytes("x"));
      output.put("u10/card.pdf", bytes("x"));

      assertThatThrownBy(output::commit)
          .isInstanceOf(Unwritable.class)
          .hasMessageContaining("a link on the way leads out of the folder");
    }

    assertThat(elsewhere).isEmptyDirectory();
    assertThat(folder.resolve("a/first.txt")).doesNotExist();
  }

  @Test
  void new_files_are_for_their_owner_alone_and_old_ones_keep_what_they_were_given()
      throws IOException {
    assumeThat(temp.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Path old = temp.resolve("old.txt");
    Files.writeString(old, "old");
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("rw-r-----"));

    try (Output output = Output.into(temp)) {
      output.put("old.txt", bytes("new"));
      output.put("u10/new.txt", bytes("new"));
      output.commit();
    }
    try (Output output = Output.ofPages(temp)) {
      output.put("page.md", bytes("page"));
      output.commit();
    }

    assertThat(permissions("old.txt")).isEqualTo("rw-r-----");
    assertThat(permissions("u10/new.txt")).isEqualTo("rw-------");
    assertThat(permissions("u10")).isEqualTo("rwx------");
    assertThat(permissions("page.md")).startsWith("rw-r");
  }

  private String permissions(String path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(temp.resolve(path)));
  }

  @Test
  void a_full_disk_is_said_and_the_old_files_stay() throws IOException {
    Configuration small = Configuration.unix().toBuilder().setMaxSize(1 << 20).build();
    try (FileSystem disk = Jimfs.newFileSystem(small)) {
      Path folder = disk.getPath("/prints");
      write(folder, "plan.json", "old");

      assertThatThrownBy(
              () -> {
                try (Output output = Output.into(folder)) {
                  output.put("plan.json", bytes("new"));
                  output.put("packet.pdf", new byte[2 << 20]);
                  output.commit();
                }
              })
          .isInstanceOf(Unwritable.class)
          .hasMessageContaining("/prints/packet.pdf: the disk is full")
          .hasMessageContaining("nothing was replaced")
          .hasMessageContaining("Maybe");

      assertThat(folder.resolve("plan.json")).hasContent("old");
      assertThat(folder.resolve(".belthigh")).doesNotExist();
    }
  }

  @Test
  void a_read_only_disk_is_said() {
    Path folder = FileSystems.getFileSystem(URI.create("jrt:/")).getPath("/modules/prints");

    assertThatThrownBy(() -> Output.into(folder))
        .isInstanceOf(Unwritable.class)
        .hasMessageContaining("the disk is read-only");
  }

  @Test
  void a_file_in_place_of_a_folder_is_named_before_anything_is_moved() throws IOException {
    Files.writeString(temp.resolve("u10"), "a file");
    try (Output output = Output.into(temp)) {
      output.put("plan.json", bytes("new"));
      output.put("u10/card.pdf", bytes("new"));

      assertThatThrownBy(output::commit)
          .isInstanceOf(Unwritable.class)
          .hasMessageContaining("u10: something else of this name stands here");
    }

    assertThat(temp.resolve("plan.json")).doesNotExist();
  }

  @Test
  void a_folder_in_place_of_a_file_is_named_before_anything_is_moved() throws IOException {
    Files.createDirectory(temp.resolve("plan.json"));
    try (Output output = Output.into(temp)) {
      output.put("a/b.txt", bytes("new"));
      output.put("plan.json", bytes("new"));

      assertThatThrownBy(output::commit)
          .isInstanceOf(Unwritable.class)
          .hasMessageContaining("plan.json: something else of this name stands here");
    }

    assertThat(temp.resolve("a/b.txt")).doesNotExist();
  }
}
