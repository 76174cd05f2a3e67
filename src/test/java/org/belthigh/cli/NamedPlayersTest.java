package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.cli.Runs.run;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.belthigh.intake.TestClub;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A command line names players as the files of a club do. */
class NamedPlayersTest {
  private String club;

  @BeforeEach
  void club(@TempDir Path temp) {
    club =
        TestClub.in(temp)
            .with(
                "roster.csv",
                "id,first_name,last_name,born,bats,number,group",
                "p01,Sam,Ortiz,2017-05-02,R,7,u10",
                "p02,Sam,Núñez,2017-09-12,L,8,u10",
                "p03,Cruz,Lane,2016-12-30,S,9,u10")
            .folder()
            .toString();
  }

  private Ran explain(String player, String... more) {
    String[] args = {"explain", club, player, "--as-of", "2027-03-08", "--json"};
    return run(Stream.of(args, more).flatMap(Arrays::stream).toArray(String[]::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"p02", "8", "Sam N.", "sam nunez", "Núñez", "Núñez, Sam", "Sam 8"})
  void one_player_is_meant(String text) throws Exception {
    assertThat(explain(text).json().path("player").asText()).isEqualTo("p02");
  }

  @Test
  void two_who_can_be_meant_are_asked_about() {
    Ran ran = explain("Sam");

    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .isEqualTo(
            """
            player 'Sam' can be p01 or p02; a name that more than one goes by is not enough.
            Give the id of the one who is meant.
            """);
  }

  @Test
  void nobody_is_meant() {
    assertThat(explain("p033").err()).contains("'p033' is not in the roster", "Maybe 'p03' is");
    assertThat(explain("Kim").err()).contains("by id, shirt number or name");
  }

  @Test
  void what_is_shown_to_others_is_asked_for_by_the_real_name() throws Exception {
    Ran ran = explain("Cruz", "--redact");

    assertThat(ran.json().path("player").asText()).isEqualTo("p3");
    assertThat(ran.out() + ran.err()).doesNotContain("Cruz", "p03");
  }

  @Test
  void other_commands_understand_names_too() throws Exception {
    Ran ran = run("measure", club, "--player", "Cruz", "--as-of", "2027-03-08", "--json");

    assertThat(ran.json().path("players")).hasSize(1);
    assertThat(ran.json().at("/players/0/player").asText()).isEqualTo("p03");
  }
}
