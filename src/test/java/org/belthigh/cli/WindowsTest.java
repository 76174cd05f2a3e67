package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.belthigh.intake.TestClub;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What can be held about Windows without it: names, line ends and the form of the launcher. Its
 * rules for names are common knowledge. The launcher itself was never run there.
 */
class WindowsTest {
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");
  private static final Pattern FORBIDDEN = Pattern.compile("[<>:\"|?*\\\\\\p{Cntrl}]");

  @TempDir private Path temp;

  private static List<String> unfit(Path root) throws IOException {
    List<String> unfit = new ArrayList<>();
    Set<String> folded = new HashSet<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.filter(p -> !p.equals(root)).toList()) {
        String name = path.getFileName().toString();
        boolean bad =
            DEVICE.matcher(name).matches()
                || FORBIDDEN.matcher(name).find()
                || name.endsWith(".")
                || name.endsWith(" ");
        if (bad || !folded.add(root.relativize(path).toString().toLowerCase(Locale.ROOT))) {
          unfit.add(root.relativize(path).toString());
        }
      }
    }
    return unfit;
  }

  @Test
  void every_name_that_is_written_is_one_that_windows_can_keep() throws IOException {
    TestClub club =
        TestClub.in(temp)
            .with(
                "roster.csv",
                "id,first_name,born,bats,group",
                "con,Ana,2017-05-02,R,u10",
                "NUL,Ben,2017-09-12,L,u10",
                "p01,Cruz,2016-12-30,S,u10",
                "P01,Dee,2016-12-30,S,u10");

    Ran ran =
        Runs.run(
            "plan",
            club.folder().toString(),
            "--out",
            temp + "/out",
            "--from",
            "2027-03-01",
            "--weeks",
            "1",
            "--preview");

    assertThat(ran.status()).as("two ids that differ by a capital alone").isEqualTo(3);
    assertThat(ran.err()).contains("'P01' stands already on line 4");
    assertThat(unfit(temp.resolve("out"))).isEmpty();
    assertThat(unfit(club.folder())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"aux", "COM1", "Lpt9", "u10.", "u10 .", "a:b", "U10"})
  void a_group_that_can_name_no_folder_there_is_refused(String id) throws IOException {
    TestClub club = TestClub.in(temp);
    Path file = club.folder().resolve("club.yaml");
    Files.writeString(
        file, Files.readString(file) + "\n  - {id: \"" + id + "\", name: Other, age: [11, 12]}\n");

    Ran ran = Runs.run("check", club.folder().toString());

    assertThat(ran.status()).isNotZero();
    assertThat(ran.err()).contains("'" + id + "'");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\r"})
  void line_ends_of_every_kind_mean_the_same(String end) throws IOException {
    TestClub club =
        TestClub.in(temp)
            .with("wellness.csv", "date,player,kind", "2027-03-08,p01,arm-pain")
            .with("throws.yaml", "- date: 2027-03-08", "  player: p01", "  pitches: 30")
            .with("logs/a.txt", "2027-03-08 u10", "zone-call", "ana 45 55");
    String before = rest(club);
    try (Stream<Path> files = Files.walk(club.folder())) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.writeString(file, Files.readString(file).replace("\n", end));
      }
    }

    assertThat(rest(club)).isEqualTo(before).contains("p01");
  }

  private static String rest(TestClub club) {
    String folder = club.folder().toString();
    Ran measured = Runs.run("measure", folder, "--as-of", "2027-03-09", "--json");
    Ran rested = Runs.run("rest", folder, "--on", "2027-03-09", "--json");
    return measured.out() + measured.err() + rested.out() + rested.err();
  }

  @Test
  void the_launcher_is_a_batch_file_by_its_form() throws IOException {
    String text = Files.readString(Path.of("src/launcher/belthigh.cmd"), StandardCharsets.US_ASCII);
    List<String> lines = List.of(text.split("\r\n", -1));

    assertThat(text).doesNotContain("!").endsWith("\r\n");
    assertThat(lines).allMatch(line -> !line.contains("\n") && !line.contains("\r"));
    assertThat(lines.get(0)).isEqualTo("@echo off");
    for (String line : lines) {
      long quotes = line.chars().filter(c -> c == '"').count();
      assertThat(quotes % 2).as(line).isZero();
      if (line.contains("%~dp0")) {
        assertThat(line).as("a folder with blanks").matches("(rem .*|.*\"[^\" ]*%~dp0[^\"]*\".*)");
      }
    }
    assertThat(lines.get(lines.size() - 2))
        .startsWith("\"%JAVA%\" ")
        .endsWith("-jar \"%~dp0belthigh.jar\" %*");
  }
}
