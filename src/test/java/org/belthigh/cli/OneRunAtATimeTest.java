package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.belthigh.files.Output;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs on one folder in processes of their own: a lock within one process shows nothing. */
class OneRunAtATimeTest {
  @TempDir private Path folder;

  private Process start(Path log, String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(Belthigh.class.getName());
    command.addAll(List.of(args));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start();
  }

  private static int status(Process run) throws InterruptedException {
    assertThat(run.waitFor(5, TimeUnit.MINUTES)).isTrue();
    return run.exitValue();
  }

  @Test
  void of_five_runs_into_one_folder_each_is_whole_or_is_told_who_is_at_work() throws Exception {
    Path club = Runs.cleanDemo(folder);
    Path out = folder.resolve("out");
    List<Process> runs = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      runs.add(
          start(
              folder.resolve(i + ".txt"),
              "plan",
              club.toString(),
              "--out",
              out.toString(),
              "--from",
              "2027-04-05",
              "--weeks",
              "1",
              "--prints",
              "overview"));
    }
    int done = 0;
    for (int i = 0; i < runs.size(); i++) {
      int status = status(runs.get(i));
      String said = Files.readString(folder.resolve(i + ".txt"), StandardCharsets.UTF_8);
      assertThat(status).as(said).isIn(0, 4);
      done += status == 0 ? 1 : 0;
      if (status == 4) {
        assertThat(said).contains("another run of belthigh is writing here");
      }
    }
    assertThat(done).isPositive();
    assertThat(out.resolve("plan.json")).exists();
    assertThat(out.resolve(".belthigh")).doesNotExist();
    assertThat(club.resolve(".belthigh")).doesNotExist();
  }

  @Test
  void another_process_is_kept_out_while_the_folder_is_held_and_let_in_afterwards()
      throws Exception {
    Path club = Runs.cleanDemo(folder);
    try (Output held = Output.into(club)) {
      for (int i = 0; i < 2; i++) {
        Path log = folder.resolve("held" + i + ".txt");
        assertThat(status(start(log, "forget", club.toString(), "p03"))).isEqualTo(4);
        assertThat(Files.readString(log))
            .contains("(process " + ProcessHandle.current().pid() + ", begun ");
      }
      assertThat(held.folder()).isEqualTo(club.toAbsolutePath());
    }
    assertThat(status(start(folder.resolve("free.txt"), "forget", club.toString(), "p03")))
        .isZero();
  }

  @Test
  void a_child_that_is_forgotten_during_a_plan_does_not_come_back() throws Exception {
    Path club = Runs.cleanDemo(folder);
    Process plan =
        start(
            folder.resolve("plan.txt"),
            "plan",
            club.toString(),
            "--out",
            folder + "/out",
            "--from",
            "2027-04-05",
            "--weeks",
            "1");
    int forgotten = 4;
    for (int i = 0; i < 200 && forgotten == 4; i++) {
      forgotten = Runs.run("forget", club.toString(), "p03").status();
    }
    int planned = status(plan);
    while (forgotten == 4) {
      forgotten = Runs.run("forget", club.toString(), "p03").status();
    }
    assertThat(planned).isIn(0, 4);
    assertThat(forgotten).isZero();
    try (Stream<Path> files = Files.walk(club)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1).split("[,\\n]"))
            .as(file.toString())
            .doesNotContain("p03");
      }
    }
  }
}
