package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForgetCommandTest {
  @TempDir private Path folder;

  private static Map<String, String> contents(Path root) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.put(
            root.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  @Test
  void every_row_of_the_child_goes_and_every_other_line_stays() throws IOException {
    Path club = Runs.cleanDemo(folder);
    Runs.run(
        "plan", club.toString(), "--out", folder + "/out", "--from", "2027-03-29", "--weeks", "1");
    Map<String, String> before = contents(club);

    Ran dry = Runs.run("forget", club.toString(), "p03", "--dry-run");
    assertThat(contents(club)).isEqualTo(before);
    Ran ran = Runs.run("forget", club.toString(), "p03");

    Map<String, String> after = contents(club);
    assertThat(after.keySet()).isEqualTo(before.keySet());
    int gone = 0;
    for (String file : before.keySet()) {
      List<String> kept = new ArrayList<>();
      for (String line : before.get(file).split("(?<=\n)", -1)) {
        boolean his = List.of(line.split(",", -1)).contains("p03");
        gone += his ? 1 : 0;
        if (!his) {
          kept.add(line);
        }
      }
      assertThat(after.get(file)).as(file).isEqualTo(String.join("", kept));
    }
    assertThat(ran.status()).isZero();
    assertThat(dry.out()).isEqualTo(ran.out().replace(", removed:", ", would be removed:"));
    assertThat(ran.out())
        .contains("  roster.csv: 1 row, line 4")
        .contains("  history/2027-03-29-steps.csv: 4 rows")
        .contains("  " + gone + " rows in all")
        .contains("a name of the child, or of a namesake:", "  roster.csv line 5")
        .doesNotContain("Mateo");
    assertThat(Runs.run("explain", club.toString(), "p03").status()).isEqualTo(4);
    assertThat(Runs.run("forget", club.toString(), "p03").status()).isEqualTo(4);
    assertThat(
            Runs.run("plan", club.toString(), "--out", folder + "/o2", "--from", "2027-04-05")
                .status())
        .isZero();
  }

  @Test
  void spreadsheets_of_any_kind_keep_their_bytes() throws IOException {
    Path club = Files.createDirectory(folder.resolve("club"));
    Files.writeString(club.resolve("club.yaml"), "name: no club yet\n");
    Charset windows = Charset.forName("windows-1252");
    Files.write(
        club.resolve("roster.csv"),
        "id;first_name;needs\r\np01;José;\"glasses;\r\np03 helps\"\r\n p03 ;Ana;x\r\np02;Zoë;"
            .getBytes(windows));
    Files.writeString(
        club.resolve("throws.csv"), "\uFEFFdate\tplayer\tpitches\n2027-04-01\tp03\t3\n");
    Files.writeString(club.resolve("notes.yaml"), "- date: x\n- player: p03\n");
    Files.writeString(club.resolve("p03-week-2027-04-05.pdf"), "a card");

    Ran ran = Runs.run("forget", club.toString(), "p03");

    assertThat(Files.readString(club.resolve("roster.csv"), windows))
        .isEqualTo("id;first_name;needs\r\np01;José;\"glasses;\r\np03 helps\"\r\np02;Zoë;");
    assertThat(club.resolve("throws.csv")).hasContent("\uFEFFdate\tplayer\tpitches\n");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out())
        .contains("  roster.csv: 1 row, line 4")
        .contains("Take out yourself")
        .contains("  notes.yaml line 2\n  p03-week-2027-04-05.pdf\n");
  }

  @Test
  void a_child_that_is_not_there_is_4_with_the_nearest() throws IOException {
    Path club = Runs.cleanDemo(folder);

    Ran ran = Runs.run("forget", club.toString(), "p033");

    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.err()).contains("Maybe 'p03' is meant.");
    assertThat(Runs.run("forget", folder.resolve("nowhere").toString(), "p01").status())
        .isEqualTo(4);
    assertThat(folder.resolve("nowhere")).doesNotExist();
  }
}
