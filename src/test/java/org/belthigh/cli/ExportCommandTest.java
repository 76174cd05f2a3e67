package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.belthigh.sending.Spreadsheet;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExportCommandTest {
  @TempDir private Path folder;

  private Path export(Path club, String... more) {
    Path out = folder.resolve("out");
    Ran ran =
        Runs.run(
            Stream.concat(
                    Stream.of("export", club.toString(), "--out", out.toString()), Stream.of(more))
                .toArray(String[]::new));
    assertThat(ran.status()).isZero();
    return out;
  }

  private static Calendar calendar(Path file) throws Exception {
    byte[] bytes = Files.readAllBytes(file);
    for (String line : new String(bytes, StandardCharsets.UTF_8).split("\r\n", -1)) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
      assertThat(line).doesNotContain("\n", "\r");
    }
    Calendar calendar = new CalendarBuilder().build(new ByteArrayInputStream(bytes));
    assertThat(calendar.validate().hasErrors()).as(file.toString()).isFalse();
    return calendar;
  }

  @Test
  void every_calendar_is_sound_and_holds_no_name_and_no_hold() throws Exception {
    Path out = export(Runs.cleanDemo(folder), "--from", "2027-04-05", "--weeks", "2");
    int files = 0;
    Set<String> uids = new TreeSet<>();
    try (Stream<Path> all = Files.walk(out)) {
      for (Path file : all.filter(f -> f.toString().endsWith(".ics")).toList()) {
        Calendar calendar = calendar(file);
        List<VEvent> events = calendar.getComponents("VEVENT");
        assertThat(events).isNotEmpty();
        assertThat(events)
            .extracting(e -> e.getUid().orElseThrow().getValue())
            .doesNotHaveDuplicates();
        events.forEach(e -> uids.add(e.getUid().orElseThrow().getValue()));
        assertThat(Files.readString(file)).doesNotContain("Mateo", "Holcomb", "pain", "injury");
        files++;
      }
    }
    assertThat(files).isEqualTo(30); // 28 players, 2 groups
    assertThat(uids).contains("u10-practice-2027-04-06-1@belthigh");
  }

  @Test
  void a_club_without_a_calendar_gets_the_practices_that_are_assumed() throws Exception {
    Path club = Runs.cleanDemo(folder);
    Files.delete(club.resolve("calendar.csv"));
    Path out = export(club, "--from", "2027-04-05", "--weeks", "1", "--player", "p01");

    List<VEvent> events = calendar(out.resolve("u10/calendar.ics")).getComponents("VEVENT");

    assertThat(events).hasSize(2);
    assertThat(events.get(0).toString()).contains("SUMMARY:Practice", "DTSTART;VALUE=DATE:2027040");
    assertThat(out.resolve("u14/calendar.ics")).doesNotExist();
  }

  @Test
  void a_family_reads_its_home_sessions_in_its_language() throws Exception {
    Path out = export(Runs.cleanDemo(folder), "--from", "2027-04-05", "--weeks", "1");

    Calendar english = calendar(out.resolve("u10/calendars/p01.ics"));
    Calendar spanish = calendar(out.resolve("u10/calendars/p03.ics"));

    assertThat(english.toString()).contains("SUMMARY:Hitting at home\\, ", "SUMMARY:Practice");
    assertThat(spanish.toString()).contains("SUMMARY:Práctica");
    assertThat(calendar(out.resolve("u10/calendar.ics")).toString())
        .contains("DTSTART:20270406T173000", "DURATION:PT1H30M")
        .doesNotContain("at home");
  }

  @Test
  void the_tables_say_what_measure_says_in_csv_and_in_a_workbook() throws IOException {
    Path club = Runs.cleanDemo(folder);
    Path out = export(club, "--from", "2027-04-05", "--weeks", "1");

    List<String> measures = Files.readAllLines(out.resolve("measures.csv"));
    var json = Runs.run("measure", club.toString(), "--as-of", "2027-04-05", "--json").json();
    assertThat(measures).hasSize(29);
    assertThat(measures.get(0)).startsWith("player,zone_recognition_right,zone_recognition_seen");
    assertThat(measures.get(2))
        .startsWith("p02," + json.at("/players/1/zone_recognition/right").asInt() + ",");
    assertThat(Files.readAllLines(out.resolve("overview.csv")))
        .hasSize(29)
        .anyMatch(l -> l.startsWith("u10,p10,") && l.contains("when a person ends it"));
    try (InputStream in = Files.newInputStream(out.resolve("tables.xlsx"));
        ReadableWorkbook book = new ReadableWorkbook(in)) {
      List<Row> rows = book.findSheet("measures").orElseThrow().read();
      assertThat(rows).hasSize(29);
      assertThat(rows.get(2).getCellText(1))
          .isEqualTo(json.at("/players/1/zone_recognition/right").asText());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1"})
  void a_text_that_looks_like_a_formula_is_made_harmless(String text) throws IOException {
    Spreadsheet table = new Spreadsheet(List.of("name"), List.of(List.of(text), List.of(-3)));

    assertThat(new String(table.csv(), StandardCharsets.UTF_8))
        .contains("'" + text)
        .endsWith("-3\n");
    try (ReadableWorkbook book =
        new ReadableWorkbook(new ByteArrayInputStream(Spreadsheet.xlsx(Map.of("a", table))))) {
      assertThat(book.getFirstSheet().read().get(1).getCell(0).getFormula()).isNull();
    }
  }

  @Test
  void a_redacted_export_tells_nobody_who_is_who() throws IOException {
    Path out = export(Runs.cleanDemo(folder), "--from", "2027-04-05", "--weeks", "1", "--redact");

    assertThat(out.resolve("u10/calendars/p3.ics")).exists();
    assertThat(out.resolve("u10/calendars/p03.ics")).doesNotExist();
    assertThat(out.resolve("overview.csv")).content().contains("P3").doesNotContain("Mateo");
  }
}
