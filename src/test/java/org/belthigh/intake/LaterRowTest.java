package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Origin;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is dated after the day that was asked for is told, and not what the matter is. */
class LaterRowTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 5);
  private ClubRecord record;

  @BeforeEach
  void open(@TempDir Path temp) {
    record =
        TestClub.in(temp)
            .with(
                "roster.csv",
                "id,first_name,born,bats,group,pitches",
                "p01,Ana,2017-05-02,R,u10,yes",
                "p02,Bo,2017-09-12,L,u10,yes")
            .with(
                "throws.csv",
                "date,player,pitches",
                "2027-04-05,p01,20",
                "2027-04-08,p01,many",
                "2027-04-06,p01,20")
            .with(
                "wellness.csv",
                "date,player,kind,clears,by",
                "2027-04-06,p02,illness,,",
                "2027-04-07,p02,symptom-free,,",
                "2027-04-09,p02,what,,",
                "2027-04-05,p02,illness,,")
            .read();
  }

  @Test
  void rows_after_the_day_stand_by_date_and_place_with_what_they_are() {
    assertThat(LaterRow.after(record, DAY))
        .extracting(
            r ->
                r.date().getDayOfMonth()
                    + " "
                    + r.player().orElse("")
                    + " "
                    + r.what().id()
                    + " "
                    + r.origin().line())
        .containsExactly(
            "6 p01 outing 4",
            "6 p02 complaint 2",
            "7 p02 clearance 3",
            "8 p01 outing 3",
            "9 p02 complaint 4");
    assertThat(LaterRow.after(record, LocalDate.of(2027, 4, 9))).isEmpty();
  }

  @Test
  void remarks_say_what_a_stop_does_and_not_what_the_matter_is() {
    List<String> said = LaterRow.remarks(record, DAY).stream().map(Problem::text).toList();

    assertThat(said).hasSize(5).noneMatch(s -> s.contains("illness"));
    assertThat(LaterRow.remarks(record, DAY)).noneMatch(Problem::isFault);
    assertThat(said.get(0))
        .contains("an outing about p01 is dated 2027-04-06, after 2027-04-05")
        .contains("but a stop in a plan holds from its day on")
        .contains("Maybe ask for 2027-04-06 or a later day.");
    assertThat(said.get(1)).contains("a health report about p02");
    assertThat(said.get(2))
        .contains("a clearance about p02", "is not counted.")
        .doesNotContain("but a stop");
  }

  @Test
  void a_lost_report_that_may_be_anybodys_names_nobody() {
    record =
        record.withReports(
            List.of(),
            List.of(),
            List.of(
                new Unread(
                    Unread.What.WELLNESS,
                    Optional.empty(),
                    Optional.of(LocalDate.of(2027, 4, 6)),
                    Origin.of("wellness.csv", 2)),
                new Unread(
                    Unread.What.OUTING,
                    Optional.empty(),
                    Optional.empty(),
                    Origin.of("throws.csv", 2))));

    assertThat(LaterRow.remarks(record, DAY))
        .singleElement()
        .extracting(Problem::text)
        .asString()
        .contains("a health report is dated 2027-04-06");
  }
}
