package org.belthigh.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.intake.ClubRecord;
import org.belthigh.intake.Player;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.junit.jupiter.api.Test;

/** What holds for the weeks of any club, looked at on made-up ones. */
class RandomWeeksTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final int WEEKS = 3;

  /** Two sessions a week; with fewer a skill may wait, since each week still has its two. */
  private static final int FEWEST_SESSIONS = 6;

  private static JsonNode plan(ClubRecord record, LocalDate from) {
    PlanRequest request =
        new PlanRequest(from, WEEKS, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return PlanJson.of(new Planner(CATALOGUE).plan(record, request), ClubOptions.words(CATALOGUE));
  }

  /**
   * Left out: who is held on some day, and whom calendar, load and home days leave fewer than two
   * sessions a week.
   */
  @Test
  void each_child_who_is_there_meets_every_skill_within_three_weeks() {
    List<String> missed = new ArrayList<>();
    int looked = 0;
    for (long seed = 1; seed <= 160; seed++) {
      ClubRecord record = RandomClub.of(seed, CATALOGUE);
      LocalDate from = record.club().seasonFirst().plusWeeks(seed % 9);
      for (JsonNode player : plan(record, from).get("players")) {
        Set<String> skills = new HashSet<>();
        int sessions = 0;
        for (JsonNode day : player.get("days")) {
          sessions += day.get("items").isEmpty() ? 0 : 1;
          day.get("items").forEach(i -> skills.add(i.get("skill").asText()));
        }
        if (player.get("holds").isEmpty() && sessions >= FEWEST_SESSIONS) {
          looked++;
          if (skills.size() < 4) {
            missed.add(
                "seed %d, %s from %s: %s in %d sessions"
                    .formatted(seed, player.get("player").asText(), from, skills, sessions));
          }
        }
      }
    }
    assertThat(missed).isEmpty();
    assertThat(looked).as("enough to mean something").isGreaterThan(300);
  }

  @Test
  void no_players_plan_depends_on_the_order_of_the_roster() {
    int looked = 0;
    for (long seed = 1; seed <= 40; seed++) {
      ClubRecord record = RandomClub.of(seed, CATALOGUE);
      LocalDate from = record.club().seasonFirst().plusWeeks(seed % 9);
      Map<String, JsonNode> one = byPlayer(plan(record, from));
      Map<String, JsonNode> other = byPlayer(plan(shuffled(record, seed), from));
      assertThat(other).as("seed %d", seed).isEqualTo(one);
      looked += one.size();
    }
    assertThat(looked).isGreaterThan(200);
  }

  private static Map<String, JsonNode> byPlayer(JsonNode plan) {
    Map<String, JsonNode> players = new TreeMap<>();
    plan.get("players").forEach(p -> players.put(p.get("player").asText(), p));
    return players;
  }

  private static ClubRecord shuffled(ClubRecord record, long seed) {
    List<Player> players = new ArrayList<>(record.players());
    Collections.shuffle(players, new Random(seed));
    return new ClubRecord(
        record.club(),
        players,
        record.events(),
        record.tosses(),
        record.tallies(),
        record.outings(),
        record.wellness(),
        record.otherSports(),
        record.placements(),
        record.unread(),
        record.problems());
  }
}
