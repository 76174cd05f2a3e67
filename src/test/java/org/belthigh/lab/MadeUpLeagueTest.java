package org.belthigh.lab;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Intake;
import org.belthigh.intake.Player;
import org.belthigh.intake.Unusable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MadeUpLeagueTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  @TempDir private Path folder;

  private Path league(String name, int players, long seed) throws IOException {
    Path league = folder.resolve(name);
    MadeUpLeague.write(league, players, seed, CATALOGUE);
    return league;
  }

  private static Map<String, String> texts(Path root) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        texts.put(root.relativize(file).toString(), Files.readString(file));
      }
    }
    return texts;
  }

  @Test
  void the_same_seed_gives_the_same_bytes_and_another_seed_others() throws IOException {
    Map<String, String> once = texts(league("once", 14, 7));

    assertThat(texts(league("twice", 14, 7))).isEqualTo(once);
    assertThat(texts(league("other", 14, 8)).keySet()).isEqualTo(once.keySet());
    assertThat(texts(folder.resolve("other"))).isNotEqualTo(once);
  }

  @Test
  void every_club_reads_back_without_a_fault_or_a_remark() throws IOException, Unusable {
    Path league = league("league", 640, MadeUpLeague.USUAL_SEED);

    int players = 0;
    for (String name : List.of("club-001", "club-002", "club-003")) {
      ClubRecord club = Intake.read(league.resolve(name), CATALOGUE);
      assertThat(club.problems()).isEmpty();
      assertThat(club.club().groups()).hasSize(15);
      assertThat(club.players()).extracting(Player::id).allMatch(id -> id.startsWith("made-up-"));
      assertThat(club.tosses().size() / club.players().size()).isBetween(60, 150);
      assertThat(club.tosses()).allMatch(t -> t.date().isBefore(MadeUpLeague.PLAN_DAY));
      assertThat(club.outings()).isNotEmpty();
      assertThat(club.wellness()).isNotEmpty();
      players += club.players().size();
    }
    assertThat(players).isEqualTo(640);
    assertThat(league.resolve("club-004")).doesNotExist();
  }
}
