package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.ada;
import static org.belthigh.audit.SmallClub.cards;
import static org.belthigh.audit.SmallClub.day;
import static org.belthigh.audit.SmallClub.swings;
import static org.belthigh.audit.SmallClub.tee;

import java.nio.file.Path;
import java.util.List;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work stands only where the calendar allows it (ours, common practice). */
class EventCheckTest {
  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void club() throws Exception {
    club = new SmallClub(folder);
  }

  private List<String> said(FinishedPlan.Dated... days) throws Exception {
    FinishedPlan.Person person = ada(days);
    Findings findings = SmallClub.findings();
    new EventCheck(club.record(), SmallClub.plan(person), findings).check(person);
    return SmallClub.said(findings);
  }

  @ParameterizedTest
  @CsvSource({"game", "tournament", "break", "off"})
  void no_work_stands_on_a_day_without_a_practice_of_its_own(String kind) throws Exception {
    club.calendar("2027-04-06,u10," + kind + ",,,");

    assertThat(said(swings(6, 9)))
        .containsExactly(
            "a1 2027-04-06: hitting work on the day of a "
                + kind
                + "; such a day has none (ours, common practice)",
            "a1 2027-04-06: a practice that the calendar does not have; practices are as there");
    assertThat(said(new FinishedPlan.Dated(SmallClub.april(6), "rest", 0, 0, 0, List.of())))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"practice", "evaluation"})
  void a_practice_or_an_evaluation_has_work_up_to_its_hitting_minutes(String kind)
      throws Exception {
    club.calendar("2027-04-06,u10," + kind + ",90,40,");

    assertThat(said(day(6, "field", 40, tee("baseball", 30, 40)))).isEmpty();
    assertThat(said(day(6, "field", 41, tee("baseball", 30, 41))))
        .containsExactly(
            "a1 2027-04-06: 41 minutes of hitting work; the practice has 40 hitting minutes");
  }

  @Test
  void a_practice_without_an_adult_has_no_hitting() throws Exception {
    club.calendar("2027-04-06,u10,practice,90,40,0");
    assertThat(said(swings(6, 9)))
        .containsExactly(
            "a1 2027-04-06: hitting at a practice without an adult; each bat has an adult beside it"
                + " (ours, common practice)");
    assertThat(said(swings(7, 9)))
        .containsExactly(
            "a1 2027-04-07: a practice that the calendar does not have; practices are as there");

    club.calendar("2027-04-08,u10,practice,90,40,1");
    assertThat(said(swings(8, 9))).as("one adult").isEmpty();
  }

  @Test
  void home_work_stands_on_days_without_an_event() throws Exception {
    club.calendar("2027-04-06,u10,practice,90,40,", "2027-04-07,u14,practice,90,40,");

    assertThat(said(cards(7))).as("another group's practice").isEmpty();
    assertThat(said(cards(6)))
        .containsExactly(
            "a1 2027-04-06: home work on the day of an event; home work stands on days without one"
                + " (ours, common practice)");
  }

  @Test
  void the_day_before_a_tournament_has_no_home_work_and_the_day_before_a_game_may()
      throws Exception {
    club.calendar("2027-04-08,u10,tournament,,,", "2027-04-11,u10,game,,,");

    assertThat(said(cards(7)))
        .containsExactly(
            "a1 2027-04-07: home work on the day before a tournament; that day has none (ours,"
                + " common practice)");
    assertThat(said(cards(6), cards(9), cards(10))).isEmpty();
  }

  @Test
  void a_practice_that_is_assumed_has_forty_five_hitting_minutes() throws Exception {
    club.with("calendar.csv", "date,group,kind", "2027-05-20,u14,practice");
    FinishedPlan.Person person =
        ada(day(6, "field", 45, tee("baseball", 9, 45)), day(8, "field", 46, tee("none", 9, 46)));
    FinishedPlan.Person atHome = ada(cards(6), cards(7));
    Findings findings = SmallClub.findings();
    ClubRecord record = Intake.read(folder, SmallClub.CATALOGUE).upTo(SmallClub.FROM);

    new EventCheck(record, SmallClub.plan(person), findings).check(person);
    new EventCheck(record, SmallClub.plan(atHome), findings).check(atHome);

    assertThat(SmallClub.said(findings))
        .containsExactly(
            "a1 2027-04-08: 46 minutes of hitting work; the practice has 45 hitting minutes",
            "a1 2027-04-06: home work on the day of an event; home work stands on days without one"
                + " (ours, common practice)");
  }
}
