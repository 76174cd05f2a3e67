package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.model.Ball;
import org.belthigh.model.Bats;
import org.belthigh.model.Feed;
import org.belthigh.model.Field;
import org.belthigh.model.Hit;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Place;
import org.belthigh.model.Side;
import org.belthigh.model.Went;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortLogTest {
  private TestClub club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club = TestClub.in(temp);
    club.with(
        "roster.csv",
        "id,first_name,born,bats,number,group",
        "p01,Ana,2017-05-02,R,7,u10",
        "p02,Ben,2017-09-12,L,12,u10",
        "p03,Cruz,2016-12-30,S,3,u10",
        "p04,Ana,2016-12-30,R,4,u10");
  }

  private List<Toss> tosses(String... lines) {
    club.with("logs/a.txt", lines);
    return club.read().tosses();
  }

  private static String shown(Toss toss) {
    return String.join(
        " ",
        toss.player(),
        toss.round() + "." + toss.order(),
        toss.zone().id(),
        toss.called().map(Object::toString).orElse("-").replaceAll("\\w+\\[\\w+=(\\w+)\\]", "$1"),
        toss.hit().map(Hit::id).orElse("take"),
        toss.went().map(Went::id).orElse("-"));
  }

  @Test
  void a_practice_is_a_day_a_drill_and_a_line_a_player() {
    List<Toss> tosses =
        tosses(
            "2027-03-08 u10 cage by Coach Kim # rain",
            "",
            "zone-call foam front-toss 18",
            "7 45 5h bb 4kf",
            "ben 99",
            "p02 11",
            "countdown baseball",
            "7 5h 4m");

    assertThat(tosses)
        .extracting(ShortLogTest::shown)
        .containsExactly(
            "p01 1.1 belt-middle - hard -",
            "p01 1.2 belt-in - miss -",
            "p01 1.1 belt-in BELT_MIDDLE take -",
            "p01 1.2 belt-middle - hard -",
            "p01 1.3 ball BALL take -",
            "p01 1.4 belt-in AnyStrike[] foul -",
            "p02 1.1 high-away HIGH_AWAY take -",
            "p02 2.1 low-in LOW_IN take -");
    assertThat(tosses.get(2).ball()).contains(Ball.FOAM);
    assertThat(tosses.get(2).feed()).contains(Feed.FRONT_TOSS);
    assertThat(tosses.get(2).feet()).hasValue(18);
    assertThat(tosses.get(2).place()).contains(Place.CAGE);
    assertThat(tosses.get(2).by()).isEqualTo("Coach Kim");
    assertThat(tosses.get(0).ball()).contains(Ball.BASEBALL);
    assertThat(tosses.get(0).feet()).isEmpty();
    assertThat(tosses.get(3).origin()).hasToString(club.folder() + "/logs/a.txt line 4 column 6");
  }

  @Test
  void each_further_line_of_a_player_in_a_drill_is_a_round() {
    assertThat(tosses("2027-03-08", "countdown", "7 5h 5h", "12 5s", "7 4m", "7 r9 1s"))
        .extracting(ShortLogTest::shown)
        .containsExactly(
            "p01 1.1 belt-middle - hard -",
            "p01 1.2 belt-middle - hard -",
            "p01 2.1 belt-in - miss -",
            "p01 9.1 low-in - soft -",
            "p02 1.1 belt-middle - soft -");
  }

  @Test
  void a_field_that_is_called_holds_until_the_next() {
    List<Toss> tosses = tosses("2027-03-08", "field-call", "7 rf: 6h= 5hcf 4 lc: 5sp 4fx 5m");

    assertThat(tosses).hasSize(5);
    assertThat(tosses)
        .extracting(t -> t.field().orElseThrow().id())
        .containsExactly("right", "right", "right", "left-center", "left-center");
    assertThat(tosses.get(0).went()).contains(Went.RIGHT);
    assertThat(tosses.get(1).went()).contains(Went.CENTER);
    assertThat(tosses.get(3).went()).contains(Went.POP_UP);
    assertThat(tosses.get(2).field()).contains(Field.RIGHT);
    assertThat(club.messages()).hasSize(1).first().asString().contains("'4fx' is no toss");
  }

  @Test
  void the_drill_may_stand_behind_the_player_and_a_gap_keeps_its_place() {
    assertThat(tosses("2027-03-08", "7 zone-call 44 ? 5~5"))
        .extracting(t -> shown(t) + " " + t.nearEdge())
        .containsExactly(
            "p01 1.1 belt-in BELT_IN take - false", "p01 1.3 belt-middle BELT_MIDDLE take - true");
  }

  @Test
  void the_side_of_a_switch_hitter_is_a_word() {
    assertThat(tosses("2027-03-08", "zone-call", "cruz R 55 L 44"))
        .extracting(Toss::side)
        .containsExactly(Side.RIGHT, Side.LEFT);
  }

  @Test
  void tallies_are_made_of_so_many() {
    club.with(
        "logs/a.txt",
        "2027-03-08",
        "zone-call",
        "7 7/10 take 1/4 chase 1/3",
        "countdown",
        "12 10/12");

    assertThat(club.read().tallies())
        .extracting(t -> t.player() + " " + t.measure().id() + " " + t.made() + "/" + t.of())
        .containsExactly(
            "p01 zone-recognition 7/10",
            "p01 middle-take 1/4",
            "p01 ball-swing 1/3",
            "p02 countdown 10/12");
    assertThat(club.read().tallies().get(1).measure()).isEqualTo(MeasureKind.MIDDLE_TAKE);
  }

  @Test
  void a_name_that_two_share_is_asked_once() {
    tosses("2027-03-08 u10", "zone-call", "ana 44 55 66");

    assertThat(club.messages())
        .containsExactly(
            "fault CLUB/logs/a.txt line 3 column 1, player: 'ana' is a name or number of more than"
                + " one player; player must be an id of the roster where two share a name or a"
                + " number.\nMaybe p01 or p04.");
  }

  @Test
  void nobody_goes_by_the_name_of_a_player_who_was_set_aside() {
    club.with(
        "roster.csv",
        "id,first_name,born,bats,number,group",
        "p01,Ana,2017-05-02,R,7,u10",
        "p02,Ana,2017-13-02,R,8,u10");
    club.with("throws.csv", "date,player,pitches", "2027-03-08,ana,50", "2027-03-09,7,20");

    assertThat(club.read().outings()).extracting(Outing::pitches).containsExactly(20);
    // either Ana may be meant, so the one who plays is asked first
    assertThat(club.read().unread())
        .extracting(u -> u.player().orElse("anyone"))
        .containsExactlyInAnyOrder("p01", "ana");
  }

  @ParameterizedTest
  @CsvSource({"zurdo,LEFT", "D,RIGHT", "A,SWITCH"})
  void the_side_of_a_guest_may_be_spanish(String side, Bats bats) {
    tosses("2027-03-08 u10", "guest Sam 10 " + side + " 44", "zone-call", "sam R: 44 55");

    assertThat(club.read().player("guest-sam").bats()).isEqualTo(bats);
  }

  @Test
  void a_guest_line_makes_a_guest() {
    List<Toss> tosses =
        tosses("2027-03-08 u10", "guest Sam 10 L 44", "zone-call", "sam 45", "44 55");

    assertThat(tosses).hasSize(2).allMatch(t -> t.player().equals("guest-sam"));
    Player guest = club.read().player("guest-sam");
    assertThat(guest.guest()).isTrue();
    assertThat(guest.bats()).isEqualTo(Bats.LEFT);
    assertThat(guest.group()).isEqualTo("u10");
    assertThat(guest.pitches()).isFalse();
    assertThat(guest.born()).isEqualTo(LocalDate.of(2017, 3, 8));
    assertThat(guest.number()).hasValue(44);
  }

  @Test
  void a_guest_who_joined_is_the_player_of_the_roster() {
    assertThat(tosses("2027-03-08 u10", "guest Ben 9 L", "zone-call", "ben 44"))
        .extracting(Toss::player)
        .containsExactly("p02");
    assertThat(club.read().players()).hasSize(4);
  }

  @Test
  void a_wide_sheet_holds_the_same_marks() {
    club.with(
        "logs/a.csv",
        "date,player,drill,tosses,feet",
        "2027-03-08,7,zone-call,45 5h bb,18",
        "2027-03-08,ben,zone-call,4q,18");

    ClubRecord record = club.read();

    assertThat(record.tosses())
        .extracting(ShortLogTest::shown)
        .containsExactly(
            "p01 1.1 belt-in BELT_MIDDLE take -",
            "p01 1.2 belt-middle - hard -",
            "p01 1.3 ball BALL take -");
    assertThat(record.tosses().get(0).feet()).hasValue(18);
    assertThat(club.messages().get(1))
        .startsWith("fault CLUB/logs/a.csv line 3 column 26: '4q' is no toss;");
  }

  @Test
  void a_text_that_does_not_begin_with_a_day_is_left_alone() {
    club.with("logs/notes.txt", "Bring the foam balls back!");

    assertThat(club.messages())
        .containsExactly(
            "warning CLUB/logs/notes.txt line 1 column 1: the text does not begin with a day, so it"
                + " is not read; a practice log must begin with a line such as 2027-03-08 u10.\n"
                + "Maybe it is a note of your own; then leave it.");
  }

  @ParameterizedTest
  @CsvSource({"5hh", "h", "5=", "hello", "5hzz", "~4", "''"})
  void what_is_no_toss_is_refused(String word) {
    assertThat(ShortToss.parse(word, "")).isEqualTo(Optional.empty());
  }
}
