package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TerminalMannersTest {
  @TempDir private Path folder;

  @Test
  void a_quiet_command_says_its_result_and_no_more() {
    Ran loud = Runs.run("rest", "demo-players", "--on", "2027-04-05");
    Ran quiet = Runs.run("rest", "demo-players", "--on", "2027-04-05", "--quiet");
    Ran before = Runs.run("-q", "check", "demo-players");

    assertThat(loud.err()).isNotEmpty();
    assertThat(quiet.err()).isEmpty();
    assertThat(quiet.out()).isEqualTo(loud.out());
    assertThat(quiet.status()).isEqualTo(loud.status()).isEqualTo(3);
    assertThat(before.err()).isEmpty();
    assertThat(before.out()).contains("6 faults");
  }

  @Test
  void a_quiet_command_still_says_why_nothing_could_be_done() {
    assertThat(Runs.run("plan", "nowhere", "--out", folder + "/o", "-q").err()).contains("Maybe");
    assertThat(
            Runs.run("plan", "demo-players", "--out", folder + "/o", "-q", "--weeks", "99").err())
        .contains("--weeks must be 1 to 16");
  }

  @Test
  void nothing_is_coloured_where_nobody_watches() {
    for (String[] line :
        List.of(
            new String[] {"--help"},
            new String[] {"plan", "--help"},
            new String[] {"dance"},
            new String[] {"check", "demo-players"})) {
      Ran ran = Runs.run(line);
      assertThat(ran.out() + ran.err()).doesNotContain("\u001B");
    }
  }

  @Test
  void a_shell_can_complete_every_command_and_option() {
    assertThat(Runs.run("completion").out())
        .startsWith("#!/usr/bin/env bash")
        .contains("whatif", "forget", "'--redact'", "'--dry-run'");
  }

  /** Accept a new page with {@code -Dbelthigh.accept=true}. */
  @Test
  void the_manual_page_is_up_to_date() throws IOException {
    Path kept = Path.of("docs/belthigh.1");
    String page = Runs.run("man").out();
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(kept, page);
    }

    assertThat(page)
        .startsWith(".TH BELTHIGH 1\n.SH NAME\n")
        .contains(".SS belthigh plan CLUB\n", "\\fB\\-\\-weeks\\fR \\fIN\\fR")
        .isEqualTo(Files.readString(kept));
  }

  /** Accept a new page with {@code -Dbelthigh.accept=true}. */
  @Test
  void the_spanish_manual_page_tells_of_every_command_and_option() throws IOException {
    Path kept = Path.of("docs/es/belthigh.1");
    String page = Runs.run("man", "--lang", "es").out();
    if (Boolean.getBoolean("belthigh.accept")) {
      Files.writeString(kept, page);
    }

    assertThat(page.lines().filter(TerminalMannersTest::isHead).toList())
        .isEqualTo(Runs.run("man").out().lines().filter(TerminalMannersTest::isHead).toList());
    assertThat(page).contains("La carpeta del club.").isEqualTo(Files.readString(kept));
    assertThat(page).doesNotContain("Only ", "Example", "The ");
  }

  private static boolean isHead(String line) {
    return line.startsWith(".SS") || line.startsWith("\\fB") || line.startsWith("\\fI");
  }
}
