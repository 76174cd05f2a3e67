package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Complaints, clearances and outings after the first planned day are told, row by row. */
class LaterRowsCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
    club.with(
        "wellness.csv",
        "date,player,kind,clears,by",
        "2027-04-05,b1,illness,,",
        "2027-04-06,a1,head-injury,,");
    club.with(
        "throws.csv", "date,player,pitches,kind", "2027-04-05,b1,20,game", "2027-04-09,b1,30,game");
  }

  private String row(String file, int line, String date, String player, String what, String says) {
    return "{'file':'%s','line':%d,'date':'%s','player':%s,'what':'%s','says':'%s'}"
        .formatted(folder.resolve(file), line, date, player, what, says);
  }

  private String injury() {
    return row("wellness.csv", 3, "2027-04-06", "'a1'", "complaint", "Later.");
  }

  private String outing() {
    return row("throws.csv", 3, "2027-04-09", "'b1'", "outing", "Later.");
  }

  private List<String> said(String... rows) throws Exception {
    return Beside.said(
            Beside.given(club, "{'later_rows':[" + String.join(",", rows) + "]}"),
            g -> new LaterRowsCheck(g).check())
        .stream()
        .map(t -> t.replace(folder + "/", ""))
        .toList();
  }

  @Test
  void each_row_after_the_first_day_is_told_and_none_of_that_day() throws Exception {
    assertThat(said(injury(), outing())).isEmpty();
    assertThat(said())
        .containsExactly(
            "later_rows: nothing is said of wellness.csv line 3 of 2027-04-06 about a1, complaint; what"
                + " came later is told",
            "later_rows: nothing is said of throws.csv line 3 of 2027-04-09 about b1, outing; what"
                + " came later is told");
  }

  @ParameterizedTest
  @CsvSource({
    "throws.csv, 3, 2027-04-06, a1, complaint",
    "wellness.csv, 2, 2027-04-06, a1, complaint",
    "wellness.csv, 3, 2027-04-07, a1, complaint",
    "wellness.csv, 3, 2027-04-06, b1, complaint",
    "wellness.csv, 3, 2027-04-06, a1, clearance"
  })
  void a_row_is_told_by_file_line_date_child_and_kind(
      String file, int line, String date, String who, String what) throws Exception {
    assertThat(said(row(file, line, date, "'" + who + "'", what, "Later."), outing()))
        .containsExactly(
            "later_rows: nothing is said of wellness.csv line 3 of 2027-04-06 about a1, complaint; what"
                + " came later is told",
            "later_rows: %s line %d of %s about %s, %s; the club folder has no such row after the first"
                    .formatted(file, line, date, who, what)
                + " day");
  }

  @Test
  void something_is_said_of_it() throws Exception {
    assertThat(said(row("wellness.csv", 3, "2027-04-06", "'a1'", "complaint", " "), outing()))
        .containsExactly("later_rows: nothing is said of 2027-04-06; each row is told");
  }

  @Test
  void a_row_that_could_not_be_read_may_be_told_too() throws Exception {
    club.with(
        "wellness.csv",
        "date,player,kind,clears,by",
        "2027-04-05,b1,illness,,",
        "2027-04-06,a1,head-injury,,",
        "2027-04-07,,arm-pane,,");

    assertThat(
            said(
                injury(),
                outing(),
                row("wellness.csv", 4, "2027-04-07", "null", "complaint", "Later.")))
        .isEmpty();
  }
}
