package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.belthigh.intake.Headings;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NewCommandTest {
  @TempDir private Path folder;
  private Path club;

  @BeforeEach
  void names() {
    club = folder.resolve("my-club");
  }

  private Ran make(String... more) {
    String[] line = new String[more.length + 2];
    line[0] = "new";
    line[1] = club.toString();
    System.arraycopy(more, 0, line, 2, more.length);
    return Runs.run(line);
  }

  @Test
  void a_new_club_is_planned_at_once_without_a_word() {
    Ran made = make();

    Ran checked = Runs.run("check", club.toString());
    Ran planned = Runs.run("plan", club.toString(), "--out", folder + "/out");

    assertThat(made.status()).isZero();
    assertThat(made.out()).contains("club.yaml", "roster.csv", "logs/log.csv", "workbook.xlsx");
    assertThat(checked.err()).isEmpty();
    assertThat(planned.status()).isZero();
    assertThat(planned.err()).isEmpty();
    assertThat(folder.resolve("out/u10/packet.pdf")).exists();
    assertThat(folder.resolve("out/u10/practice-2027-04-06.pdf")).exists();
  }

  @Test
  void a_club_whose_first_language_is_spanish_is_begun_in_spanish() throws IOException {
    Ran made = make("--lang", "es", "--from", "2027-03-01");

    Ran checked = Runs.run("check", club.toString());
    Ran planned =
        Runs.run("plan", club.toString(), "--out", folder + "/out", "--from", "2027-03-01");

    assertThat(made.out()).contains("LEEME.txt").doesNotContain("READ-ME");
    String page = Files.readString(club.resolve("LEEME.txt"));
    assertThat(page).contains("LA CARPETA DE SU CLUB", "other-pain", "primera semana es ligera");
    for (String table : List.of("roster", "calendar", "log", "throws", "wellness")) {
      assertThat(page).contains(Headings.of(table));
    }
    assertThat(Files.readString(club.resolve("club.yaml"))).contains("languages: [es, en]");
    assertThat(checked.err()).isEmpty();
    assertThat(planned.err()).isEmpty();
    assertThat(Files.readString(club.resolve("roster.csv"))).contains("Muestra", ",es,");
  }

  @Test
  void a_language_that_is_none_is_refused() {
    assertThat(make("--lang", "fr").err()).contains("--lang must be en or es, not 'fr'");
    assertThat(club).doesNotExist();
  }

  @Test
  void the_first_week_in_spanish_can_be_followed_to_the_letter() throws IOException {
    List<String> page = Files.readAllLines(Path.of("docs/es/primera-semana.md"));
    List<String> roster =
        page.stream()
            .filter(l -> l.startsWith("| ") && !l.contains("--"))
            .filter(l -> l.split("\\|", -1).length == 8)
            .map(l -> String.join(",", l.substring(1, l.length() - 1).split("\\|", -1)))
            .toList();
    make("--lang", "es", "--from", "2027-03-01");
    Files.write(club.resolve("roster.csv"), roster);

    Ran checked = Runs.run("check", club.toString());

    assertThat(roster).hasSize(3);
    assertThat(checked.status()).isZero();
    assertThat(checked.err() + checked.out()).doesNotContain("fault ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Riverside \"Herons\"", "O'Brien: #1, {x}", "Águilas\\Norte"})
  void any_name_is_kept_as_it_is(String name) throws IOException {
    make("--name", name, "--from", "2027-03-01", "--paper", "a4");

    Ran planned =
        Runs.run(
            "plan",
            club.toString(),
            "--out",
            folder + "/out",
            "--from",
            "2027-03-01",
            "--weeks",
            "1");

    assertThat(planned.status()).isZero();
    assertThat(
            new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(folder.resolve("out/plan.json").toFile())
                .get("club")
                .asText())
        .isEqualTo(name);
  }

  @Test
  void nothing_of_an_older_club_is_touched() throws IOException {
    Files.createDirectories(club);
    Files.writeString(club.resolve("roster.csv"), "mine");

    Ran ran = make();

    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.err()).contains("something stands here already", "Maybe");
    assertThat(club.resolve("roster.csv")).hasContent("mine");
    assertThat(club.resolve("club.yaml")).doesNotExist();
  }

  @Test
  void the_workbook_has_the_headings_of_the_tables_and_reads_back() throws IOException {
    make();

    try (InputStream in = Files.newInputStream(club.resolve("workbook.xlsx"));
        ReadableWorkbook book = new ReadableWorkbook(in)) {
      assertThat(book.getSheets().map(Sheet::getName))
          .containsExactly("roster", "log", "tally", "throws", "wellness", "calendar", "words");
      for (Sheet sheet : book.getSheets().limit(6).toList()) {
        List<Row> rows = sheet.read();
        assertThat(rows).as(sheet.getName()).hasSize(1);
        assertThat(rows.get(0).stream().map(c -> c.getText()))
            .isEqualTo(Headings.of(sheet.getName()));
      }
    }
  }

  @Test
  void most_columns_can_only_be_filled_in_rightly() throws IOException {
    make();

    assertThat(sheet(2))
        .contains("'roster'!$A$2:$A$301") // the players of the roster
        .contains("AND(ISNUMBER(A2),A2>=DATE(2000,1,1))")
        .contains("'words'!$")
        .doesNotContain("errorStyle=\"information\"");
    assertThat(sheet(1)).contains("COUNTIF($A$2:$A$301,A2)=1");
    assertThat(sheet(2).split("<dataValidation ", -1).length - 1).isGreaterThanOrEqualTo(16);
  }

  @Test
  void every_part_of_the_workbook_is_sound_xml() throws Exception {
    make();
    int parts = 0;
    try (ZipFile zip = new ZipFile(club.resolve("workbook.xlsx").toFile())) {
      for (var entry : Collections.list(zip.entries())) {
        if (entry.getName().matches(".*\\.(xml|rels|vml)")) {
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(zip.getInputStream(entry));
          parts++;
        }
      }
    }
    assertThat(parts).isGreaterThan(20);
  }

  private String sheet(int number) throws IOException {
    try (ZipFile zip = new ZipFile(club.resolve("workbook.xlsx").toFile());
        InputStream in =
            zip.getInputStream(zip.getEntry("xl/worksheets/sheet" + number + ".xml"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void two_clubs_of_one_day_are_the_same_to_the_byte() throws Exception {
    make();
    Path first = club;
    club = folder.resolve("other");
    Thread.sleep(2100); // zip files count in steps of two seconds
    make();

    for (String file : List.of("workbook.xlsx", "club.yaml", "roster.csv", "READ-ME.txt")) {
      assertThat(club.resolve(file)).hasSameBinaryContentAs(first.resolve(file));
    }
  }
}
