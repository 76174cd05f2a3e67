package org.belthigh.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.Intake;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Months of one sport in twelve: at most eight (NATA, October 2019, as read second-hand). */
class SportYearTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final String SEASON = "{first: \"2027-03-01\", last: \"2027-05-24\"}";

  @TempDir private Path folder;

  private SportYear year(String file, String... rows) throws Exception {
    Files.writeString(
        folder.resolve("club.yaml"),
        "name: Two Files\nrule_book: pitch-smart-2018\nseason: "
            + SEASON
            + "\ngroups:\n  - {id: u10, name: Under 10, age: [9, 10]}\n");
    Files.writeString(
        folder.resolve("roster.csv"), "id,first_name,born,bats,group\na1,Ada,2017-01-05,R,u10\n");
    Files.writeString(folder.resolve(file), String.join("\n", rows) + "\n");
    PlanRequest request =
        new PlanRequest(
            LocalDate.of(2027, 4, 5), 2, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return new Planner(CATALOGUE)
        .plan(Intake.read(folder, CATALOGUE), request)
        .players()
        .get(0)
        .year();
  }

  private static String[] other(String what, int months) {
    String[] rows = new String[months + 1];
    rows[0] = "date,player,hours,what";
    for (int m = 1; m <= months; m++) {
      rows[m] = YearMonth.of(2027, 3).minusMonths(m) + "-15,a1,2," + what;
    }
    return rows;
  }

  @Test
  void the_months_of_the_season_count_up_to_the_last_planned_day_whatever_is_logged()
      throws Exception {
    assertThat(year("other.csv", other("soccer", 1)))
        .isEqualTo(new SportYear(YearMonth.of(2026, 5), YearMonth.of(2027, 4), 2, 8, "NATA 2019"));
  }

  @Test
  void eight_months_of_baseball_are_within_the_guidance_and_nine_are_not() throws Exception {
    assertThat(year("other.csv", other("fall baseball", 6)).remark()).isEmpty();
    assertThat(year("other.csv", other("Béisbol de otoño", 7)).remark()).isPresent();
    assertThat(year("other.csv", other("travel SOFTBALL", 7)).known()).isEqualTo(9);
  }

  @Test
  void another_sport_is_another_sport() throws Exception {
    assertThat(year("other.csv", other("soccer", 9)).known()).isEqualTo(2);
  }

  @Test
  void a_report_of_no_pitches_may_stand_for_rain_and_an_inning_caught_does_not() throws Exception {
    String head = "date,player,pitches,innings_caught";

    assertThat(year("throws.csv", head, "2027-01-10,a1,0,").known()).isEqualTo(2);
    assertThat(year("throws.csv", head, "2027-01-10,a1,0,2").known()).isEqualTo(3);
    assertThat(year("throws.csv", head, "2027-01-10,a1,9,").known()).isEqualTo(3);
  }

  @Test
  void the_calendar_counts_a_practice_and_not_a_break() throws Exception {
    String head = "date,group,kind";

    assertThat(year("calendar.csv", head, "2027-01-10,all,practice").known()).isEqualTo(3);
    assertThat(year("calendar.csv", head, "2027-01-10,all,break", "2027-04-06,u10,game").known())
        .isEqualTo(2);
  }

  @Test
  void what_lies_more_than_twelve_months_back_does_not_count() throws Exception {
    String head = "date,player,hours,what";

    assertThat(year("other.csv", head, "2026-05-01,a1,1,baseball").known()).isEqualTo(3);
    assertThat(year("other.csv", head, "2026-04-30,a1,1,baseball").known()).isEqualTo(2);
  }

  @Test
  void a_year_has_no_more_than_twelve_months() {
    YearMonth may = YearMonth.of(2027, 5);

    assertThatThrownBy(() -> new SportYear(may, may, 13, 8, "NATA 2019"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
