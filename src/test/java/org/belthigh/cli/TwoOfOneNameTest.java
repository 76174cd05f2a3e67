package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.Intake;
import org.belthigh.intake.TestClub;
import org.belthigh.plan.PlanRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club with two children of one name and number is planned: both held, each by its own label. */
class TwoOfOneNameTest {
  @Test
  void both_are_held_and_no_label_stands_twice(@TempDir Path temp) throws Exception {
    Catalogue catalogue = CatalogueLoader.load().orThrow();
    TestClub club =
        TestClub.in(temp)
            .with(
                "roster.csv",
                "id,first_name,last_name,born,bats,number,group",
                "p01,José,Núñez,2017-05-02,R,7,u10",
                "p02,José,Núñez,2017-09-12,L,7,u10",
                "p03,Cruz,Lane,2016-12-30,S,9,u10");

    JsonNode plan =
        PrintedClub.usual(
                catalogue,
                Intake.read(club.folder(), catalogue),
                new PlanRequest(
                    LocalDate.of(2027, 3, 8),
                    1,
                    Set.of(),
                    Set.of(),
                    Optional.empty(),
                    Optional.empty()))
            .json;

    TreeSet<String> labels = new TreeSet<>();
    for (JsonNode player : plan.path("players")) {
      labels.add(player.path("label").asText());
      int swings = 0;
      for (JsonNode day : player.path("days")) {
        swings += day.path("swings").asInt();
      }
      boolean held = !player.path("player").asText().equals("p03");
      assertThat(swings == 0).as(player.path("player").asText()).isEqualTo(held);
      for (JsonNode arm : player.path("arms")) {
        if (!held) {
          continue;
        }
        assertThat(arm.path("answer").asText().equals("may-pitch")).isFalse();
      }
    }
    assertThat(labels).hasSize(3);
  }
}
