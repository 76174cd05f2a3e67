package org.belthigh.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is meant by what stands under {@code player}. */
class WhoIsMeantTest {
  private TestClub club;

  @BeforeEach
  void roster(@TempDir Path temp) {
    club =
        TestClub.in(temp)
            .with(
                "roster.csv",
                "id,first_name,last_name,born,bats,group,pitches,number",
                "p01,José,Núñez García,2017-05-02,R,u10,yes,7",
                "p02,Ana,Ortiz,2017-09-12,L,u10,yes,12",
                "p03,Ana,Ruiz,2016-12-30,R,u10,yes,3");
  }

  private ClubRecord thrownBy(String player) {
    return club.with("throws.csv", "date,player,pitches", "2027-03-08,\"" + player + "\",20")
        .read();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "p01; p01",
        "P01; p01",
        "7; p01",
        "07; p01",
        "#7; p01",
        "José; p01",
        "jose; p01",
        "JOSÉ  NÚÑEZ; p01",
        "José Núñez García; p01",
        "Núñez; p01",
        "nunez garcia; p01",
        "Núñez, José; p01",
        "Jose N; p01",
        "Jose N.; p01",
        "José 7; p01",
        "#7 José; p01",
        "José N. 7; p01",
        "Ana O. 12; p02",
        "Ana Or.; p02",
        "Ana O. 12 p02; p02",
        "Ortiz; p02",
        "Ruiz, Ana; p03",
        "Ana 3; p03",
      })
  void one_who_fits_is_meant(String text, String id) {
    ClubRecord record = thrownBy(text);

    assertThat(record.outings()).extracting(Outing::player).containsExactly(id);
    assertThat(record.unread()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Ana; p02 p03",
        "Ana 7; p01 p02 p03",
        "José Ruiz; p01 p03",
        "Jose M.; p01",
        "Ortis; p02",
      })
  void several_or_none_leave_all_who_could_be_meant_to_be_asked(String text, String ids) {
    ClubRecord record = thrownBy(text);

    assertThat(record.outings()).isEmpty();
    assertThat(record.unread())
        .extracting(u -> u.player().orElse("anyone"))
        .containsExactlyInAnyOrder(ids.split(" ", -1));
  }

  @Test
  void a_name_like_nobodys_may_be_anyones() {
    assertThat(thrownBy("Wilhelmina").unread()).singleElement().matches(u -> u.player().isEmpty());
  }
}
