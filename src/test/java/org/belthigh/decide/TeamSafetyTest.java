package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.belthigh.catalogue.Stricter;
import org.belthigh.intake.Club;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Outing;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unread;
import org.belthigh.intake.Wellness;
import org.belthigh.model.Bats;
import org.belthigh.model.Origin;
import org.junit.jupiter.api.Test;

/** What is known of one player says nothing of another, and each reason stands once. */
class TeamSafetyTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 4, 6);
  private static final Origin ROW = Origin.of("x.csv", 2);
  private static final Stricter SIXTY_AND_ONE_DAY =
      new Stricter(
          List.of(new Stricter.Limit(11, 12, 60)),
          List.of(new Stricter.Limit(11, 12, 150)),
          0,
          OptionalInt.of(1));

  private static Player player(String id, String name) {
    return new Player(
        id,
        name,
        Optional.empty(),
        LocalDate.of(2014, 1, 15),
        Bats.RIGHT,
        Optional.empty(),
        OptionalInt.empty(),
        "g",
        true,
        true,
        Optional.empty(),
        OptionalDouble.empty(),
        "en",
        Set.of(),
        Optional.empty(),
        false);
  }

  private static Outing outing(String player, LocalDate day, int pitches) {
    return new Outing(
        day,
        player,
        pitches,
        Outing.Kind.GAME,
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalInt.empty(),
        "",
        "",
        ROW);
  }

  private static Wellness report(
      String player, Wellness.Kind kind, Wellness.Kind clears, Wellness.Role by) {
    return new Wellness(
        MONDAY.minusDays(1),
        player,
        kind,
        Optional.ofNullable(clears),
        Optional.ofNullable(by),
        "",
        ROW);
  }

  private static ClubRecord team(
      String book, Stricter stricter, List<Outing> outings, List<Wellness> wellness) {
    return team(book, stricter, outings, wellness, List.of());
  }

  private static ClubRecord team(
      String book,
      Stricter stricter,
      List<Outing> outings,
      List<Wellness> wellness,
      List<Unread> unread) {
    Club club =
        new Club(
            "Test Club",
            "letter",
            List.of("en"),
            List.of(book),
            LocalDate.of(2026, 3, 1),
            LocalDate.of(2026, 6, 30),
            List.of(new Club.Group("g", "Group", 7, 18, false, 2)),
            "belthigh-2027",
            Map.of(),
            List.of(),
            Optional.empty(),
            stricter);
    return new ClubRecord(
        club,
        List.of(player("p01", "Ana"), player("p02", "Ben")),
        List.of(),
        List.of(),
        List.of(),
        outings,
        wellness,
        List.of(),
        List.of(),
        unread,
        List.of());
  }

  private static List<ArmStatus> on(LocalDate day, ClubRecord record) {
    return new Arms(RuleCase.CATALOGUE).on(record, day);
  }

  private static List<String> said(ArmStatus status) {
    return status.because().stream().map(r -> RuleCase.WORDS.say(r.phrase(), "en")).toList();
  }

  @Test
  void pitches_are_charged_to_whoever_threw_them() {
    List<ArmStatus> team =
        on(
            MONDAY,
            team(
                "pitch-smart-2018",
                Stricter.NONE,
                List.of(
                    outing("p01", MONDAY.minusDays(1), 40), outing("p02", MONDAY.minusDays(2), 0)),
                List.of()));

    assertThat(team.get(0).mayPitch()).isFalse();
    assertThat(team.get(0).knownTo()).contains(MONDAY.minusDays(1));
    assertThat(team.get(1).pitchesLeft()).isEqualTo(85);
    assertThat(team.get(1).knownTo()).contains(MONDAY.minusDays(2));
  }

  @Test
  void a_sore_arm_stops_its_owner_alone_and_swinging_as_well_as_throwing() {
    ClubRecord record =
        team(
            "pitch-smart-2018",
            Stricter.NONE,
            List.of(),
            List.of(report("p01", Wellness.Kind.ARM_PAIN, null, null)));

    List<ArmStatus> team = on(MONDAY, record);
    List<Hold> holds = new Holds(RuleCase.CATALOGUE).of(record, MONDAY);

    assertThat(team.get(0).mayPitch()).isFalse();
    assertThat(team.get(0).mayCatch()).isFalse();
    assertThat(team.get(1).answer().opened().mayPitch()).isTrue();
    assertThat(team.get(1).mayCatch()).isTrue();
    assertThat(holds).extracting(Hold::player).containsOnly("p01");
    assertThat(holds).extracting(Hold::stopsThrowing).containsExactly(true, false);
    assertThat(holds).extracting(Hold::stopsSwinging).containsExactly(false, true);
  }

  @Test
  void a_sore_back_alone_does_not_stop_by_its_swinging_half_what_its_throwing_half_stops() {
    ClubRecord record =
        team(
            "pitch-smart-2018",
            Stricter.NONE,
            List.of(),
            List.of(report("p02", Wellness.Kind.HEAD_INJURY, null, null)));

    Hold hold = new Holds(RuleCase.CATALOGUE).of(record, MONDAY).get(0);

    assertThat(hold.stopsThrowing()).isTrue();
    assertThat(hold.stopsSwinging()).isTrue();
  }

  @Test
  void a_word_that_does_not_count_stands_with_the_complaint_and_player_it_was_about() {
    ClubRecord record =
        team(
            "pitch-smart-2018",
            Stricter.NONE,
            List.of(),
            List.of(
                report("p01", Wellness.Kind.ARM_PAIN, null, null),
                report("p02", Wellness.Kind.ARM_PAIN, null, null),
                report("p02", Wellness.Kind.BACK_PAIN, null, null),
                report(
                    "p02", Wellness.Kind.CLEARED, Wellness.Kind.BACK_PAIN, Wellness.Role.COACH)));

    List<Hold> noted =
        new Holds(RuleCase.CATALOGUE)
            .of(record, MONDAY).stream().filter(h -> !h.notes().isEmpty()).toList();

    assertThat(noted).isNotEmpty();
    assertThat(noted).extracting(Hold::player).containsOnly("p02");
    assertThat(noted).extracting(Hold::cause).containsOnly(Optional.of(Wellness.Kind.BACK_PAIN));
  }

  @Test
  void a_health_report_that_was_lost_stops_whoever_it_may_be_about() {
    List<ArmStatus> team =
        on(
            MONDAY,
            team(
                "pitch-smart-2018",
                Stricter.NONE,
                List.of(outing("p01", MONDAY, 0), outing("p02", MONDAY, 0)),
                List.of(),
                List.of(
                    new Unread(Unread.What.WELLNESS, Optional.empty(), Optional.empty(), ROW))));

    assertThat(team).extracting(ArmStatus::askFirst).containsExactly(true, true);
    assertThat(team).extracting(ArmStatus::mayPitch).containsExactly(false, false);
    assertThat(team).extracting(ArmStatus::mayCatch).containsExactly(false, false);
  }

  @Test
  void a_book_that_counts_every_pitch_has_no_second_figure() {
    ClubRecord record = team("pitch-smart-2018", Stricter.NONE, List.of(), List.of());

    assertThat(on(MONDAY, record).get(0).lastBatter()).isEmpty();
  }

  @Test
  void days_over_the_limit_are_told_oldest_first() {
    ClubRecord record =
        team(
            "pitch-smart-2018",
            Stricter.NONE,
            List.of(
                outing("p01", MONDAY, 90),
                outing("p01", MONDAY.minusDays(2), 88),
                outing("p01", MONDAY.minusDays(1), 87)),
            List.of());

    assertThat(said(on(MONDAY, record).get(0)))
        .filteredOn(s -> s.contains("over the day's limit"))
        .extracting(s -> s.substring(0, 20))
        .containsExactly("Ana threw 88 pitches", "Ana threw 87 pitches", "Ana threw 90 pitches");
  }

  @Test
  void the_clubs_lower_limit_is_named_once_and_never_as_the_leagues() {
    ClubRecord record =
        team("pony-2018", SIXTY_AND_ONE_DAY, List.of(outing("p01", MONDAY, 85)), List.of());
    ClubRecord less =
        team("pony-2018", SIXTY_AND_ONE_DAY, List.of(outing("p01", MONDAY, 20)), List.of());

    assertThat(said(on(MONDAY, record).get(0)))
        .startsWith("Ana threw 85 pitches on Mon, Apr 6. The most for one day is 60 (Test Club).")
        .filteredOn(s -> s.contains("The most for one day"))
        .hasSize(1);
    assertThat(said(on(MONDAY, less).get(0)))
        .containsExactly(
            "Ana may throw up to 40 pitches on Mon, Apr 6 (Test Club, age 12).",
            "Ana already threw 20 pitches on Mon, Apr 6. That is taken off. PONY Baseball allows a"
                + " second game that day. One game a day is better.");
  }

  @Test
  void the_clubs_fewer_days_in_a_row_speak_for_both() {
    ClubRecord record =
        team(
            "pony-2018",
            SIXTY_AND_ONE_DAY,
            List.of(outing("p01", MONDAY.minusDays(2), 5), outing("p01", MONDAY.minusDays(1), 5)),
            List.of());

    assertThat(said(on(MONDAY, record).get(0)))
        .containsExactly(
            "Ana pitched 2 days in a row. 1 is the most (Test Club), whatever the counts, so Mon,"
                + " Apr 6 is a day of rest.");
  }

  @Test
  void a_broken_rest_day_stays_a_rest_day_and_goes_on_into_the_next() {
    ClubRecord record =
        team(
            "pitch-smart-2018",
            Stricter.NONE,
            List.of(outing("p01", MONDAY.minusDays(1), 21), outing("p01", MONDAY, 1)),
            List.of());
    // a day of rest was broken; two days in a row make Tuesday one
    List<Hold> holds = new Arms(RuleCase.CATALOGUE).restHolds(record, MONDAY);

    assertThat(holds)
        .extracting(RuleCase::shown)
        .containsExactly("throwing 2026-04-06 to 2026-04-07");
  }

  @Test
  void under_a_book_without_that_rule_it_ends_with_the_day() {
    ClubRecord record =
        team(
            "babe-ruth-tournament-2018",
            Stricter.NONE,
            List.of(outing("p01", MONDAY.minusDays(1), 41), outing("p01", MONDAY, 1)),
            List.of());

    assertThat(new Arms(RuleCase.CATALOGUE).restHolds(record, MONDAY))
        .extracting(RuleCase::shown)
        .containsExactly("throwing 2026-04-06 to 2026-04-06");
  }

  @Test
  void rest_that_a_later_bullpen_finds_again_is_one_stop() {
    ClubRecord record =
        team(
            "pitch-smart-2018",
            Stricter.NONE,
            List.of(
                outing("p01", MONDAY, 66),
                new Outing(
                    MONDAY.plusDays(1),
                    "p01",
                    10,
                    Outing.Kind.BULLPEN,
                    OptionalInt.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    "",
                    "",
                    Origin.of("throws.csv"))),
            List.of());

    assertThat(new Arms(RuleCase.CATALOGUE).restHolds(record, MONDAY, MONDAY.plusDays(6)))
        .extracting(RuleCase::shown)
        .containsExactly("throwing 2026-04-07 to 2026-04-10");
  }
}
