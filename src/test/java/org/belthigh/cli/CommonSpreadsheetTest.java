package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.belthigh.intake.Headings;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What LibreOffice Calc makes of our files, and we of its; skipped where it is missing. {@code
 * .ci/run} installs it where it can be installed.
 */
class CommonSpreadsheetTest {
  private static final Path PROGRAM = Path.of("/usr/bin/localc");

  /** Comma, quote, UTF-8, from the first line: what a person would say when asked on opening. */
  private static final String UTF_8_WITH_COMMAS = "--infilter=CSV:44,34,76,1";

  private static final List<String> TABLES =
      List.of("roster", "calendar", "throws", "wellness", "other", "coach");

  @TempDir private Path folder;

  @BeforeEach
  void the_program_is_there() {
    assumeThat(PROGRAM).exists();
  }

  /** Opens {@code file} and saves it as XLSX into {@code saved}. */
  private void save(Path file, Path saved) throws IOException, InterruptedException {
    Process office =
        new ProcessBuilder(
                "soffice",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                UTF_8_WITH_COMMAS,
                "--convert-to",
                "xlsx",
                "--outdir",
                saved.toString(),
                file.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    assertThat(office.waitFor()).isZero();
    assertThat(saved.resolve(file.getFileName().toString().replaceFirst("csv$", "xlsx"))).exists();
  }

  private static int checks(Path workbook) throws IOException {
    try (ZipFile zip = new ZipFile(workbook.toFile());
        InputStream in = zip.getInputStream(zip.getEntry("xl/worksheets/sheet2.xml"))) {
      String sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return sheet.split("<dataValidation ", -1).length - 1;
    }
  }

  @Test
  void it_opens_the_workbook_of_a_new_club_and_saves_it_with_all_its_checks() throws Exception {
    Path club = folder.resolve("my-club");
    Runs.run("new", club.toString());

    save(club.resolve("workbook.xlsx"), folder.resolve("saved"));

    Path saved = folder.resolve("saved/workbook.xlsx");
    assertThat(checks(saved)).isPositive().isEqualTo(checks(club.resolve("workbook.xlsx")));
    try (InputStream in = Files.newInputStream(saved);
        ReadableWorkbook book = new ReadableWorkbook(in)) {
      Row head = book.findSheet("log").orElseThrow().read().get(0);
      assertThat(head.stream().map(c -> c.getText())).isEqualTo(Headings.of("log"));
    }
  }

  /** Days, times and numbers become cells of their own kind on the way, and are read as such. */
  @Test
  void a_club_whose_tables_it_saved_is_counted_decided_and_planned_the_same() throws Exception {
    Path club = folder.resolve("club");
    copy(Path.of("demo-players"), club);
    String measures = measures(club);
    String rest = Runs.run("rest", club.toString(), "--on", "2027-04-05", "--json").out();

    for (String table : TABLES) {
      save(club.resolve(table + ".csv"), club);
      Files.delete(club.resolve(table + ".csv"));
    }
    for (Path log : files(club.resolve("logs"))) {
      save(log, club.resolve("logs"));
      Files.delete(log);
    }

    assertThat(files(club.resolve("logs"))).allMatch(log -> log.toString().endsWith(".xlsx"));
    assertThat(measures(club)).isEqualTo(measures);
    assertThat(Runs.run("rest", club.toString(), "--on", "2027-04-05", "--json").out())
        .isEqualTo(rest);
  }

  private static String measures(Path club) {
    return Runs.run("measure", club.toString(), "--as-of", "2027-04-05", "--json").out();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> paths = Files.walk(from)) {
      for (Path path : paths.toList()) {
        Path copy = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(path, copy);
        }
      }
    }
  }
}
