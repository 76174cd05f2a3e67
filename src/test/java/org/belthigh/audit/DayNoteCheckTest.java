package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.WORDS;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A day is called what the calendar has on it. */
class DayNoteCheckTest {
  private static final String HELD =
      ",'holds':[{'kind':'everything','from':'2027-04-09','until':'2027-04-10'}]";
  private static final String SORE =
      ",'holds':[{'kind':'throwing','from':'2027-04-09','until':null}]";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club =
        new SmallClub(folder)
            .calendar(
                "2027-04-06,u10,practice,90,,",
                "2027-04-07,u10,game,120,,",
                "2027-04-08,u10,break,,,",
                "2027-04-10,u10,tournament,300,,",
                "2027-04-11,u10,evaluation,60,,",
                "2027-04-11,u10,break,,,");
  }

  private List<String> said(String date, String place, String items, String note, String holds)
      throws Exception {
    String day =
        "'days':[{'date':'%s','place':'%s','items':[%s],'note':'%s'}]"
            .formatted(date, place, items, note);
    return Beside.ofAda(club, day + holds, (g, c) -> new DayNoteCheck(g, WORDS).check(c));
  }

  @ParameterizedTest
  @CsvSource({
    "2027-04-06, Practice: no hitting work. The week is full of sport for this age, true",
    "2027-04-06, 'Práctica: ayuda, no batea', true",
    "2027-04-06, Practice, false",
    "2027-04-06, Rest day, false",
    "2027-04-07, Game day, true",
    "2027-04-07, Día de juego, true",
    "2027-04-07, Tournament, false",
    "2027-04-07, 'Practice: helps, does not swing', false",
    "2027-04-08, Day off, true",
    "2027-04-08, Evaluation day, false",
    "2027-04-09, Rest day, true",
    "2027-04-09, Game day, false",
    "2027-04-10, Tournament, true",
    "2027-04-10, Game day, false",
    "2027-04-11, Evaluation day, true",
    "2027-04-11, Day off, true",
    "2027-04-09, Come as you are, false",
    "2027-04-09, '', false"
  })
  void a_day_without_work_is_what_the_calendar_has(String date, String note, boolean may)
      throws Exception {
    assertThat(said(date, "field", "", note, "").isEmpty()).isEqualTo(may);
  }

  @ParameterizedTest
  @CsvSource({
    "field, Practice, true",
    "cage, 'Practice: fewer swings today, the arm is resting (common practice)', true",
    "home, Home session, true",
    "home, 'Home session: fewer tosses, and only what was allowed', true",
    "home, Practice, false",
    "field, Home session, false",
    "field, Game day, false",
    "field, 'Practice: helps, does not swing', false"
  })
  void a_day_of_work_is_a_practice_or_a_home_session(String place, String note, boolean may)
      throws Exception {
    assertThat(said("2027-04-06", place, "{'drill':'zone-call'}", note, "").isEmpty())
        .isEqualTo(may);
  }

  @ParameterizedTest
  @CsvSource({"2027-04-09, true", "2027-04-10, true", "2027-04-08, false", "2027-04-11, false"})
  void not_today_is_said_of_the_days_of_a_stop_alone(String date, boolean may) throws Exception {
    assertThat(said(date, "rest", "", "Not today", HELD).isEmpty()).isEqualTo(may);
    assertThat(said(date, "rest", "", "Not today", SORE)).as("throwing alone").isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({"2027-04-07, Rest day, it is 'Game day'"})
  void it_is_told_with_what_the_day_is(String date, String note, String told) throws Exception {
    assertThat(said(date, "rest", "", note, ""))
        .containsExactly("a1 2027-04-07: its note is 'Rest day'; " + told);
  }
}
