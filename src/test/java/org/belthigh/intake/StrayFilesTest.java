package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.belthigh.files.Timeless;
import org.belthigh.files.Xlsx;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever lies in a club folder is read, known or named; where it may be a table on which safety
 * rests, everyone is asked first.
 */
class StrayFilesTest {
  private static final long SEED = 20270405L;
  private static final String OUTINGS = "date,player,pitches\n";
  private static final String HEALTH = "date,player,kind\n";
  private static final String ROSTER = "id,first_name,born,bats,group,pitches\n";
  private static final String READ_OUTING = "2027-03-08,p01,30\n";
  private static final String READ_REPORT = "2027-03-08,p02,illness\n";

  @TempDir private Path temp;

  /** The day of the rows that nothing else says. */
  private static final LocalDate NEW = LocalDate.of(2027, 3, 9);

  /** How many lie about at once. */
  private static final int MOST_STRAYS = 4;

  private TestClub club;

  @BeforeEach
  void club() throws IOException {
    club = TestClub.in(temp);
    put("throws.csv", OUTINGS + READ_OUTING);
    put("wellness.csv", HEALTH + READ_REPORT);
  }

  private void put(String name, String text) throws IOException {
    put(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void put(String name, byte[] bytes) throws IOException {
    Path file = club.folder().resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  private static byte[] book(String... sheetsAndRows) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      for (int i = 0; i < sheetsAndRows.length; i += 2) {
        Worksheet sheet = book.newWorksheet(sheetsAndRows[i]);
        String[] lines = sheetsAndRows[i + 1].split("\n", 0);
        for (int row = 0; row < lines.length; row++) {
          String[] cells = lines[row].split(",", -1);
          for (int cell = 0; cell < cells.length; cell++) {
            sheet.value(row, cell, cells[cell]);
          }
        }
      }
    }
    return Timeless.workbook(bytes.toByteArray());
  }

  /** What is lost of everyone: OUTING, WELLNESS, both or neither. */
  private String lost() {
    return club.read().unread().stream()
        .filter(unread -> unread.player().isEmpty())
        .map(unread -> unread.what().name())
        .collect(Collectors.toCollection(TreeSet::new))
        .toString();
  }

  private List<String> said(String about) {
    return club.messages().stream().filter(m -> m.contains("CLUB/" + about)).toList();
  }

  private static String text(String kind) {
    return switch (kind) {
      case "new-outing" -> OUTINGS + "2027-03-09,p01,70\n";
      case "old-outing" -> OUTINGS + READ_OUTING;
      case "old-outing-twice" -> OUTINGS + READ_OUTING + READ_OUTING;
      case "new-report" -> HEALTH + "2027-03-09,p01,head-injury\n";
      case "old-report" -> HEALTH + READ_REPORT;
      case "no-header" -> "2027-03-09,p01,head-injury\n";
      case "new-child" -> ROSTER + "p09,Dan,2017-05-02,R,u10,yes\n";
      case "old-child" -> ROSTER + "p01,Ana,2017-05-02,R,u10,yes\n";
      case "header" -> HEALTH;
      case "spanish" -> "fecha,jugador,lanzamientos\n2027-03-09,p01,70\n";
      case "other-table" -> "month,cost\nMay,40\n";
      case "empty" -> "";
      default -> "Ana hit her head on Monday.\n";
    };
  }

  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource({
    "Throws.CSV, new-outing",
    "THROWS.csv, new-outing",
    "throws.tsv, new-outing",
    "throws.csv.txt, new-outing",
    "throws.txt, new-outing",
    "Throws.Csv.TXT, new-outing",
    "throws.TSV.txt, new-outing",
  })
  void is_read(String name, String content) throws IOException {
    put(name, name.toLowerCase(Locale.ROOT).contains("tsv") ? tabs(content) : text(content));

    assertThat(club.read().outings()).extracting(Outing::pitches).containsExactly(30, 70);
    assertThat(lost()).isEqualTo("[]");
  }

  private static String tabs(String content) {
    return text(content).replace(',', '\t');
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"throws.xlsx", "Throws.XLSX", "throws.xlsm", "Workbook.xlsx", "WORKBOOK.XLSM"})
  void is_read_as_a_workbook(String name) throws IOException {
    put(name, book("throws", text("new-outing")));

    assertThat(club.read().outings()).extracting(Outing::pitches).containsExactly(30, 70);
    assertThat(club.messages()).isEmpty();
  }

  @ParameterizedTest(name = "{0} with {1}: {2}")
  @CsvSource({
    "throws (1).csv, new-outing, [OUTING]",
    "throws (1).csv, old-outing-twice, [OUTING]",
    "Copy of throws.csv, new-outing, [OUTING]",
    "throws - Copy.csv, new-outing, [OUTING]",
    "throws_old.TSV, new-outing, [OUTING]",
    "trows.csv, new-outing, [OUTING]",
    "throws.csv~, new-outing, [OUTING]",
    "throws.csv.bak, new-outing, [OUTING]",
    "throws, new-outing, [OUTING]",
    "throws.csv.csv, new-outing, [OUTING]",
    "throws (1).txt, new-outing, [OUTING]",
    "THROWS.XLS, prose, [OUTING]",
    "throws.Ods, prose, [OUTING]",
    "Throws.Numbers, prose, [OUTING]",
    "throws.xlsb, prose, [OUTING]",
    "throws.json, prose, [OUTING]",
    "throws.docx, prose, [OUTING]",
    "throws copy.xlsx, prose, [OUTING]",
    "pitch counts.xls, prose, [OUTING]",
    "pitch counts.csv, new-outing, [OUTING]",
    "april.csv, spanish, [OUTING]",
    "april.md, new-outing, [OUTING]",
    "logs/throws.csv, new-outing, [OUTING]",
    "logs/throws.txt, new-outing, [OUTING]",
    "logs/throws.ods, prose, [OUTING]",
    "logs/april.yaml, new-outing, [OUTING]",
    "logs/calendar.yml, new-report, [WELLNESS]",
    "coach.yaml, new-report, [WELLNESS]",
    "roster.yml, new-report, [WELLNESS]",
    "Wellness.ODS, prose, [WELLNESS]",
    "wellness_old.csv, new-report, [WELLNESS]",
    "welness.csv, new-report, [WELLNESS]",
    "health.csv, new-report, [WELLNESS]",
    "health.csv, prose, [WELLNESS]",
    "health.csv, empty, [WELLNESS]",
    "list.csv, new-report, [WELLNESS]",
    "list.csv, no-header, [WELLNESS]",
    "wellness.txt, prose, [WELLNESS]",
    "coach.csv, new-report, [WELLNESS]",
    "other.yaml.csv, new-report, [WELLNESS]",
    "calendar.txt, new-outing, [OUTING]",
    "Salud.xls, prose, [WELLNESS]",
    "logs/wellness.csv, new-report, [WELLNESS]",
    "workbook.ods, prose, '[OUTING, WELLNESS]'",
    "Workbook (1).xlsx, prose, '[OUTING, WELLNESS]'",
    "workbook.csv, prose, '[OUTING, WELLNESS]'",
  })
  void is_found_and_holds_everyone(String name, String content, String lost) throws IOException {
    put(name, text(content));

    assertThat(lost()).isEqualTo(lost);
    assertThat(said(name)).isNotEmpty().anyMatch(m -> m.startsWith("fault"));
  }

  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource({
    "throws (1).csv, old-outing",
    "throws.csv.bak, old-outing",
    "logs/throws.csv, old-outing",
    "wellness (1).csv, old-report",
    "health.csv, header",
    "roster (1).csv, old-child",
    "budget.csv, other-table",
    "budget.ods, prose",
    "letter.docx, prose",
    "logs/letter.docx, prose",
  })
  void is_a_remark_alone(String name, String content) throws IOException {
    put(name, text(content));

    assertThat(said(name)).hasSize(1).allMatch(m -> m.startsWith("warning"));
    assertThat(lost()).isEqualTo("[]");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "READ-ME.txt",
        "README",
        "notes.md",
        "coach.txt",
        "throws.pdf",
        "wellness.JPG",
        ".belthigh",
        ".~lock.throws.csv#",
        "~$throws.xlsx",
        "history/2027-03-08-steps.csv",
        "plans/plan.json",
        "logs/sheet.png"
      })
  void is_known_and_not_told(String name) throws IOException {
    put(name, text("prose"));

    assertThat(club.messages()).isEmpty();
  }

  @Test
  void reports_in_the_file_of_outings_hold_both() throws IOException {
    put("throws.csv", text("new-report"));

    assertThat(lost()).isEqualTo("[OUTING, WELLNESS]");
  }

  @Test
  void another_roster_is_a_fault() throws IOException {
    put("roster-2026.csv", text("new-child"));

    assertThat(said("roster-2026.csv")).hasSize(1).allMatch(m -> m.startsWith("fault"));
  }

  @ParameterizedTest(name = "{0} sheet {1} with {2}: {3}")
  @CsvSource({
    "throws.xlsx, April, new-outing, [OUTING]",
    "throws.xlsx, Sheet2, prose, [OUTING]",
    "throws.xlsx, Health, new-report, [WELLNESS]",
    "wellness.xlsx, April, new-report, [WELLNESS]",
    "workbook.xlsx, Throws 2, new-outing, [OUTING]",
    "workbook.xlsx, wellness (2), new-report, [WELLNESS]",
    "workbook.xlsx, April, new-report, [WELLNESS]",
    "workbook.xlsx, words, new-report, [WELLNESS]",
    "logs/march.xlsx, throws, new-outing, [OUTING]",
    "budget.xlsx, April, new-outing, [OUTING]",
    "throws.xlsx, April, old-outing, []",
    "workbook.xlsx, Throws 2, old-outing, []",
    "workbook.xlsx, Budget, other-table, []",
    "calendar.xlsx, Notes, prose, []",
  })
  void a_second_sheet_is_found(String name, String sheet, String content, String lost)
      throws IOException {
    String first = name.startsWith("wellness") ? HEALTH : name.startsWith("throws") ? OUTINGS : "";
    String head = first.isEmpty() ? "date,group,kind" : first;
    put(
        name,
        book(
            name.startsWith("workbook") ? "other" : "one",
            columns(name, head),
            sheet,
            text(content)));

    assertThat(lost()).isEqualTo(lost);
    assertThat(said(name + " sheet " + sheet.toLowerCase(Locale.ROOT))).isNotEmpty();
  }

  private static String columns(String name, String head) {
    return name.startsWith("workbook")
        ? "date,player,hours,what"
        : name.startsWith("logs") ? TestClub.TOSSES : head;
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"'date,player,kind,kind'", "'2027-03-09,p01,head-injury,x'", "'date,who,what,x'"})
  void a_sheet_without_its_header_is_lost_as_a_file_is(String header) throws IOException {
    put("workbook.xlsx", book("wellness", header + "\n2027-03-09,p01,head-injury,x\n"));

    assertThat(lost()).isEqualTo("[WELLNESS]");
  }

  @Test
  void the_lists_of_a_new_workbook_are_known() throws IOException {
    put("workbook.xlsx", book("throws", OUTINGS, "words", "bats,kind\nL,arm-pain\n"));

    assertThat(club.messages()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "throws.csv, [OUTING]",
    "Throws.xlsx, [OUTING]",
    "throws, [OUTING]",
    "wellness.d, [WELLNESS]",
    "workbook.xlsx, '[OUTING, WELLNESS]'"
  })
  void a_folder_in_place_of_a_file_holds_everyone(String name, String lost) throws IOException {
    Files.deleteIfExists(club.folder().resolve(name));
    Files.createDirectories(club.folder().resolve(name));

    assertThat(lost()).isEqualTo(lost);
    assertThat(said(name)).anyMatch(m -> m.startsWith("fault"));
  }

  @Test
  void a_file_in_place_of_the_logs_is_a_fault() throws IOException {
    put("logs", "x");

    assertThat(said("logs")).hasSize(1).allMatch(m -> m.startsWith("fault"));
  }

  @Test
  void folders_that_are_not_looked_into_are_named() throws IOException {
    put("old/notes.txt", text("prose"));
    put("logs/april/a.csv", TestClub.TOSSES);

    assertThat(said("old")).hasSize(1);
    assertThat(said("logs/april")).hasSize(1);
    assertThat(lost()).isEqualTo("[]");
  }

  @ParameterizedTest
  @CsvSource({
    "old/throws.csv, new-outing, [OUTING]",
    "old/older/april.csv, new-outing, [OUTING]",
    "logs/april/health.csv, new-report, [WELLNESS]",
    "from Maria/list.txt, new-report, [WELLNESS]",
    "old/Throws.ods, prose, [OUTING]",
    "old/throws.csv, old-outing, []",
    "old/april.csv, other-table, []"
  })
  void a_table_in_a_folder_of_its_own_holds_unless_it_is_a_copy(
      String name, String content, String lost) throws IOException {
    put(name, text(content));

    assertThat(lost()).isEqualTo(lost);
    assertThat(said(name).stream().anyMatch(m -> m.startsWith("fault")))
        .isEqualTo(!lost.equals("[]"));
  }

  @Test
  void plans_and_what_was_handed_out_hold_no_one() throws IOException {
    put("prints/plan.json", "{}");
    put("prints/throws.csv", text("new-outing"));
    put("history/throws.csv", text("new-outing"));

    assertThat(lost()).isEqualTo("[]");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'date,player,pitches,kind\n2027-03-09,p01,7', true",
    "'date,player,pitches,kind\n2027-03-09,p01,7\n', false",
    "'date,player,pitches,kind\n2027-03-09,p01,75,game', false",
    "'date,player,pitches,kind\n2027-03-09,p01,75,', false",
    "'date,player,pitches\n2027-03-09,p01,75', false",
  })
  void a_last_row_that_breaks_off_is_not_trusted(String text, boolean held) throws IOException {
    put("throws.csv", text);

    assertThat(club.read().unread().stream().anyMatch(u -> u.concerns("p01"))).isEqualTo(held);
    assertThat(club.read().unread()).allMatch(u -> u.player().isPresent());
    assertThat(club.read().outings()).hasSize(held ? 0 : 1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"date1904=\"1\"", "date1904=\"true\"", "filterPrivacy=\"1\" date1904='1'"})
  void days_counted_since_1904_are_read_rightly(String said) throws IOException {
    Xlsx book =
        Xlsx.of(
            "throws",
            List.of(
                Xlsx.texts("date", "player", "pitches"),
                List.of(Xlsx.day(46_455 - 1_462), Xlsx.text("p01"), Xlsx.number("70"))));

    String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    String links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    book.part(
        "xl/workbook.xml",
        "<workbook xmlns=\""
            + main
            + "\" xmlns:r=\""
            + links
            + "\"><workbookPr "
            + said
            + "/>"
            + "<sheets><sheet name=\"throws\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>");
    put("throws.xlsx", book.bytes());

    assertThat(club.messages()).isEmpty();
    assertThat(club.read().outings())
        .extracting(o -> o.date() + " " + o.player())
        .containsExactly("2027-03-08 p01", "2027-03-09 p01");
  }

  @Test
  void nothing_in_a_random_folder_is_passed_over() throws IOException {
    Random random = new Random(SEED);
    List<String> names =
        List.of(
            "throws",
            "Throws",
            "THROWS",
            "throw",
            "trows",
            "throws (2)",
            "Copy of throws",
            "wellness",
            "Wellness",
            "welness",
            "health",
            "Health list",
            "roster",
            "Roster 2",
            "workbook",
            "Workbook",
            "my workbook",
            "april",
            "budget",
            "other",
            "coach",
            "calendar");
    List<String> forms =
        List.of(
            ".csv",
            ".CSV",
            ".tsv",
            ".txt",
            ".csv.txt",
            ".xlsx",
            ".xlsm",
            ".XLS",
            ".xls",
            ".ods",
            ".Numbers",
            ".xlsb",
            ".yaml",
            ".yml",
            ".json",
            ".docx",
            "",
            ".bak");
    List<String> places = List.of("", "", "", "logs/", "spring/", "spring/old/");
    List<String> contents =
        List.of("new-outing", "new-report", "old-outing", "other-table", "no-header", "prose");
    for (int round = 0; round < 400; round++) {
      Map<String, String> strays = new LinkedHashMap<>();
      List<String> left = new ArrayList<>(contents);
      for (int more = random.nextInt(MOST_STRAYS); more >= 0; more--) {
        String place = one(places, random) + one(names, random) + one(forms, random);
        if (!Files.exists(club.folder().resolve(place))) {
          strays.put(place, left.remove(random.nextInt(left.size())));
          put(place, bytes(place, strays.get(place)));
        }
      }
      String run = "seed " + SEED + " round " + round + ": " + strays;
      strays.forEach(
          (place, content) ->
              assertThat(isReadKnownOrNamed(place, content))
                  .as("%s: %s with %s", run, place, content)
                  .isTrue());
      for (String place : strays.keySet()) {
        Files.delete(club.folder().resolve(place));
      }
    }
  }

  private static byte[] bytes(String place, String content) throws IOException {
    return place.toLowerCase(Locale.ROOT).matches(".*\\.xls[xm]")
        ? book("one", text(content))
        : text(content).getBytes(StandardCharsets.UTF_8);
  }

  private static String one(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }

  /** New rows must be read or held against everyone; all else read, named, or a note. */
  private boolean isReadKnownOrNamed(String name, String content) {
    ClubRecord record;
    try {
      record = Intake.read(club.folder(), TestCatalogue.small());
    } catch (Unusable e) {
      return false;
    }
    String shown = club.folder() + "/" + name;
    boolean unread = unseen(name);
    List<String> told =
        record.problems().stream()
            .map(p -> p.origin().file())
            .filter(file -> file.startsWith(shown) || shown.startsWith(file + "/"))
            .toList();
    Set<Unread.What> lost =
        record.unread().stream()
            .filter(u -> u.origin().file().startsWith(shown))
            .map(Unread::what)
            .collect(Collectors.toSet());
    return switch (content) {
      case "new-outing" ->
          record.outings().stream().anyMatch(o -> o.date().equals(NEW))
              || unread
              || !lost.isEmpty();
      case "new-report" ->
          record.wellness().stream().anyMatch(w -> w.date().equals(NEW))
              || unread
              || !lost.isEmpty();
      case "old-outing" ->
          record.outings().stream().filter(o -> !o.date().equals(NEW)).count() > 1
              || !told.isEmpty();
      default -> !told.isEmpty() || isNote(name);
    };
  }

  /** Of a form that cannot be looked into, the name alone can tell. */
  private static boolean unseen(String name) {
    return name.toLowerCase(Locale.ROOT)
        .matches(
            "(logs/|spring/|spring/old/)?(april|budget|other|coach|calendar|roster.*)\\.(xls|ods|numbers|xlsb)");
  }

  private static boolean isNote(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.endsWith(".txt") || !lower.contains(".");
  }
}
