package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.LIMITS;
import static org.belthigh.audit.SmallClub.april;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.intake.ClubRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The checks beside the club folder, each alone. */
class ClubChecksTest {
  private static final String OUTINGS = "date,player,pitches,kind,innings_caught";
  private static final String WELLNESS = "date,player,kind,clears,by";

  @TempDir private Path folder;
  private SmallClub club;

  @BeforeEach
  void open() throws Exception {
    club = new SmallClub(folder);
  }

  private Given given(String json) throws Exception {
    JsonNode node = new ObjectMapper().readTree(json.replace('\'', '"'));
    ClubRecord record = club.record();
    return new Given(
        SmallClub.plan(SmallClub.ada(), SmallClub.bo()),
        node,
        record,
        record,
        CATALOGUE,
        LIMITS,
        SmallClub.findings());
  }

  private static String arms(String answer, int left, boolean mayCatch) {
    return "{'players':[{'player':'a1','arms':[{'date':'2027-04-05','answer':'"
        + answer
        + "','pitches_left':"
        + left
        + ",'may_catch':"
        + mayCatch
        + ",'known_to':'2027-04-05'}]}]}";
  }

  private List<String> catching(boolean mayCatch) throws Exception {
    Given given = given(arms("no-pitching", 0, mayCatch));
    given.children().forEach(new CatchCheck(given)::check);
    return SmallClub.said(given.findings());
  }

  @Test
  void who_pitched_on_a_day_does_not_catch_on_it_by_a_book_that_advises_against_it()
      throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,5,game,");

    assertThat(catching(true)).singleElement().asString().contains("the child may catch");
    assertThat(catching(false)).isEmpty();
  }

  @Test
  void who_pitched_the_day_before_or_threw_in_the_bullpen_may_catch() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-04,a1,5,game,", "2027-04-05,a1,5,bullpen,");

    assertThat(catching(true)).isEmpty();
  }

  private List<String> pitching() throws Exception {
    Given given = given(arms("may-pitch", 1, false));
    given.children().forEach(new ArmsCheck(given)::check);
    return SmallClub.said(given.findings()).stream()
        .filter(t -> t.contains("the child may pitch"))
        .toList();
  }

  @Test
  void who_caught_does_not_pitch_on_that_day_by_such_a_book() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,0,game,1");

    assertThat(pitching()).anyMatch(t -> t.contains("advises against catching and pitching"));
  }

  @Test
  void nor_does_anyone_after_too_many_pitches_of_the_day_before() throws Exception {
    club.with("throws.csv", OUTINGS, "2027-04-05,a1,0,game,");
    assertThat(pitching()).isEmpty();

    club.with("throws.csv", OUTINGS, "2027-04-04,a1,30,game,");
    assertThat(pitching()).anyMatch(t -> t.contains("30 pitches on 2027-04-04 need"));
  }

  private List<String> back(FinishedPlan.Dated... days) throws Exception {
    FinishedPlan.Person ada = SmallClub.ada(days);
    Findings findings = SmallClub.findings();
    ClubRecord record = club.record();
    Ages ages = new Ages(FROM, Optional.of(record));
    new ReturnCheck(SmallClub.plan(ada), findings, LIMITS, ages, record).check(ada);
    return SmallClub.said(findings);
  }

  private void cleared(LocalDate day, String by) throws Exception {
    club.with("wellness.csv", WELLNESS, day + ",a1,cleared,arm-pain," + by);
  }

  @Test
  void after_a_clearance_a_day_has_a_lighter_share_of_its_swings() throws Exception {
    int most =
        (int) (LIMITS.at("lighter-share", 10) * LIMITS.whole("swings-per-session", 10) + 1e-9);
    cleared(FROM, "physician");

    assertThat(back(SmallClub.swings(6, most))).isEmpty();
    assertThat(back(SmallClub.swings(6, most + 1)))
        .singleElement()
        .asString()
        .contains((most + 1) + " swings within the days after the clearance of arm-pain");
  }

  @Test
  void it_has_so_for_the_days_of_the_parameter_and_only_by_who_may_clear() throws Exception {
    int days = LIMITS.whole("days-after-clearance", 10);
    cleared(FROM, "physician");
    assertThat(back(SmallClub.swings(5 + days - 1, 200))).isNotEmpty();
    assertThat(back(SmallClub.swings(5 + days, 200))).isEmpty();

    cleared(FROM, "coach");
    assertThat(back(SmallClub.swings(6, 200))).isEmpty();
  }

  @Test
  void the_days_together_have_a_lighter_share_of_a_week() throws Exception {
    int most = (int) (LIMITS.at("lighter-share", 10) * LIMITS.whole("swings-per-week", 10) + 1e-9);
    int third = most / 3;
    cleared(FROM, "physician");

    assertThat(
            back(
                SmallClub.swings(6, third),
                SmallClub.swings(8, third),
                SmallClub.swings(10, most - 2 * third + 1)))
        .anyMatch(t -> t.contains((most + 1) + " swings together"));
  }

  @Test
  void and_one_home_day() throws Exception {
    cleared(FROM, "physician");

    assertThat(back(SmallClub.cards(6))).isEmpty();
    assertThat(back(SmallClub.cards(6), SmallClub.cards(8)))
        .singleElement()
        .asString()
        .contains("2 home days");
    assertThat(back(SmallClub.cards(6), SmallClub.cards(14))).isEmpty();
  }

  @Test
  void a_practice_of_a_group_that_the_club_has_not_is_told() throws Exception {
    Given given =
        given("{'practices':[{'group':'u99','date':'2027-04-06','stations':[],'rotations':[]}]}");
    new PracticeCheck(given, SmallClub.WORDS).check();
    new RotationCheck(given, SmallClub.WORDS).check();

    assertThat(SmallClub.said(given.findings()))
        .containsExactly("u99 2027-04-06: the group 'u99'; the club has no such group");
  }

  private List<String> roster(String json) throws Exception {
    Given given = given(json);
    new RosterCheck(given).check();
    return SmallClub.said(given.findings());
  }

  @Test
  void each_child_that_was_asked_for_stands_there_once() throws Exception {
    String ada = "{'player':'a1'}";
    assertThat(roster("{'players':[" + ada + ",{'player':'b1'}]}")).isEmpty();
    assertThat(roster("{'asked':{'groups':['u10'],'players':[]},'players':[" + ada + "]}"))
        .isEmpty();
    assertThat(roster("{'asked':{'groups':[],'players':['a1']},'players':[" + ada + "]}"))
        .isEmpty();
    assertThat(roster("{'players':[" + ada + "," + ada + ",{'player':'b1'}]}"))
        .containsExactly("a1: the child stands twice; each child has one entry");
    assertThat(roster("{'players':[" + ada + "]}"))
        .singleElement()
        .asString()
        .startsWith("b1: the child of u14 is left out");
  }

  @Test
  void a_complaint_of_the_day_of_its_clearance_stays_open() throws Exception {
    club.with(
        "wellness.csv",
        WELLNESS,
        "2027-04-01,a1,cleared,head-injury,physician",
        "2027-04-01,a1,head-injury,,",
        "2027-04-03,a1,symptom-free,,");
    HealthDays health = new HealthDays(club.record().wellness());

    assertThat(health.openAt(FROM)).extracting(HealthDays.Open::since).containsExactly(april(1));
    assertThat(health.openAt(LocalDate.of(2027, 3, 31))).isEmpty();
  }
}
