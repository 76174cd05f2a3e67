package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.List;
import org.belthigh.files.Xlsx;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table may be a workbook or a list in YAML just as well as CSV. */
class FormsTest {
  private static final int DAY = 46_454;

  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private void book(String name, Xlsx book) {
    try {
      club.with(name, "");
      Files.write(club.folder().resolve(name), book.bytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Xlsx throwing(String sheet, String pitches) {
    return Xlsx.of(
        sheet,
        List.of(
            Xlsx.texts("date", "player", "pitches"),
            List.of(Xlsx.day(DAY), Xlsx.text("p01"), Xlsx.text(pitches))));
  }

  @Test
  void a_workbook_of_its_own_is_a_table() {
    book("throws.xlsx", throwing("Sheet1", "45"));

    assertThat(club.read().outings()).extracting(Outing::pitches).containsExactly(45);
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void a_workbook_that_an_office_program_saved_is_read() throws IOException {
    Files.copy(
        Path.of("src/test/resources/forms/throws-of-an-office.xlsx"),
        club.folder().resolve("throws.xlsx"));

    assertThat(club.read().outings())
        .extracting(o -> o.date() + " " + o.player() + " " + o.pitches())
        .containsExactly("2027-03-08 p01 45", "2027-03-12 p02 30");
  }

  @Test
  void one_workbook_may_hold_every_table_beside_the_files() {
    book("workbook.xlsx", throwing("throws", "45"));
    club.with("throws.csv", "date,player,pitches", "2027-03-12,p01,30");

    assertThat(club.read().outings()).extracting(Outing::pitches).containsExactly(45, 30);
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void a_fault_in_a_workbook_names_sheet_row_and_column_and_leaves_the_arm_unsure() {
    book("workbook.xlsx", throwing("throws", "many"));

    assertThat(club.messages().get(0))
        .startsWith("fault CLUB/workbook.xlsx sheet throws cell C2, pitches: 'many'");
    assertThat(club.read().unread()).hasSize(1);
  }

  @Test
  void a_workbook_that_cannot_be_read_leaves_everyone_unsure() {
    club.with("workbook.xlsx", "x");

    assertThat(club.read().unread()).hasSize(2).allMatch(u -> u.player().isEmpty());
  }

  @Test
  void a_log_may_be_a_workbook() {
    book(
        "logs/march.xlsx",
        Xlsx.of(
            "March",
            List.of(
                Xlsx.texts("date", "player", "drill", "zone", "swing"),
                List.of(
                    Xlsx.day(DAY),
                    Xlsx.text("p01"),
                    Xlsx.text("zone-call"),
                    Xlsx.number("5"),
                    "<c r=\"AT\" t=\"b\"><v>0</v></c>"))));

    assertThat(club.read().tosses()).hasSize(1);
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void a_roster_may_be_a_list_in_yaml() throws IOException {
    Files.delete(club.folder().resolve("roster.csv"));
    club.with(
        "roster.yaml",
        "- {id: p01, first_name: Ana, born: 2017-05-02, bats: R, group: u10, home_days: [mon, sun]}",
        "- id: p02",
        "  first_name: Ben",
        "  born: 2017-05-02",
        "  bats: Q",
        "  group: u10");

    assertThat(club.read().players().get(0).homeDays())
        .containsExactlyInAnyOrder(DayOfWeek.MONDAY, DayOfWeek.SUNDAY);
    assertThat(club.messages())
        .containsExactly(
            "fault CLUB/roster.yaml line 5 column 3, bats: 'Q' is not known; bats must be L, R or"
                + " S.\nMaybe the cell belongs to another column.");
  }

  @Test
  void yaml_that_is_no_list_of_rows_is_told() {
    club.with("throws.yaml", "date: 2027-03-08");

    assertThat(club.messages().get(0)).contains("this is no list of rows");
    assertThat(club.read().unread()).hasSize(1);
  }
}
