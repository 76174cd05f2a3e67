package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.TestClub;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A group of thousands is told beforehand; nothing here depends on how fast this machine is. */
class CrowdsTest {
  @TempDir private Path temp;

  private ClubRecord club(int players) {
    List<String> rows = new ArrayList<>(List.of("id,first_name,born,bats,group"));
    for (int i = 0; i < players; i++) {
      rows.add("p" + i + ",Kid" + i + ",2017-05-02,R,u10");
    }
    return TestClub.in(temp).with("roster.csv", rows).read();
  }

  @ParameterizedTest
  @CsvSource({"150,1 minute or", "1201,2 minutes or", "5000,9 minutes or"})
  void a_large_group_says_about_how_long(int players, String minutes) {
    assertThat(Crowds.notices(club(players), Set.of(), Set.of()))
        .singleElement()
        .asString()
        .startsWith("u10 has " + players + " players; planning it takes about " + minutes)
        .contains("Maybe make a group of each team");
  }

  @Test
  void a_usual_group_is_planned_without_a_word() {
    assertThat(Crowds.notices(club(149), Set.of(), Set.of())).isEmpty();
  }

  @Test
  void a_group_that_is_not_planned_is_not_spoken_of() {
    ClubRecord record = club(200);

    assertThat(Crowds.notices(record, Set.of("u14"), Set.of())).isEmpty();
    assertThat(Crowds.notices(record, Set.of(), Set.of("p7"))).hasSize(1);
    assertThat(Crowds.notices(record, Set.of(), Set.of("nobody"))).isEmpty();
  }

  @Test
  void it_is_said_before_anything_is_planned() {
    club(160);
    Ran ran =
        Runs.run(
            "plan",
            temp.resolve("club").toString(),
            "--out",
            temp + "/out",
            "--from",
            "2027-03-01",
            "--weeks",
            "1",
            "--prints",
            "overview",
            "--no-history");

    assertThat(ran.err()).startsWith("u10 has 160 players; planning it takes about 1 minute");
    assertThat(ran.status()).isZero();
  }
}
