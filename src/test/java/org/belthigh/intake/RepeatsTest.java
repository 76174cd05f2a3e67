package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same practice in two files counts once. */
class RepeatsTest {
  private static final String[] NUMBERED = {
    TestClub.TOSSES,
    "2027-03-08,p01,zone-call,1,1,,5,5,no,",
    "2027-03-08,p01,zone-call,1,2,,4,ball,yes,hard"
  };
  private static final String[] UNNUMBERED = {
    "date,player,drill,zone,swing",
    "2027-03-08,p02,zone-call,1,no",
    "2027-03-08,p02,zone-call,2,no",
    "2027-03-08,p02,zone-call,3,no",
    "2027-03-08,p02,zone-call,4,no"
  };
  private static final String TALLIES = "date,player,drill,measure,made,of";

  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  @Test
  void a_renamed_copy_counts_once_and_is_told_once() {
    club.with("logs/a.csv", NUMBERED).with("logs/b.csv", NUMBERED);

    assertThat(club.read().tosses()).hasSize(2);
    assertThat(club.messages())
        .containsExactly(
            "warning CLUB/logs/b.csv line 2: 2 rows from here on stand in CLUB/logs/a.csv too and are"
                + " counted once; a practice needs to be logged once.\n"
                + "Maybe one of the two files is a copy; then delete it.");
  }

  @Test
  void a_copy_without_numbers_counts_once_and_another_visit_is_added() {
    club.with("logs/a.csv", UNNUMBERED).with("logs/b.csv", UNNUMBERED);
    assertThat(club.read().tosses()).hasSize(4);
    assertThat(club.messages()).hasSize(1).first().asString().contains("4 rows from here on stand");

    club.with(
        "logs/b.csv", UNNUMBERED[0], UNNUMBERED[2], UNNUMBERED[1], UNNUMBERED[3], UNNUMBERED[4]);
    assertThat(club.read().tosses()).hasSize(8);
    assertThat(club.messages()).isEmpty();
  }

  @Test
  void three_tosses_that_went_alike_are_no_copy() {
    String[] few = java.util.Arrays.copyOf(UNNUMBERED, 4);
    club.with("logs/a.csv", few).with("logs/b.csv", few);

    assertThat(club.read().tosses()).hasSize(6);
  }

  @Test
  void the_same_practice_in_short_form_and_in_a_sheet_counts_once() {
    club.with("logs/a.csv", NUMBERED);
    club.with("logs/b.txt", "2027-03-08", "zone-call", "p01 55 4bh");

    assertThat(club.read().tosses()).hasSize(2);
    assertThat(club.messages()).hasSize(1).allMatch(m -> m.startsWith("warning"));
  }

  @Test
  void a_tally_in_two_files_counts_once_and_two_in_one_file_are_two() {
    String row = "2027-03-08,p01,countdown,countdown,10,12";
    club.with("logs/a.csv", TALLIES, row, row);
    club.with("logs/b.csv", TALLIES, row, row, row);

    assertThat(club.read().tallies()).hasSize(3);
    assertThat(club.messages())
        .hasSize(1)
        .allMatch(m -> m.contains("2 rows from here on stand in"));
  }

  @Test
  void tallies_that_contradict_each_other_are_shown_side_by_side() {
    club.with("logs/a.csv", TALLIES, "2027-03-08,p01,zone-call,zone-recognition,5,8");
    club.with("logs/b.csv", TALLIES, "2027-03-08,p01,zone-call,zone-recognition,6,8");

    assertThat(club.read().tallies()).hasSize(2);
    assertThat(club.messages())
        .containsExactly(
            "warning CLUB/logs/b.csv line 2, made: 6 of 8 here and 5 of 8 in CLUB/logs/a.csv line 2,"
                + " and both are counted; two files may each hold a part of a practice.\n"
                + "Maybe one corrects the other; then delete the wrong row.");
  }

  @Test
  void a_player_who_changed_groups_keeps_the_tosses() {
    club.with(
        "club.yaml",
        TestClub.CLUB.stream()
            .map(l -> l.contains("id: u10") ? l + "\n  - {id: u12, age: [11, 12]}" : l)
            .toList());
    club.with("logs/a.txt", "2027-03-08 u12", "zone-call", "ana 55");

    assertThat(club.read().tosses()).hasSize(1);
    assertThat(List.of(club.read().tosses().get(0).player())).containsExactly("p01");
  }
}
