package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pain that was written into a log holds until it stands in wellness.csv. */
class HealthInLogsTest {
  private TestClub club;

  @BeforeEach
  void open(@TempDir Path temp) {
    club = TestClub.in(temp);
  }

  private List<String> held() {
    return club.read().unread().stream()
        .filter(u -> u.what() == Unread.What.WELLNESS)
        .map(u -> u.player().orElse("?") + u.date().map(d -> " " + d).orElse(""))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Ana arm-pain",
        "Ana 45 55 arm-pain",
        "Ana arm pain",
        "Ana sore arm",
        "Ana 45 her arm hurts",
        "Ana head-injury",
        "Ana concussion",
        "Ana le duele el codo",
        "Ana golpe en la cabeza",
        "p01 sick"
      })
  void in_a_typed_log_it_holds_the_child_of_the_line(String line) {
    club.with("logs/a.txt", "2027-03-08", "zone-call", "Ben 45", line);

    assertThat(held()).containsExactly("p01 2027-03-08");
    assertThat(club.messages())
        .anyMatch(m -> m.contains("speaks of somebody's health") && m.contains("wellness.csv"));
    assertThat(club.read().tosses())
        .as("its tosses, and those of others, are kept")
        .hasSize(1 + (line.contains("45") ? line.contains("55") ? 2 : 1 : 0));
  }

  @Test
  void in_a_table_it_holds_the_child_of_the_row() {
    club.with(
        "logs/a.csv",
        "date,player,drill,toss,zone,swing",
        "2027-03-08,p01,zone-call,1,5,no",
        "2027-03-08,p02,arm-pain,2,5,no");

    assertThat(held()).containsExactly("p02 2027-03-08");
  }

  @Test
  void other_words_that_are_no_toss_hold_nobody() {
    club.with(
        "logs/a.txt",
        "2027-03-08",
        "zone-call",
        "Ana 45 nice swing",
        "Ben bunts 45",
        "Ana golpe duro");
    club.with("logs/b.csv", "date,player,drill,toss,zone", "2027-03-08,p01,zone-cal,1,5");

    assertThat(held()).isEmpty();
  }
}
