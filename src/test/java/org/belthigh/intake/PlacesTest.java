package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.belthigh.files.Timeless;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Messages name the line of an editor and the cell of a spreadsheet; causes come first. */
class PlacesTest {
  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private List<String> bytes(String name, String text) throws IOException {
    Files.writeString(club.folder().resolve(name), text, StandardCharsets.UTF_8);
    return club.messages();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void lines_of_csv_are_those_of_an_editor(String end) throws IOException {
    String text =
        String.join(
            end,
            "\uFEFFdate,player,hours,what",
            "2027-03-08,p01,1,\"swimming",
            "",
            "and diving\"",
            "",
            "2027-03-09,\"p01\",many,");

    assertThat(bytes("other.csv", text))
        .singleElement()
        .asString()
        .startsWith("fault CLUB/other.csv line 6 column 18, hours: 'many'");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void lines_of_yaml_are_those_of_an_editor(String end) throws IOException {
    String text =
        String.join(
            end,
            "\uFEFF# what else they play",
            "- date: 2027-03-08",
            "  player: p01",
            "  hours: 1",
            "  what: |",
            "    swimming",
            "",
            "    and diving",
            "- {date: 2027-03-09,",
            "   player: p01, hours: many}");

    assertThat(bytes("other.yaml", text))
        .singleElement()
        .asString()
        .startsWith("fault CLUB/other.yaml line 10 column 17, hours: 'many'");
  }

  @Test
  void a_slip_in_yaml_is_told_on_its_line() throws IOException {
    assertThat(bytes("other.yaml", "- date: 2027-03-08\n  player: p01\n  hours 1\n  what: x\n"))
        .first()
        .asString()
        .startsWith(
            "fault CLUB/other.yaml line 3 column 3: this is not YAML (could not find expected ':')");
  }

  @Test
  void cells_of_a_workbook_are_those_of_the_spreadsheet() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("other");
      List<String> header = List.of("date", "player", "hours");
      for (int i = 0; i < header.size(); i++) {
        sheet.value(2, 26 + i, header.get(i));
      }
      sheet.value(6, 26, "2027-03-08");
      sheet.value(6, 27, "p01");
      sheet.value(6, 28, "many");
    }
    Files.write(club.folder().resolve("other.xlsx"), Timeless.workbook(out.toByteArray()));

    assertThat(club.messages())
        .singleElement()
        .asString()
        .startsWith("fault CLUB/other.xlsx sheet other cell AC7, hours: 'many'");
  }

  @ParameterizedTest
  @ValueSource(strings = {"%s\n\n", "%s,,\n,,\n", "%s\nSpring; week 2\n\n"})
  void a_title_is_one_message_with_its_cure(String title) throws IOException {
    String above = title.formatted("Our team, 2027");
    long line = above.chars().filter(c -> c == '\n').count() + 1;

    assertThat(bytes("other.csv", above + "fecha,jugador,horas\n2027-03-08,p01,1\n"))
        .containsExactly(
            "fault CLUB/other.csv line 1: a title stands above the names of the columns, so the file"
                + " is not read; the first line must name the columns, as line "
                + line
                + " does.\nTake out all that stands above line "
                + line
                + ".");
  }

  @Test
  void a_title_above_semicolons_is_seen() throws IOException {
    assertThat(bytes("other.csv", "Our team\ndate;player;hours\n2027-03-08;p01;1,5\n"))
        .singleElement()
        .asString()
        .contains("a title stands above");
  }

  @Test
  void health_reports_under_a_title_are_lost_and_hold() throws IOException {
    List<String> messages =
        bytes("wellness.csv", "Our team\ndate,player,kind\n2027-03-08,p01,arm-pain\n");

    assertThat(messages).hasSize(2);
    assertThat(messages.get(0)).contains("a title stands above");
    assertThat(messages.get(1)).contains("not every row could be read");
    assertThat(club.read().unread()).isNotEmpty();
  }

  @Test
  void health_reports_under_a_title_in_a_file_of_another_name_are_found() throws IOException {
    List<String> messages =
        bytes("clinic.csv", "Our team\ndate,player,kind\n2027-03-08,p01,arm-pain\n");

    assertThat(messages).anyMatch(m -> m.startsWith("fault CLUB/clinic.csv"));
    assertThat(club.read().unread()).isNotEmpty();
  }

  @Test
  void the_cause_stands_before_what_follows() throws IOException {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group",
        "p01,Ana,2017-05-02,R,u10",
        "p02,Ben,2017-99-12,L,u10");
    club.with("calendar.csv", "date,group,kind", "2027-03-08,u99,practice");

    List<String> messages = bytes("other.csv", "date,player,hours\n2027-03-08,p02,1\n");

    assertThat(messages)
        .extracting(m -> m.substring(0, m.indexOf(' ', 7)))
        .containsExactly(
            "fault CLUB/roster.csv", "fault CLUB/calendar.csv", "fault CLUB/other.csv");
  }

  @Test
  void a_roster_that_cannot_be_read_says_why_alone() throws IOException {
    assertThat(bytes("roster.csv", "Our team\nid,first_name,born,bats,group\n"))
        .singleElement()
        .asString()
        .contains("a title stands above");
    assertThat(bytes("roster.csv", "id,first_name,born,bats,group\np01,Ana,,R,u10\n"))
        .hasSize(2)
        .last()
        .asString()
        .contains("there is no usable player");
  }
}
