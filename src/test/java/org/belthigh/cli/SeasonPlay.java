package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.belthigh.audit.Audit;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Problem;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.practice.Effort;
import org.belthigh.words.Words;

/** Plans twelve weeks of a made-up club and has the auditor look through every plan. */
final class SeasonPlay {
  private final Catalogue catalogue;
  private final Words words;
  private final Planner planner;
  private final Audit audit;

  SeasonPlay(Catalogue catalogue, Effort effort) {
    this.catalogue = catalogue;
    this.planner = new Planner(catalogue, effort);
    this.words = ClubOptions.words(catalogue);
    this.audit = new Audit(catalogue);
  }

  /** Player-seasons planned, swings planned in them, and what the auditor found. */
  record Played(int players, long swings, List<String> found) {
    Played {
      found = List.copyOf(found);
    }
  }

  /** All twelve weeks in one go. */
  Played whole(long seed) {
    ClubRecord record = RandomClub.of(seed, catalogue);
    ObjectNode plan = plan(record, record.club().seasonFirst(), RandomClub.WEEKS);
    return new Played(record.players().size(), swings(plan), look(seed, plan, record));
  }

  /**
   * Week by week, each plan with what was known on its first day; then all weeks put side by side,
   * so that the seven days across a seam are looked at too.
   */
  Played weekByWeek(long seed) {
    ClubRecord record = RandomClub.of(seed, catalogue);
    List<ObjectNode> plans = new ArrayList<>();
    List<String> found = new ArrayList<>();
    for (int w = 0; w < RandomClub.WEEKS; w++) {
      ObjectNode plan = plan(record, record.club().seasonFirst().plusDays(7L * w), 1);
      found.addAll(look(seed, plan, record));
      plans.add(plan);
    }
    ObjectNode season = sideBySide(plans);
    // all else was judged week by week, with what was known then
    look(seed, season, record).stream()
        .filter(f -> f.contains("and the six days after"))
        .forEach(f -> found.add("across weeks: " + f));
    return new Played(record.players().size(), swings(season), found);
  }

  private ObjectNode plan(ClubRecord record, LocalDate from, int weeks) {
    PlanRequest request =
        new PlanRequest(from, weeks, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    return PlanJson.of(planner.plan(record, request), words);
  }

  private List<String> look(long seed, ObjectNode plan, ClubRecord record) {
    return audit.beside("seed-" + seed, plan.toString(), record).stream()
        .map(Problem::text)
        .toList();
  }

  private static long swings(ObjectNode plan) {
    long swings = 0;
    for (JsonNode day : plan.findParents("throws")) {
      swings += day.path("swings").asLong();
    }
    return swings;
  }

  /** One plan of all weeks. */
  private static ObjectNode sideBySide(List<ObjectNode> plans) {
    ObjectNode season = plans.get(0).deepCopy();
    season.put("weeks", plans.size());
    Map<String, ArrayNode> days = new LinkedHashMap<>();
    season
        .get("players")
        .forEach(p -> days.put(p.get("player").asText(), (ArrayNode) p.get("days")));
    for (ObjectNode plan : plans.subList(1, plans.size())) {
      plan.get("players")
          .forEach(p -> days.get(p.get("player").asText()).addAll((ArrayNode) p.get("days")));
    }
    return season;
  }
}
