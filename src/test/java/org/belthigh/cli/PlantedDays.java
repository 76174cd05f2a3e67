package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Place;
import org.belthigh.plan.Plan;
import org.belthigh.plan.PlanRequest;
import org.belthigh.plan.Planner;
import org.belthigh.plan.practice.Effort;

/** Days and weeks of a child. */
final class PlantedDays extends KindList {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();
  private static final double LITTLE_EFFORT = 0.02;

  PlantedDays() {
    Places day = KindList::days;
    kind(
        "day-sum",
        "a day's swings are not those of its items",
        "swing",
        day,
        s -> s.filled("items"),
        s -> s.node().put("swings", s.number("swings") + 9).put("keep_sums", true));
    kind(
        "day-minutes",
        "a day's minutes are not those of its items",
        "minute",
        day,
        s -> s.filled("items"),
        s -> s.node().put("minutes", s.number("minutes") + 30).put("keep_sums", true));
    kind(
        "day-outside",
        "a day lies outside the weeks",
        "outside|week|date|day",
        day,
        KindList::any,
        s -> s.node().put("date", moved(s.text("date"), 200)));
    kind(
        "day-twice",
        "a day stands there twice",
        "twice|swing|again|more than",
        day,
        s -> s.number("swings") > 0,
        s -> s.twice("days"));
    kind(
        "day-game",
        "game day called practice",
        "note",
        day,
        s -> s.is("note", "Game day"),
        s -> s.node().put("note", "Practice"));
    kind(
        "day-place",
        "home work called field work",
        "practice|place|field",
        day,
        s -> s.is("place", "home"),
        s -> s.node().put("place", "field"));
    kind(
        "day-provisional",
        "provisional is taken off",
        "provisional",
        day,
        s -> s.node().path("provisional").asBoolean(),
        s -> s.node().put("provisional", false));
    kind(
        "day-note",
        "a day's note is removed",
        "note|light",
        day,
        s -> s.node().hasNonNull("note"),
        s -> s.node().putNull("note"));
    kind(
        "day-throws",
        "a day asks for 500 throws",
        "throw",
        day,
        s -> s.node().has("throws"),
        s -> s.node().put("throws", 500));
    Places week = of(KindList::children, "weeks");
    kind(
        "week-kind",
        "a lighter week is called normal",
        "week",
        week,
        s -> s.is("kind", "lighter"),
        s -> s.node().put("kind", "normal").putNull("says"));
    kind(
        "week-says",
        "what a week says is removed",
        "week|light",
        week,
        s -> s.node().hasNonNull("says"),
        s -> s.node().putNull("says"));

    kind("day-missing", "a date is missing", "no entry", day, KindList::any, s -> s.remove("days"));
    kind(
        "day-break",
        "a break called practice",
        "note",
        day,
        s -> s.is("note", "Day off"),
        s -> s.node().put("note", "Practice"));
    kind(
        "day-cage",
        "field work called cage work",
        "cage|place|field",
        day,
        s -> s.is("place", "field") && s.filled("items"),
        s -> s.node().put("place", "cage"));
    kind(
        "day-home",
        "practice work called home work",
        "home",
        day,
        s -> List.of("field", "cage").contains(s.text("place")) && s.filled("items"),
        s -> s.node().put("place", "home"));
    kind(
        "day-unknown",
        "a place that is none",
        "place|moon",
        day,
        KindList::any,
        s -> s.node().put("place", "moon"));
    kind(
        "day-rest",
        "work on a day called rest",
        "rest",
        day,
        s -> s.filled("items"),
        s -> s.node().put("place", "rest"));
    kind(
        "day-emptied",
        "the work of a practice day is emptied",
        "work|practice|station|rotation|nothing",
        day,
        s ->
            List.of("field", "cage").contains(s.text("place"))
                && s.number("swings") > 0
                && !s.node().path("provisional").asBoolean(),
        s -> s.node().put("swings", 0).put("minutes", 0).putArray("items"));
    kind(
        "day-game-work",
        "swings on the day of a game",
        "note|game|station",
        day,
        s -> s.is("note", "Game day"),
        s -> PlantedItems.work(s.node(), "field", "tee-belt-high", "baseball", "tee", 0, 6));
    kind(
        "day-free",
        "home work on each free day of a child",
        "free day|hitting days|days with",
        KindList::children,
        s -> s.node().path("days").size() > 6 && !s.filled("holds"),
        PlantedDays::noRest);
    add(
        new Planted(
            "day-same",
            "the same drill at each practice for six weeks",
            "no station has it|same drill",
            (stage, dice) -> {
              stage.plan.setAll(longer(stage));
              return children(stage.plan).stream()
                  .filter(child -> Stream.of("drive", "choose").anyMatch(s -> same(child, s)))
                  .findFirst()
                  .map(Spot::named);
            }));
    kind(
        "day-later-usual",
        "later weeks are not provisional",
        "provisional",
        KindList::children,
        s -> s.node().toString().contains("\"provisional\":true"),
        s -> s.node().path("days").forEach(d -> ((ObjectNode) d).put("provisional", false)));
    kind(
        "week-missing",
        "a week of a child is missing",
        "week",
        week,
        KindList::any,
        s -> s.remove("weeks"));
    kind(
        "week-lighter",
        "a usual week is called lighter",
        "week|light",
        week,
        s -> s.is("kind", "usual"),
        s -> s.node().put("kind", "lighter"));
    kind(
        "week-first",
        "a week begins on another day",
        "week",
        week,
        KindList::any,
        s -> s.node().put("first", moved(s.text("first"), 1)));
  }

  private static void noRest(Spot child) {
    for (JsonNode day : child.node().path("days")) {
      if (day.path("place").asText().equals("rest")) {
        PlantedItems.work((ObjectNode) day, "home", "spot-cards", "none", "none", 0, 0);
      }
    }
  }

  /** The same club's plan of seven weeks. */
  private static ObjectNode longer(Planted.Stage stage) {
    LocalDate from = LocalDate.parse(stage.plan.path("from").asText());
    PlanRequest request =
        new PlanRequest(from, 7, Set.of(), Set.of(), Optional.empty(), Optional.empty());
    Plan plan = new Planner(CATALOGUE, new Effort(LITTLE_EFFORT)).plan(stage.record, request);
    ObjectNode json = PlanJson.of(plan, ClubOptions.words(CATALOGUE));
    new PrintedFiles().into(json, Set.of());
    return json;
  }

  /**
   * Gives each practice of a child with that skill the drill and the step of the first one; false
   * where these are fewer than six weeks, or the step has nothing else that would do.
   */
  private static boolean same(Spot child, String skill) {
    List<ObjectNode> items = new ArrayList<>();
    List<LocalDate> dates = new ArrayList<>();
    for (JsonNode day : child.node().path("days")) {
      if (List.of("field", "cage").contains(day.path("place").asText())) {
        for (JsonNode item : day.path("items")) {
          if (item.path("skill").asText().equals(skill)) {
            items.add((ObjectNode) item);
            dates.add(LocalDate.parse(day.path("date").asText()));
          }
        }
      }
    }
    if (items.size() < 6
        || dates.get(dates.size() - 1).isBefore(dates.get(0).plusWeeks(5))
        || !another(items.get(0))) {
      return false;
    }
    String drill = items.get(0).path("drill").asText();
    String step = items.get(0).path("step").asText();
    items.forEach(item -> item.put("drill", drill).put("step", step));
    return true;
  }

  /** Whether the item's step has a drill for any place that asks for nobody and nothing more. */
  private static boolean another(ObjectNode item) {
    Curriculum curriculum = CATALOGUE.curricula().get("belthigh-2027");
    Drill own = curriculum.drill(item.path("drill").asText());
    return curriculum.step(item.path("step").asText()).orElseThrow().drills().stream()
        .filter(id -> !id.equals(own.id()))
        .map(curriculum::drill)
        .filter(d -> d.at(Place.FIELD) && d.at(Place.CAGE))
        .filter(d -> d.helpers() == 0 && d.adults() <= own.adults())
        .filter(d -> own.swing() || !d.swing())
        .anyMatch(d -> own.gear().containsAll(d.gear()));
  }
}
