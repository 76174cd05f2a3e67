package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.model.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Children of a roster who cannot be told apart: a fault, and both are asked about first. */
class RosterDoubtsTest {
  private static final String HEADER = "id,first_name,last_name,born,bats,number,group";
  private static final String ANA = "p01,Ana,Ortiz,2017-05-02,R,7,u10";

  @TempDir private Path temp;
  private TestClub club;

  @BeforeEach
  void makeClub() {
    club = TestClub.in(temp);
  }

  private ClubRecord roster(String... rows) {
    return club.with("roster.csv", Stream.concat(Stream.of(HEADER), Stream.of(rows)).toList())
        .read();
  }

  /** Who is asked about first, of both kinds of reports; "?" where that may be anyone. */
  private static Set<String> asked(ClubRecord record, Unread.What what) {
    return record.unread().stream()
        .filter(u -> u.what() == what)
        .map(u -> u.player().orElse("?"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static void assertAsked(ClubRecord record, String... ids) {
    assertThat(asked(record, Unread.What.WELLNESS)).containsExactlyInAnyOrder(ids);
    assertThat(asked(record, Unread.What.OUTING)).containsExactlyInAnyOrder(ids);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "\"7,Ben,Stone,2017-09-12,L,4,u10\", 7",
        "\"007,Ben,Stone,2017-09-12,L,4,u10\", 007",
        "\"p02,ANA,ortíz,2017-09-12,L,7,u10\", p02",
        "\"p02,Ana,Ortiz,2017-05-02,L,8,u10\", p02",
        "\"p02,Ána,ortiz,2017-05-02,L,,u10\", p02"
      })
  void two_who_cannot_be_told_apart_stay_and_are_asked_about_first(String row, String id) {
    ClubRecord record = roster("p03,Cruz,Lane,2016-12-30,S,9,u10", ANA, row);

    assertThat(record.players()).extracting(Player::id).containsExactly("p03", "p01", id);
    assertAsked(record, "p01", id);
    assertThat(record.problems())
        .singleElement()
        .matches(Problem::isFault)
        .matches(p -> p.origin().line() == 4);
  }

  @Test
  void the_number_may_stand_after_the_id() {
    assertAsked(roster("7,Ben,Stone,2017-09-12,L,4,u10", ANA), "7", "p01");
  }

  @Test
  void children_who_are_only_like_each_other_are_not_asked_about() {
    ClubRecord record =
        roster(
            ANA,
            "p02,Ana,Perez,2017-05-02,R,7,u10",
            "p04,Ana,Ortiz,2017-05-03,R,12,u10",
            "9,Ben,Stone,2017-09-12,L,9,u10",
            "p05,Ben,Stone,2017-08-12,L,,u10");

    assertThat(record.problems()).isEmpty();
    assertThat(record.unread()).isEmpty();
  }

  @Test
  void an_id_that_stands_for_another_child_too_concerns_the_first() {
    ClubRecord record = roster(ANA, "p01,Ben,Stone,2017-09-12,L,4,u10");

    assertThat(record.players()).extracting(Player::firstName).containsExactly("Ana");
    assertAsked(record, "p01");
    assertThat(record.problems())
        .singleElement()
        .matches(p -> p.text().contains("no plan") && p.origin().line() == 3);
  }

  @Test
  void an_id_that_differs_in_capitals_alone_is_the_same() {
    assertAsked(roster(ANA, "P01,Ben,Stone,2017-09-12,L,4,u10"), "p01");
  }

  @Test
  void an_id_whose_first_row_cannot_be_used_concerns_the_second() {
    ClubRecord record =
        roster("p01,Ana,Ortiz,2017-13-02,R,7,u10", "p01,Ben,Stone,2017-09-12,L,4,u10");

    assertThat(record.players()).extracting(Player::firstName).containsExactly("Ben");
    assertAsked(record, "p01");
    assertThat(record.problems()).hasSize(2).allMatch(Problem::isFault);
  }

  @Test
  void a_row_that_was_copied_leaves_no_doubt_who_is_meant() {
    ClubRecord record = roster(ANA, ANA);
    club.with("throws.csv", "date,player,pitches", "2027-03-08,Ana,20");

    assertThat(record.unread()).isEmpty();
    assertThat(club.read().outings()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"Stone", "Ben Stone", "Ben 4", "Ben S. 4", "stone ben", "4", "p02"})
  void a_row_that_names_a_child_set_aside_is_about_nobody_else(String text) {
    ClubRecord before = roster(ANA, "p02,Ben,Stone,2017-13-12,L,4,u10");
    assertThat(before.unread()).isEmpty();
    club.with("wellness.csv", "date,player,kind", "2027-03-08," + text + ",head-injury");

    ClubRecord record = club.read();

    assertThat(record.unread()).isNotEmpty().noneMatch(u -> u.concerns("p01"));
    assertThat(record.wellness()).isEmpty();
  }

  @Test
  void a_row_that_may_name_a_child_set_aside_or_another_is_about_the_other_too() {
    roster(ANA, "p02,Ana,Stone,2017-13-12,L,4,u10");
    club.with("wellness.csv", "date,player,kind", "2027-03-08,Ana,head-injury");

    assertThat(club.read().unread()).anyMatch(u -> u.concerns("p01"));
  }

  @Test
  void guests_of_a_short_log_are_in_nobodys_way() {
    roster(ANA);
    club.with("logs/a.txt", List.of("2027-03-08 u10", "zone-call", "guest Ana R: 44 55 66"));

    assertThat(asked(club.read(), Unread.What.WELLNESS)).isEmpty();
  }
}
