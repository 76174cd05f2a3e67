package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.april;
import static org.belthigh.audit.SmallClub.cards;
import static org.belthigh.audit.SmallClub.day;
import static org.belthigh.audit.SmallClub.swings;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * In the first week after a head, arm or back clearance at most a lighter week's share is planned:
 * the club folder's page. The share itself is ours, common practice, {@code lighter-share}.
 */
class ReturnCheckTest {
  /** At 10: two thirds of 70 swings a day, of 200 a week and of 18 tosses at home. */
  private static final int A_DAY = 46;

  private static final int A_WEEK = 134;
  private static final int AT_HOME = 12;

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
    assertThat(LIMITS.at("lighter-share", 10)).isEqualTo(0.67);
  }

  private List<String> said(FinishedPlan.Person person) throws Exception {
    Findings findings = SmallClub.findings();
    ClubRecord record = club.record();
    new ReturnCheck(
            SmallClub.plan(person), findings, LIMITS, new Ages(FROM, Optional.of(record)), record)
        .check(person);
    return SmallClub.said(findings);
  }

  private List<String> ada(FinishedPlan.Dated... days) throws Exception {
    return said(SmallClub.ada(days));
  }

  private void cleared(LocalDate day, String what) throws Exception {
    club.with(
        "wellness.csv", "date,player,kind,clears,by", day + ",a1,cleared," + what + ",physician");
  }

  private static FinishedPlan.Dated tosses(int dayOfApril, int tosses) {
    return day(
        dayOfApril,
        "home",
        8,
        new FinishedPlan.Work("yes-no", "plastic", "front-toss", 15, tosses, 0, 8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"head-injury", "arm-pain", "back-pain"})
  void a_day_has_a_lighter_share_after_each_of_the_grave_three(String what) throws Exception {
    cleared(april(4), what);

    assertThat(ada(swings(6, A_DAY))).isEmpty();
    assertThat(ada(swings(6, A_DAY + 1)))
        .containsExactly(
            "a1 2027-04-06: "
                + (A_DAY + 1)
                + " swings within the days after the clearance of "
                + what
                + "; a lighter week's share: at most "
                + A_DAY
                + " ("
                + LIMITS.source("days-after-clearance")
                + ")");
  }

  @Test
  void not_after_an_illness() throws Exception {
    cleared(april(4), "illness");

    assertThat(ada(swings(6, 200))).isEmpty();
  }

  @Test
  void nor_does_the_clearance_of_another_child_count() throws Exception {
    club.with(
        "wellness.csv", "date,player,kind,clears,by", "2027-04-04,b1,cleared,arm-pain,physician");

    assertThat(ada(swings(6, 200))).isEmpty();
  }

  @Test
  void seven_days_count_from_that_of_the_clearance_on() throws Exception {
    cleared(FROM, "arm-pain");

    assertThat(ada(swings(5, A_DAY + 1))).as("the day itself").hasSize(1);
    assertThat(ada(swings(11, A_DAY + 1))).as("the seventh").hasSize(1);
    assertThat(ada(swings(12, A_DAY + 1))).as("the eighth").isEmpty();
  }

  @Test
  void the_swings_of_those_days_are_added_up() throws Exception {
    cleared(FROM, "arm-pain");

    assertThat(ada(swings(6, 45), swings(7, 45), swings(8, 44))).isEmpty();
    assertThat(ada(swings(6, 45), swings(7, 45), swings(8, 45)))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-08: 135 swings together within")
        .contains("at most " + A_WEEK);
    assertThat(ada(swings(6, 45), swings(7, 45), swings(8, 45), cards(9)))
        .as("a day without swings is not told of it again")
        .hasSize(1);
  }

  @Test
  void tosses_at_home_have_their_share() throws Exception {
    cleared(FROM, "back-pain");

    assertThat(ada(tosses(6, AT_HOME))).isEmpty();
    assertThat(ada(tosses(6, AT_HOME + 1)))
        .singleElement()
        .asString()
        .startsWith("a1 2027-04-06: 13 tosses at home within")
        .contains("at most " + AT_HOME);
  }

  @Test
  void home_days_are_those_of_each_planned_week() throws Exception {
    cleared(FROM, "arm-pain");

    assertThat(ada(tosses(5, 1), tosses(11, 1)))
        .containsExactly(
            "a1 week of 2027-04-05: 2 home days within the days after the clearance of arm-pain; a"
                + " lighter week's share: at most 1 ("
                + LIMITS.source("days-after-clearance")
                + ")");
    assertThat(ada(tosses(5, 1), day(7, "home", 0))).as("a day without work").isEmpty();
    assertThat(ada(tosses(5, 1), swings(7, 9))).as("a practice").isEmpty();
  }

  @Test
  void the_age_of_the_day_picks_the_numbers() throws Exception {
    club.with(
        "wellness.csv", "date,player,kind,clears,by", "2027-04-05,b1,cleared,arm-pain,physician");

    assertThat(said(SmallClub.bo(swings(6, 73)))).as("two thirds of 110 at 14").isEmpty();
    assertThat(said(SmallClub.bo(swings(6, 74)))).hasSize(1);
  }
}
