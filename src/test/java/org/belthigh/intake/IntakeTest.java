package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.model.Ball;
import org.belthigh.model.Bats;
import org.belthigh.model.Call;
import org.belthigh.model.DrillKind;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.Origin;
import org.belthigh.model.Place;
import org.belthigh.model.Side;
import org.belthigh.model.Spot;
import org.belthigh.model.Timing;
import org.belthigh.model.Went;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IntakeTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 8);

  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private ClubRecord clean() {
    ClubRecord record = club.read();
    assertThat(record.problems()).isEmpty();
    return record;
  }

  private Unusable unusable() {
    return catchThrowableOfType(
        Unusable.class, () -> Intake.read(club.folder(), TestCatalogue.small()));
  }

  @Test
  void a_club_file_and_a_roster_are_enough() {
    ClubRecord record = clean();

    assertThat(record.club().name()).isEqualTo("Example Club");
    assertThat(record.club().paper()).isEqualTo("letter");
    assertThat(record.club().languages()).containsExactly("en", "es");
    assertThat(record.club().ruleBooks()).containsExactly("pitch-smart-2018");
    assertThat(record.club().seasonFirst()).isEqualTo("2027-03-01");
    assertThat(record.club().seasonLast()).isEqualTo("2027-05-24");
    assertThat(record.club().curriculum()).isEqualTo("small");
    assertThat(record.club().groups())
        .containsExactly(new Club.Group("u10", "Under 10", 9, 10, false, 1));
    assertThat(record.players()).extracting(Player::id).containsExactly("p01", "p02", "p03");
    assertThat(record.tosses()).isEmpty();
    assertThat(record.unread()).isEmpty();
  }

  @Test
  void the_club_file_may_say_more() {
    club.with(
        "club.yaml",
        "name: Example Club",
        "paper: a4",
        "languages: [es]",
        "rule_book: [pitch-smart-2018]",
        "curriculum: small",
        "tossers: 2",
        "season: {first: \"2027-03-01\", last: \"2027-05-24\"}",
        "groups:",
        "  - {id: u10, name: Under 10, age: [9, 10]}",
        "  - {id: s12, age: [11, 12], sport: softball, tossers: 0}",
        "equipment: {tees: 4, screens: 1}",
        "places:",
        "  - {id: north, name: North field, aed: shed, stations: 2}",
        "  - {id: cage1, kind: cage}",
        "emergency: {call: \"911\", who: first coach}");

    Club read = clean().club();

    assertThat(read.paper()).isEqualTo("a4");
    assertThat(read.groups())
        .containsExactly(
            new Club.Group("u10", "Under 10", 9, 10, false, 2),
            new Club.Group("s12", "s12", 11, 12, true, 0));
    assertThat(read.equipment()).containsEntry("tees", 4).containsEntry("screens", 1);
    assertThat(read.places())
        .containsExactly(
            new Club.Venue("north", "North field", false, "", "shed", 2, ""),
            new Club.Venue("cage1", "cage1", true, "", "", 1, ""));
    assertThat(read.emergency()).contains(new Club.Emergency("911", "first coach", ""));
  }

  @Test
  void a_roster_row_is_read_whole() {
    club.with(
        "roster.csv",
        "id,first_name,last_name,born,bats,throws,number,group,pitches,catches,sex,height_cm,"
            + "language,home_days,needs,guest",
        "p01,Ana,Example,2017-05-02,s,L,7,u10,Y,no,f,138.5,ES,\"mon, wed sunday\",\"glasses, points\",x");

    Player ana = clean().player("p01");

    assertThat(ana.bats()).isEqualTo(Bats.SWITCH);
    assertThat(ana.throwsWith()).contains(Side.LEFT);
    assertThat(ana.lastName()).contains("Example");
    assertThat(ana.number()).hasValue(7);
    assertThat(ana.pitches()).isTrue();
    assertThat(ana.catches()).isFalse();
    assertThat(ana.sex()).contains("F");
    assertThat(ana.heightCm()).hasValue(138.5);
    assertThat(ana.language()).isEqualTo("es");
    assertThat(ana.homeDays())
        .containsExactlyInAnyOrder(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.SUNDAY);
    assertThat(ana.needs()).contains("glasses, points");
    assertThat(ana.guest()).isTrue();
  }

  @Test
  void what_a_roster_leaves_open_has_a_careful_default() {
    Player cruz = clean().player("p03");

    assertThat(cruz.pitches()).isFalse();
    assertThat(cruz.language()).isEqualTo("en");
    assertThat(cruz.homeDays()).isEmpty();
    assertThat(cruz.guest()).isFalse();
    assertThat(cruz.throwsWith()).isEmpty();
  }

  @Test
  void a_faulty_cell_that_the_roster_can_do_without_leaves_the_player_in() {
    club.with(
        "roster.csv", "id,first_name,born,bats,group,number", "p01,Ana,2017-05-02,R,u10,seven");

    ClubRecord record = club.read();

    assertThat(record.problems()).hasSize(1);
    assertThat(record.player("p01").number()).isEmpty();
  }

  @Test
  void half_of_a_practice_is_for_hitting_unless_said() {
    club.with(
        "calendar.csv",
        "date,group,kind,start,minutes,hitting_minutes,adults,place,note",
        "2027-03-09,All,game,9:05,120,,,north,",
        "2027-03-08,u10,practice,17:30,90,,2,north,bring water",
        "2027-03-10,u10,practice,17:30,90,30,,,");

    List<Event> events = clean().events();

    assertThat(events).extracting(Event::hittingMinutes).containsExactly(45, 0, 30);
    assertThat(events.get(0).group()).contains("u10");
    assertThat(events.get(0).adults()).isEqualTo(OptionalInt.of(2));
    assertThat(events.get(1).group()).isEmpty();
    assertThat(events.get(1).start()).contains(LocalTime.of(9, 5));
  }

  @Test
  void a_toss_is_read_whole() {
    club.with(
        "logs/a.csv",
        "DATE,Player,drill,round,toss,bats,zone,near,called,field,swing,hit,went,timing,ball,feed,feet,"
            + "place,by",
        "2027-03-08,p02,Field-Call,2,3,,belt-away,Yes,Away,left center,TRUE,hard,left-center,on,"
            + "baseball,front-toss,18.5,cage,Kim");

    assertThat(clean().tosses())
        .containsExactly(
            new Toss(
                DAY,
                "p02",
                "field-call",
                DrillKind.FIELD_CALL,
                12,
                false,
                "2",
                3,
                Side.LEFT,
                Spot.BELT_AWAY,
                true,
                Call.parse("away"),
                Optional.of(Field.LEFT_CENTER),
                true,
                Optional.of(Hit.HARD),
                Optional.of(Went.LEFT_CENTER),
                Optional.of(Timing.ON),
                Optional.of(Ball.BASEBALL),
                Optional.of(Feed.FRONT_TOSS),
                OptionalDouble.of(18.5),
                Optional.of(Place.CAGE),
                "Kim",
                Origin.of(club.folder() + "/logs/a.csv", 2)));
  }

  @Test
  void without_toss_numbers_the_file_order_holds_in_each_round() {
    club.with(
        "logs/a.csv",
        "date,player,drill,round,zone,swing",
        "2027-03-08,p02,zone-call,1,1,no",
        "2027-03-08,p01,zone-call,1,2,no",
        "2027-03-08,p02,zone-call,1,3,no",
        "2027-03-08,p02,zone-call,2,4,no");
    club.with("logs/b.csv", "date,player,drill,zone,swing", "2027-03-08,p02,zone-call,5,no");

    assertThat(clean().tosses())
        .extracting(t -> t.player() + " " + t.round() + "." + t.order() + " " + t.zone().number())
        .containsExactly("p01 1.1 2", "p02 1.1 1", "p02 1.2 3", "p02 1.3 5", "p02 2.1 4");
  }

  @Test
  void two_people_who_say_who_they_are_may_mark_one_toss() {
    club.with("logs/a.csv", TestClub.TOSSES, "2027-03-08,p01,zone-call,1,1,,5,5,no,");
    club.with(
        "logs/b.csv",
        "date,player,drill,round,toss,zone,called,swing,by",
        "2027-03-08,p02,zone-call,1,1,5,5,no,Ann",
        "2027-03-08,p02,zone-call,1,1,4,5,no,Bo",
        "2027-03-08,p02,zone-call,1,1,4,5,no,Bo",
        "2027-03-08,p02,zone-call,1,1,4,5,no,");

    assertThat(club.read().tosses()).extracting(Toss::by).containsExactly("", "Ann", "Bo");
    assertThat(club.messages()).hasSize(2).allMatch(m -> m.contains("stands already on line"));
  }

  @Test
  void the_second_row_of_a_toss_is_set_aside_and_names_the_file_of_the_first() {
    club.with("logs/a.csv", TestClub.TOSSES, "2027-03-08,p01,zone-call,1,1,,5,5,no,");
    club.with("logs/b.csv", TestClub.TOSSES, "2027-03-08,p01,zone-call,1,1,,4,4,no,");

    assertThat(club.read().tosses()).extracting(Toss::zone).containsExactly(Spot.BELT_MIDDLE);
    assertThat(club.messages())
        .containsExactly(
            "fault CLUB/logs/b.csv line 2 column 28, toss: toss 1 of round 1 of p01 stands already"
                + " in CLUB/logs/a.csv line 2: zone is belt-middle there and belt-in here, called is"
                + " belt-middle there and belt-in here; one toss must be one row.\n"
                + "Maybe it is another round; else keep the row that is right.");
  }

  @Test
  void the_side_comes_from_the_roster_unless_the_log_says() {
    club.with(
        "logs/a.csv",
        TestClub.TOSSES,
        "2027-03-08,p02,zone-call,1,1,,5,5,no,",
        "2027-03-08,p02,zone-call,1,2,R,5,5,no,",
        "2027-03-08,p03,zone-call,1,1,right,5,5,no,");

    ClubRecord record = club.read();

    assertThat(record.tosses())
        .extracting(Toss::side)
        .containsExactly(Side.LEFT, Side.RIGHT, Side.RIGHT);
    assertThat(record.problems()).noneMatch(p -> p.isFault()).hasSize(1);
  }

  @Test
  void a_row_is_set_aside_whole_and_the_rest_goes_on() {
    club.with(
        "logs/a.csv",
        TestClub.TOSSES,
        "2027-03-08,p01,zone-call,1,1,,5,5,no,",
        "2027-03-08,p01,zone-call,1,2,,10,5,no,",
        "2027-03-08,p01,zone-call,1,3,,6,5,no,");

    ClubRecord record = club.read();

    assertThat(record.tosses()).extracting(Toss::order).containsExactly(1, 3);
    assertThat(record.problems()).hasSize(1);
  }

  @Test
  void tosses_win_over_a_tally_of_the_same_measure_alone() {
    club.with("logs/a.csv", TestClub.TOSSES, "2027-03-08,p01,zone-call,1,1,,5,5,no,");
    club.with(
        "logs/b.csv",
        "date,player,drill,measure,made,of",
        "2027-03-08,p01,zone-call,zone-recognition,5,8",
        "2027-03-08,p01,zone-call,ball-swing,1,4",
        "2027-03-08,p02,zone-call,zone-recognition,5,8",
        "2027-03-09,p01,zone-call,zone-recognition,5,8");

    ClubRecord record = club.read();

    assertThat(record.tallies()).extracting(t -> t.origin().line()).containsExactly(3, 4, 5);
    assertThat(club.messages())
        .containsExactly(
            "fault CLUB/logs/b.csv line 2, measure: single tosses of p01 in zone-call on 2027-03-08"
                + " were logged too, so this tally is left out; a drill must be logged toss by toss"
                + " or as a tally.\nMaybe the tally sums up those tosses; then delete its row.");
  }

  @Test
  void rows_of_a_player_set_aside_are_told_once_a_file() {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,group",
        "p01,Ana,2017-05-02,R,u10",
        "p02,Ben,1987-05-02,R,u10");
    club.with(
        "logs/a.csv",
        TestClub.TOSSES,
        "2027-03-08,p02,zone-call,1,1,,5,5,no,",
        "2027-03-08,p02,zone-call,1,2,,5,5,no,",
        "2027-03-08,p01,zone-call,1,1,,5,5,no,");

    assertThat(club.messages()).hasSize(2);
    assertThat(club.messages().get(0)).as("the cause first").startsWith("fault CLUB/roster.csv");
    assertThat(club.messages().get(1))
        .startsWith(
            "fault CLUB/logs/a.csv line 2 column 12, player: p02 was set aside in the roster, so 2"
                + " rows here cannot be used;");
    assertThat(club.read().tosses()).hasSize(1);
  }

  @Test
  void safety_files_are_read_whole() {
    club.with(
        "throws.csv",
        "date,player,pitches,kind,before_last_batter,innings,innings_caught,team,game",
        "2027-03-09,p01,0,,,,2,,",
        "2027-03-08,p01,45,scrimmage,41,3.2,,Blue,second");
    club.with(
        "wellness.csv",
        "date,player,kind,clears,by,note",
        "2027-03-08,p01,arm-pain,,,after the game",
        "2027-03-12,p01,cleared,arm-pain,physical-therapist,",
        "2027-03-12,p02,symptom-free,,,");
    club.with("other.csv", "date,player,hours,what", "2027-03-08,p01,1.5,soccer");
    club.with(
        "coach.csv",
        "date,player,skill,step,by,reason",
        "2027-03-08,p01,see,see-1,Coach Kim,calls it in games");

    ClubRecord record = clean();

    assertThat(record.outings()).extracting(Outing::pitches).containsExactly(45, 0);
    assertThat(record.outings())
        .extracting(Outing::kind)
        .containsExactly(Outing.Kind.SCRIMMAGE, Outing.Kind.GAME);
    assertThat(record.outings().get(0).beforeLastBatter()).hasValue(41);
    assertThat(record.outings().get(0).innings()).hasValue(3.2);
    assertThat(record.outings().get(1).inningsCaught()).hasValue(2);
    assertThat(record.wellness()).hasSize(3);
    assertThat(record.wellness().get(1).clears()).contains(Wellness.Kind.ARM_PAIN);
    assertThat(record.otherSports().get(0).hours()).isEqualTo(1.5);
    assertThat(record.placements().get(0).step()).isEqualTo("see-1");
    assertThat(record.unread()).isEmpty();
  }

  @Test
  void an_outing_that_cannot_be_read_is_kept_as_unread() {
    club.with(
        "throws.csv",
        "date,player,pitches",
        "2027-03-08,p01,many",
        "2027-02-30,p02,20",
        "2027-03-08,p1,20",
        "2027-03-08,stranger,20",
        "2027-03-08,p02,20,Blue");

    ClubRecord record = club.read();

    assertThat(record.outings()).isEmpty();
    assertThat(record.unread())
        .extracting(
            u -> u.player().orElse("?") + " " + u.date().map(LocalDate::toString).orElse("?"))
        .containsExactly(
            "p01 2027-03-08", "p02 ?", "p01 2027-03-08", "? 2027-03-08", "p02 2027-03-08");
    assertThat(record.unread()).allMatch(u -> u.what() == Unread.What.OUTING);
  }

  @Test
  void an_unknown_id_like_several_players_leaves_them_all_unsure() {
    club.with("throws.csv", "date,player,pitches", "2027-03-08,p04,20");

    assertThat(club.read().unread())
        .extracting(u -> u.player().orElseThrow())
        .containsExactly("p01", "p02", "p03");
  }

  @Test
  void a_health_report_that_cannot_be_read_is_kept_but_a_faulty_clearance_is_not() {
    club.with(
        "wellness.csv",
        "date,player,kind,clears,by",
        "2027-03-08,p01,sore,,",
        "2027-03-08,p02,cleared,arm-pain,doctor");

    assertThat(club.read().unread())
        .extracting(u -> u.what() + " " + u.player().orElseThrow())
        .containsExactly("WELLNESS p01");
  }

  @Test
  void a_safety_file_that_cannot_be_read_is_about_everyone_on_any_day() throws IOException {
    Files.write(club.folder().resolve("throws.csv"), new byte[] {0, 1, 2});

    ClubRecord record = club.read();

    assertThat(record.unread()).hasSize(1);
    assertThat(record.unread().get(0).concerns("p03")).isTrue();
    assertThat(record.upTo(DAY).unread()).hasSize(1);
  }

  @Test
  void a_cut_at_a_day_leaves_later_rows_out_and_the_calendar_whole() {
    club.with("calendar.csv", "date,group,kind", "2027-04-01,u10,practice");
    club.with(
        "throws.csv",
        "date,player,pitches",
        "2027-03-08,p01,20",
        "2027-03-09,p01,30",
        "2027-03-09,p01,many");

    ClubRecord cut = club.read().upTo(DAY);

    assertThat(cut.outings()).extracting(Outing::pitches).containsExactly(20);
    assertThat(cut.events()).hasSize(1);
    assertThat(cut.unread()).isEmpty();
  }

  @Test
  void an_outing_counts_from_a_year_before_the_season_to_its_last_day_else_the_child_is_asked() {
    club.with(
        "throws.csv",
        "date,player,pitches",
        "2026-03-01,p01,1",
        "2027-05-24,p01,2",
        "2026-02-28,p02,3",
        "2027-05-25,p03,4");

    ClubRecord record = club.read();

    assertThat(record.outings()).extracting(Outing::pitches).containsExactly(1, 2);
    assertThat(record.unread())
        .extracting(u -> u.player().orElseThrow() + " " + u.date())
        .containsExactly("p02 Optional.empty", "p03 Optional.empty");
  }

  @Test
  void a_health_report_counts_up_to_a_year_outside_the_season() {
    club.with(
        "wellness.csv",
        "date,player,kind",
        "2026-03-01,p01,illness",
        "2028-05-24,p01,illness",
        "2026-02-28,p02,illness",
        "2028-05-25,p03,illness");

    ClubRecord record = club.read();

    assertThat(record.wellness()).hasSize(2);
    assertThat(record.unread())
        .extracting(u -> u.player().orElseThrow())
        .containsExactly("p02", "p03");
  }

  @Test
  void a_row_that_is_cut_off_in_the_player_may_be_of_all_who_begin_so() {
    club.with("wellness.csv", "date,player,kind", "2027-03-08,p0");

    assertThat(club.read().unread())
        .extracting(u -> u.player().orElseThrow())
        .containsExactlyInAnyOrder("p01", "p02", "p03");
  }

  @Test
  void other_forms_are_told_and_not_read() {
    club.with("throws.xls", "x").with("logs/march.ods", "x");

    assertThat(club.messages())
        .containsExactly(
            "fault CLUB/logs/march.ods: files of this form are not read; it must be CSV, XLSX or"
                + " YAML.\nSave it as \"CSV UTF-8\".",
            "fault CLUB/throws.xls: files of this form are not read; it must be CSV, XLSX or"
                + " YAML.\nSave it as \"CSV UTF-8\".",
            "fault CLUB/throws.xls: not every row could be read; each report counts; until then ask"
                + " before anyone throws.\nCorrect what else is said of this file.");
  }

  @Test
  void a_mistyped_name_is_told_with_what_it_may_hold() {
    club.with("trows.csv", "x");

    assertThat(club.messages())
        .containsExactly(
            "fault CLUB/trows.csv: this was found and not read, and may hold rows of throws;"
                + " throws.csv, the same as .xlsx or .yaml, or the sheet of that name in"
                + " workbook.xlsx are read.\nMaybe put its rows into throws.csv; if it is an old"
                + " copy, move it out of the folder.",
            "fault CLUB/trows.csv: not every row could be read; each report counts; until then ask"
                + " before anyone throws.\nCorrect what else is said of this file.");
  }

  @Test
  void a_folder_that_is_not_there_is_unusable() {
    Unusable told =
        catchThrowableOfType(
            Unusable.class, () -> Intake.read(Path.of("no-such-club"), TestCatalogue.small()));

    assertThat(told.problems())
        .extracting(p -> p.text())
        .containsExactly(
            "no-such-club: there is no such folder, or it cannot be read; a club folder must be"
                + " there.\nMaybe the path was mistyped.");
  }

  @Test
  void a_club_without_roster_or_club_file_is_unusable() throws IOException {
    Files.delete(club.folder().resolve("roster.csv"));
    assertThat(unusable().getMessage()).contains("roster.csv: the file is missing");

    Files.delete(club.folder().resolve("club.yaml"));
    assertThat(unusable().getMessage()).contains("club.yaml: the file is missing");
  }

  @Test
  void an_unknown_rule_book_makes_the_club_unusable() {
    club.with(
        "club.yaml",
        "name: Example Club",
        "rule_book: [pitch-smart-2018, pitch-smart-2081]",
        "season: {first: \"2027-03-01\", last: \"2027-05-24\"}",
        "groups: [{id: u10, age: [9, 10]}]");

    assertThat(unusable().problems()).hasSize(1);
    assertThat(unusable().problems().get(0).maybe()).isEqualTo("Maybe pitch-smart-2018.");
  }

  @Test
  void a_roster_of_faulty_rows_alone_is_unusable() {
    club.with("roster.csv", "id,first_name,born,bats,group", "p01,Ana,2017-05-02,R,u99");

    assertThat(unusable().problems()).hasSize(2);
  }

  @Test
  void the_catalogue_that_is_shipped_has_the_three_drills_that_logs_may_always_name()
      throws Unusable {
    club.with(
        "logs/a.csv",
        "date,player,drill,zone,field,swing",
        "2027-03-08,p01,zone-call,5,,no",
        "2027-03-08,p01,countdown,5,,no",
        "2027-03-08,p01,field-call,5,center,no");

    ClubRecord record = Intake.read(club.folder(), CatalogueLoader.load().orThrow());

    assertThat(record.problems()).isEmpty();
    assertThat(record.tosses())
        .extracting(Toss::kind)
        .containsExactly(DrillKind.COUNTDOWN, DrillKind.FIELD_CALL, DrillKind.ZONE_CALL);
  }

  @Test
  void the_same_folder_gives_the_same_record() {
    club.with("logs/a.csv", TestClub.TOSSES, "2027-03-08,p01,zone-call,1,1,,10,5,no,");

    assertThat(club.read()).isEqualTo(club.read());
  }
}
