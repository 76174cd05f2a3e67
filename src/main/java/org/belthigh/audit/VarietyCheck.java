package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Home;
import org.belthigh.model.Ball;
import org.belthigh.model.Place;

/**
 * Nobody does one drill of a step at home for weeks where the step has another that needs nothing
 * which the family lacks. At a practice the drills are those of a whole group, so a row of one
 * child's is no fault there.
 */
final class VarietyCheck {
  /** How many times the guidance for drills running, so that no chance of a calendar is blamed. */
  private static final int WEEKS = 3;

  private static final String HOME = "home";

  private final Given given;

  VarietyCheck(Given given) {
    this.given = given;
  }

  void check(Given.Child child) {
    Map<List<String>, List<String>> drills = new LinkedHashMap<>();
    for (JsonNode day : child.said().path("days")) {
      if (!day.path("place").asText().equals(HOME)) {
        continue;
      }
      for (JsonNode item : day.path("items")) {
        drills
            .computeIfAbsent(
                List.of(day.path("place").asText(), item.path("step").asText()),
                k -> new ArrayList<>())
            .add(item.path("drill").asText());
      }
    }
    int most =
        WEEKS
            * given
                .limits()
                .whole("same-drill-sessions", child.player().ageOn(given.plan().from()));
    drills.forEach((where, done) -> row(child, where, done, most));
  }

  private void row(Given.Child child, List<String> where, List<String> done, int most) {
    int row = 0;
    String before = "";
    for (String drill : done) {
      row = drill.equals(before) ? row + 1 : 1;
      before = drill;
      if (row > most && another(child, where, drill)) {
        given.broken(
            child.id() + ", " + drill,
            "more than " + most + " times running at " + where.get(0),
            where.get(1) + " has other drills for that place");
        return;
      }
    }
  }

  private boolean another(Given.Child child, List<String> where, String drill) {
    return given.curriculum().step(where.get(1)).map(Step::drills).orElse(List.of()).stream()
        .filter(d -> !d.equals(drill))
        .map(given.curriculum().drills()::get)
        .filter(Objects::nonNull)
        .anyMatch(d -> possible(child, d));
  }

  /** Whether the family can do it with nothing but what they have. */
  private static boolean possible(Given.Child child, Drill drill) {
    List<String> needed =
        drill.gear().stream().filter(List.of("tee", "net", "machine")::contains).toList();
    return drill.helpers() == 0
        && drill.balls().get(Place.HOME) == Ball.NONE
        && owns(child.player().home(), needed);
  }

  private static boolean owns(Home home, List<String> needed) {
    return home.gear().stream().map(Home.Gear::id).toList().containsAll(needed);
  }
}
