package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Days and weeks of a child. */
final class PlantedDays extends KindList {
  PlantedDays() {
    Places day = KindList::days;
    kind("day-sum", "a day's swings are not those of its items", "swing", day, s -> s.filled("items"), s -> s.node().put("swings", s.number("swings") + 9).put("keep_sums", true));
    kind("day-minutes", "a day's minutes are not those of its items", "minute", day, s -> s.filled("items"), s -> s.node().put("minutes", s.number("minutes") + 30).put("keep_sums", true));
    kind("day-outside", "a day lies outside the weeks", "outside|week|date|day", day, KindList::any, s -> s.node().put("date", moved(s.text("date"), 200)));
    kind("day-twice", "a day stands there twice", "twice|swing|again|more than", day, s -> s.number("swings") > 0, s -> s.twice("days"));
    kind("day-game", "game day called practice", "game|practice|place", day, s -> s.is("place", "game"), s -> s.node().put("place", "field"));
    kind("day-place", "home work called field work", "practice|place|field", day, s -> s.is("place", "home"), s -> s.node().put("place", "field"));
    kind("day-provisional", "provisional is taken off", "provisional", day, s -> s.node().path("provisional").asBoolean(), s -> s.node().put("provisional", false));
    kind("day-note", "a day's note is removed", "note|light", day, s -> s.node().hasNonNull("note"), s -> s.node().putNull("note"));
    kind("day-throws", "a day asks for 500 throws", "throw", day, s -> s.node().has("throws"), s -> s.node().put("throws", 500));
    Places week = of(KindList::children, "weeks");
    kind("week-kind", "a lighter week is called normal", "week", week, s -> s.is("kind", "lighter"), s -> s.node().put("kind", "normal").putNull("says"));
    kind("week-says", "what a week says is removed", "week|light", week, s -> s.node().hasNonNull("says"), s -> s.node().putNull("says"));
    // MORE
  }
}
