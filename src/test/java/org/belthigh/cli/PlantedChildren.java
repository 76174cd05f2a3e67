package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Children, and what their sheets say. */
final class PlantedChildren extends KindList {
  PlantedChildren() {
    Places child = KindList::children;
    kind("child-missing", "a child is left out", "miss|not in|left out|no plan|roster", child, KindList::any, s -> s.remove("players"));
    kind("child-twice", "a child stands there twice", "twice|more than once|again", child, KindList::any, s -> s.twice("players"));
    kind("child-unknown", "a child of no roster", "roster|unknown|no such|not of", child, KindList::any, s -> s.node().put("player", s.named() + "-x"));
    kind("child-older", "a child is two years older than by birth", "age", child, KindList::any, s -> s.node().put("age", s.number("age") + 2));
    kind("child-group", "a child stands in no group of the club", "group", child, KindList::any, s -> s.node().put("group", "g9"));
    kind("sport-emptied", "months of other sport are wrong", "month", child, s -> s.node().path("sport_months").has("most"), s -> ((ObjectNode) s.node().get("sport_months")).put("most", s.number("most") + 40));
    kind("weeks-none", "a child's weeks are emptied", "week", child, s -> s.filled("weeks"), s -> s.node().putArray("weeks"));
    kind("days-none", "a child has no days", "day|practice", child, s -> s.filled("days"), s -> s.node().putArray("days"));
    kind("decisions-none", "a child has no decisions", "decision|skill", child, s -> s.filled("decisions"), s -> s.node().putArray("decisions"));
    kind("holds-none", "all holds of a child are removed", "hold|rest|ask|pitch|complain|throw", child, s -> s.filled("holds"), s -> s.node().putArray("holds"));
    kind("label", "a child's printed label is another's", "label|name", child, s -> s.node().has("label"), s -> s.node().put("label", "Nobody 99"));
    kind("cautions-card", "the card's cautions are emptied", "caution|card|arm", child, s -> !s.node().at("/cautions/card").isEmpty(), s -> ((ObjectNode) s.node().get("cautions")).putArray("card"));
    kind("cautions-home", "the home sheet's cautions are emptied", "caution|home", child, s -> !s.node().at("/cautions/home").isEmpty(), s -> ((ObjectNode) s.node().get("cautions")).putArray("home"));
    kind("home-gear", "what the home sheet asks for is emptied", "gear|need", child, s -> s.filled("home_gear"), s -> s.node().putArray("home_gear"));
    kind("arms-none", "the arm days are emptied", "arm", child, s -> s.filled("arms"), s -> s.node().putArray("arms"));
    Places arm = of(child, "arms");
    kind("arm-may", "an arm day says may pitch where it must not", "pitch|arm|throw", arm, s -> !s.is("answer", "may-pitch"), s -> s.node().put("answer", "may-pitch").put("pitches_left", 20));
    kind("arm-left", "an arm day gives more pitches", "pitch", arm, s -> s.is("answer", "may-pitch"), s -> s.node().put("pitches_left", s.number("pitches_left") + 15));
    kind("arm-catch", "an arm day lets a child catch who must not", "catch", arm, s -> s.node().has("may_catch") && !s.node().path("may_catch").asBoolean(), s -> s.node().put("may_catch", true));
    kind("arm-missing", "an arm day is missing", "arm|pitch", arm, KindList::any, s -> s.remove("arms"));
    // MORE
  }
}
