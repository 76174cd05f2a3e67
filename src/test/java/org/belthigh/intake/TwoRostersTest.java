package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.belthigh.files.Timeless;
import org.belthigh.start.NewClub;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A roster in two places is one question, and the sample players of a new club are pointed out. */
class TwoRostersTest {
  private static final String HEAD = "id,first_name,last_name,born,bats,number,group,pitches";

  @TempDir private Path temp;
  private TestClub club;

  @BeforeEach
  void newClub() throws IOException {
    club = TestClub.in(temp);
    byte[] roster =
        new NewClub(TestCatalogue.small())
            .files("Example Club", "letter", LocalDate.of(2027, 3, 1))
            .get("roster.csv");
    Files.write(club.folder().resolve("roster.csv"), roster);
  }

  private static List<String> children(int from, int to, String first) {
    List<String> rows = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      rows.add("p%02d,%s%d,Real,2017-05-%02d,R,%d,u10,yes".formatted(i, first, i, i, 20 + i));
    }
    return rows;
  }

  private void workbook(List<String> rows) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("roster");
      List<String> lines = new ArrayList<>(List.of(HEAD));
      lines.addAll(rows);
      for (int row = 0; row < lines.size(); row++) {
        String[] cells = lines.get(row).split(",", -1);
        for (int cell = 0; cell < cells.length; cell++) {
          sheet.value(row, cell, cells[cell]);
        }
      }
    }
    Files.write(club.folder().resolve("workbook.xlsx"), Timeless.workbook(bytes.toByteArray()));
  }

  private List<String> names() {
    return club.read().players().stream().map(Player::firstName).toList();
  }

  @Test
  void a_new_club_is_its_samples_and_nothing_is_said() {
    assertThat(names()).containsExactly("Sam", "Alex");
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void samples_beside_the_roster_of_the_workbook_are_left_out_and_told_once() throws IOException {
    workbook(children(1, 13, "Kid"));
    club.with("throws.csv", "date,player,pitches", "2027-03-08,p01,20");

    assertThat(names()).hasSize(13).allMatch(name -> name.startsWith("Kid"));
    assertThat(club.read().outings()).extracting(Outing::player).containsExactly("p01");
    assertThat(club.read().unread()).isEmpty();
    assertThat(club.messages())
        .containsExactly(
            "warning CLUB/roster.csv line 2: the sample players of a new club still stand here"
                + " beside your own, and are left out; a roster should hold your own players"
                + " alone.\nDelete 2 rows from here on: the sample players.");
  }

  @Test
  void samples_left_above_the_own_players_are_told_with_their_line() throws IOException {
    Path file = club.folder().resolve("roster.csv");
    String head = Files.readString(file).lines().findFirst().orElseThrow();
    String row =
        "p01,Ben,Real,2017-05-01,R,R,9,u10,no" + ",".repeat(head.split(",", -1).length - 9);
    Files.writeString(file, Files.readString(file) + row + "\n");

    assertThat(names()).containsExactly("Ben");
    assertThat(club.messages())
        .hasSize(1)
        .first()
        .asString()
        .startsWith("warning")
        .contains("line 2");
  }

  @Test
  void a_real_child_is_no_sample() throws IOException {
    club.with(
        "roster.csv",
        HEAD,
        "p01,Sam,Sample,2017-05-01,R,9,u10,no",
        "p02,Alex,Hill,2017-05-01,L,8,u10,no");

    assertThat(names()).containsExactly("Sam", "Alex");
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void two_whole_rosters_are_one_question() throws IOException {
    List<String> rows = new ArrayList<>(List.of(HEAD));
    rows.addAll(children(1, 13, "Kid"));
    club.with("roster.csv", rows);
    workbook(children(1, 13, "Kid"));

    assertThat(names()).hasSize(13);
    assertThat(club.read().unread()).isEmpty();
    assertThat(club.messages())
        .hasSize(1)
        .first()
        .asString()
        .startsWith("fault CLUB/workbook.xlsx sheet roster")
        .contains(
            "there are two rosters: 13 rows of this one have ids that stand in CLUB/roster.csv")
        .doesNotContain("ask before");
  }

  @Test
  void an_id_for_two_children_in_two_rosters_holds_both_until_it_is_answered() throws IOException {
    List<String> rows = new ArrayList<>(List.of(HEAD));
    rows.addAll(children(1, 3, "Kid"));
    club.with("roster.csv", rows);
    workbook(children(2, 13, "Other"));

    assertThat(names()).hasSize(13);
    assertThat(club.messages())
        .hasSize(1)
        .first()
        .asString()
        .contains("ask before p02 or p03 play");
    assertThat(club.read().unread())
        .extracting(u -> u.player().orElse("anyone"))
        .contains("p02", "p03")
        .doesNotContain("p01", "p04", "anyone");
  }
}
