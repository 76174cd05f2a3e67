package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Days and weeks of a child. */
final class PlantedDays extends KindList {
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
        "game|practice|place",
        day,
        s -> s.is("place", "game"),
        s -> s.node().put("place", "field"));
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
        "break|place|practice",
        day,
        s -> s.is("place", "break"),
        s -> s.node().put("place", "field"));
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
        s -> List.of("field", "cage").contains(s.text("place")) && s.number("swings") > 0,
        s -> s.node().put("swings", 0).put("minutes", 0).putArray("items"));
    kind(
        "day-game-work",
        "swings on the day of a game",
        "game",
        day,
        s -> s.is("place", "game"),
        s -> PlantedItems.work(s.node(), "field", "tee-belt-high", "baseball", "tee", 0, 6));
    kind(
        "day-free",
        "home work on each free day of a child",
        "free day|hitting days|days with",
        KindList::children,
        s -> s.node().path("days").size() > 6 && !s.filled("holds"),
        PlantedDays::noRest);
    kind(
        "day-same",
        "the same drill on each day of work",
        "same drill|variety|drill.*(times|days|weeks|each|every)",
        KindList::children,
        PlantedDays::works,
        PlantedDays::same);
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

  private static boolean works(Spot child) {
    return child.node().path("days").findValuesAsText("drill").size() > 8;
  }

  private static void same(Spot child) {
    for (JsonNode day : child.node().path("days")) {
      String place = day.path("place").asText();
      if (!day.path("items").isEmpty()) {
        int swings = day.path("swings").asInt();
        String ball = place.equals("home") ? "plastic" : "baseball";
        PlantedItems.work((ObjectNode) day, place, "tee-belt-high", ball, "tee", 0, swings);
      }
    }
  }
}
