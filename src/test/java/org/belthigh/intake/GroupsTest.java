package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Groups go by id or name, as people write them; one that could be two groups is asked about. */
class GroupsTest {
  private TestClub club;

  @BeforeEach
  void open(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private ClubRecord with(String group) {
    return club.with(
            "roster.csv",
            "id,first_name,born,bats,group",
            "p01,Ana,2017-05-02,R," + group,
            "p02,Ana,2017-09-12,R,u10")
        .with("calendar.csv", "date,group,kind,minutes", "2027-03-09," + group + ",practice,90")
        .read();
  }

  @ParameterizedTest
  @ValueSource(strings = {"u10", "U10", "U-10", "u 10", "Under 10", "under-10", "UNDER10"})
  void a_group_is_known_by_id_and_name(String written) {
    ClubRecord record = with(written);

    assertThat(record.players()).extracting(Player::group).containsExactly("u10", "u10");
    assertThat(record.events()).extracting(e -> e.group().orElse("all")).containsExactly("u10");
    assertThat(club.messages())
        .as("two of one name in one group, however it is written")
        .filteredOn(m -> m.contains("children of one name in a group"))
        .hasSize(1);
  }

  @Test
  void all_are_meant_by_all() {
    club.with("calendar.csv", "date,group,kind,minutes", "2027-03-09,All,practice,90");

    assertThat(club.read().events())
        .extracting(e -> e.group().orElse("all"))
        .containsExactly("all");
  }

  @Test
  void a_group_that_could_be_two_is_asked_about() {
    club.with(
        "club.yaml",
        TestClub.CLUB.stream()
            .map(
                line ->
                    line.replace("{id: u10,", "{id: u-10, name: Ten, age: [9, 10]}\n  - {id: u10,"))
            .toList());

    assertThat(with("U10").events()).isEmpty();
    assertThat(club.messages()).anyMatch(m -> m.contains("'U10' is not known"));
    assertThat(with("u10").events())
        .extracting(e -> e.group().orElse("all"))
        .containsExactly("u10");
  }
}
