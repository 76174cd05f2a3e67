package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @TempDir private Path temp;

  private record Checked(int status, String out, String err) {}

  private static Checked check(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    List<String> line = new java.util.ArrayList<>(List.of("check"));
    List.of(args).forEach(a -> line.add(a.toString()));
    int status =
        Belthigh.commandLine(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err))
            .execute(line.toArray(String[]::new));
    return new Checked(status, out.toString(), err.toString());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(temp.resolve(name), text);
  }

  @Test
  void faults_are_told_file_by_file_under_their_count() {
    Checked checked = check("demo-players");

    assertThat(checked.status()).isEqualTo(3);
    assertThat(checked.out()).isEqualTo("demo-players: 6 faults\n");
    assertThat(checked.err())
        .contains("demo-players/logs/u10-practice-0330.csv: 6 faults\n")
        .contains("demo-players/wellness.csv: 2 remarks\n");
  }

  @Test
  void faults_are_listed_for_a_spreadsheet_without_formulas() throws IOException {
    Path club = Files.createDirectories(temp.resolve("club"));
    Files.copy(Path.of("demo-players/club.yaml"), club.resolve("club.yaml"));
    Files.write(
        club.resolve("roster.csv"),
        List.of(
            "id,first_name,born,bats,group,=cmd|' /C calc'!A0",
            "p01,Ana,2017-05-02,R,u10,",
            "p02,Ben,2017-05-02,Q,u10,"));
    Path list = temp.resolve("lists/faults.csv");

    check(club, "--faults", list);

    List<String> lines = Files.readAllLines(list);
    assertThat(lines.get(0)).isEqualTo("file,line,column,weight,about,found,allowed,suggestion");
    assertThat(lines).hasSize(3);
    assertThat(lines.get(1)).contains(",1,31,warning,'=cmd|' /c calc'!a0,");
    assertThat(lines.get(2))
        .contains(
            "roster.csv,3,20,fault,bats,'Q' is not known,\"bats must be L, R or S\",Maybe the cell");
  }

  @Test
  void a_cell_that_begins_like_a_formula_is_made_harmless() throws IOException {
    Path list = temp.resolve("faults.csv");
    Path plan = file("=1+1.yaml", "a: 1");

    check(plan, "--faults", list);

    assertThat(Files.readString(list)).doesNotContain("\n=").contains("neither a curriculum");
  }

  @Test
  void one_file_of_a_club_can_be_checked_by_itself() {
    Checked checked = check("demo-players/wellness.csv");

    assertThat(checked.status()).isZero();
    assertThat(checked.err()).contains("wellness.csv: 2 remarks").doesNotContain("practice-0330");
    assertThat(check("demo-players/logs/u10-practice-0330.csv").out()).contains("6 faults");
  }

  @Test
  void a_curriculum_that_lies_in_a_club_folder_is_checked_as_one() throws IOException {
    Path club = Files.createDirectories(temp.resolve("club"));
    Files.copy(Path.of("demo-players/club.yaml"), club.resolve("club.yaml"));
    Path mine = Files.writeString(club.resolve("mine.yaml"), "skills: []\n");

    assertThat(check(mine).err()).contains("no whole ladder can be read");
  }

  @Test
  void a_file_of_another_kind_is_told() throws IOException {
    Checked checked = check(file("x.yaml", "id: pitch\nvalues: [1]\n"));

    assertThat(checked.status()).isEqualTo(3);
    assertThat(checked.err())
        .contains(
            "the file is neither a curriculum nor a rule book; a curriculum must have the key"
                + " skills, a rule book the key bands.");
  }

  @Test
  void noise_is_no_fault_of_ours() throws IOException {
    Path noise = temp.resolve("x.yaml");
    Files.write(noise, new byte[] {(byte) 0xC3, 0x28, 0, 1, 2, (byte) 0xFF});
    Path plan = Files.copy(noise, temp.resolve("plan.json"));

    for (Path path : List.of(noise, plan, temp)) {
      Checked checked = check(path);
      assertThat(checked.status()).isEqualTo(3);
      assertThat(checked.err())
          .contains("the file is not UTF-8 text")
          .contains("Maybe it is a file of another");
    }
  }

  @Test
  void what_a_file_holds_cannot_steer_the_terminal() throws IOException {
    Checked checked = check(file("x.yaml", "bands: []\n\"k\\e[31m\\u202Ey\": 1\n"));

    assertThat(checked.err())
        .doesNotContain("\u001B")
        .doesNotContain("\u202E")
        .contains("k\uFFFD[31m");
  }

  @Test
  void the_folder_that_lacks_a_roster_is_told_and_listed() throws IOException {
    Path club = Files.createDirectories(temp.resolve("club"));
    Files.copy(Path.of("demo-players/club.yaml"), club.resolve("club.yaml"));
    Path list = temp.resolve("faults.csv");

    Checked checked = check(club, "--faults", list);

    assertThat(checked.status()).isEqualTo(4);
    assertThat(Files.readString(list)).contains("the file is missing");
  }
}
