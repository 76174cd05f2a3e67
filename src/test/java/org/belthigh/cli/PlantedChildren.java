package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Children, and what their sheets say. */
final class PlantedChildren extends KindList {
  PlantedChildren() {
    Places child = KindList::children;
    kind(
        "child-missing",
        "a child is left out",
        "miss|not in|left out|no plan|roster",
        child,
        KindList::any,
        s -> s.remove("players"));
    kind(
        "child-twice",
        "a child stands there twice",
        "twice|more than once|again",
        child,
        KindList::any,
        s -> s.twice("players"));
    kind(
        "child-unknown",
        "a child of no roster",
        "roster|unknown|no such|not of",
        child,
        KindList::any,
        s -> s.node().put("player", s.named() + "-x"));
    kind(
        "child-older",
        "a child is two years older than by birth",
        "age",
        child,
        KindList::any,
        s -> s.node().put("age", s.number("age") + 2));
    kind(
        "child-group",
        "a child stands in no group of the club",
        "group",
        child,
        KindList::any,
        s -> s.node().put("group", "g9"));
    kind(
        "sport-emptied",
        "months of other sport are wrong",
        "month",
        child,
        s -> s.node().path("sport_months").has("most"),
        s -> ((ObjectNode) s.node().get("sport_months")).put("most", s.number("most") + 40));
    kind(
        "weeks-none",
        "a child's weeks are emptied",
        "week",
        child,
        s -> s.filled("weeks"),
        s -> s.node().putArray("weeks"));
    kind(
        "days-none",
        "a child has no days",
        "no entry",
        child,
        s -> s.filled("days"),
        s -> s.node().putArray("days"));
    kind(
        "decisions-none",
        "a child has no decisions",
        "decision|skill",
        child,
        s -> s.filled("decisions"),
        s -> s.node().putArray("decisions"));
    kind(
        "holds-none",
        "all holds of a child are removed",
        "hold|rest|ask|pitch|complain|throw",
        child,
        s -> s.filled("holds"),
        s -> s.node().putArray("holds"));
    kind(
        "label",
        "a child's printed label is another's",
        "label|name",
        child,
        s -> s.node().has("label"),
        s -> s.node().put("label", "Nobody 99"));
    kind(
        "cautions-card",
        "the card's cautions are emptied",
        "caution|card|arm",
        child,
        s -> !s.node().at("/cautions/card").isEmpty(),
        s -> ((ObjectNode) s.node().get("cautions")).putArray("card"));
    kind(
        "cautions-home",
        "the home sheet's cautions are emptied",
        "caution|home",
        child,
        s -> !s.node().at("/cautions/home").isEmpty(),
        s -> ((ObjectNode) s.node().get("cautions")).putArray("home"));
    kind(
        "home-gear",
        "what the home sheet asks for is emptied",
        "gear|need|asked for",
        child,
        s -> s.filled("home_gear"),
        s -> s.node().putArray("home_gear"));
    kind(
        "arms-none",
        "the arm days are emptied",
        "arm",
        child,
        s -> s.filled("arms"),
        s -> s.node().putArray("arms"));
    Places arm = of(child, "arms");
    kind(
        "arm-may",
        "an arm day says may pitch where it must not",
        "pitch|arm|throw",
        arm,
        s -> !s.is("answer", "may-pitch"),
        s -> s.node().put("answer", "may-pitch").put("pitches_left", 20));
    kind(
        "arm-left",
        "an arm day gives more pitches",
        "pitch",
        arm,
        s -> s.is("answer", "may-pitch"),
        s -> s.node().put("pitches_left", s.number("pitches_left") + 15));
    kind(
        "arm-catch",
        "an arm day lets a child catch who must not",
        "catch",
        arm,
        s -> s.node().has("may_catch") && !s.node().path("may_catch").asBoolean(),
        s -> s.node().put("may_catch", true));
    kind(
        "arm-missing",
        "an arm day is missing",
        "arm|pitch",
        arm,
        KindList::any,
        s -> s.remove("arms"));

    kind(
        "child-younger",
        "a child is two years younger than by birth",
        "age",
        child,
        KindList::any,
        s -> s.more("age", -2));
    kind(
        "child-language",
        "a child's sheets are said to be in another language",
        "language",
        child,
        s -> s.node().has("language"),
        s -> s.node().put("language", s.is("language", "es") ? "en" : "es"));
    kind(
        "label-empty",
        "a child's label is empty",
        "label",
        child,
        s -> s.node().has("label"),
        s -> s.node().put("label", ""));
    kind(
        "sport-remark",
        "too many months of the sport and nothing said",
        "month",
        child,
        s -> s.node().path("sport_months").hasNonNull("remark"),
        s -> ((ObjectNode) s.node().get("sport_months")).putNull("remark"));
    kind(
        "sport-known",
        "fewer months of the sport than are known",
        "month",
        child,
        s -> s.node().path("sport_months").path("known").asInt() > 0,
        s -> ((ObjectNode) s.node().get("sport_months")).put("known", 0));
    kind(
        "cautions-one",
        "one caution of the card is left out",
        "caution",
        child,
        s -> !s.node().at("/cautions/card").isEmpty(),
        s -> ((ArrayNode) s.node().at("/cautions/card")).remove(0));
    kind(
        "cautions-home-one",
        "one caution of the home sheet is left out",
        "caution",
        child,
        s -> s.node().at("/cautions/home").size() > 1,
        s -> ((ArrayNode) s.node().at("/cautions/home")).remove(1));
    kind(
        "cautions-other",
        "the card says that the arm is free",
        "caution|card",
        child,
        s -> !s.node().at("/cautions/card").isEmpty(),
        s -> ((ArrayNode) s.node().at("/cautions/card")).set(0, "The arm is free."));
    kind(
        "home-gear-one",
        "one thing that home work needs is left out",
        "gear|asked for",
        child,
        s -> s.filled("home_gear"),
        s -> s.list("home_gear").remove(0));
    kind(
        "home-gear-count",
        "home work asks for more than it needs",
        "gear|asked for",
        of(child, "home_gear"),
        KindList::any,
        s -> s.more("count", 7));
    kind(
        "home-gear-hard",
        "home work asks for a machine",
        "gear|asked for",
        child,
        s -> s.filled("home_gear"),
        s -> s.list("home_gear").addObject().put("what", "machine").put("count", 1));
    kind(
        "last-plan",
        "a last plan is told that nobody made",
        "last.?plan|look",
        child,
        s -> s.node().has("last_plan"),
        s -> s.node().putObject("last_plan").put("from", "2020-01-06").put("planned", 900));
    kind(
        "depends",
        "what later weeks depend on is emptied",
        "depend|provisional",
        child,
        s -> s.node().hasNonNull("depends_on"),
        s -> s.node().putNull("depends_on"));
    kind(
        "arm-answer",
        "a day of no throwing is one of no pitching",
        "arm",
        arm,
        s -> s.is("answer", "no-throwing"),
        s -> s.node().put("answer", "no-pitching"));
    kind(
        "arm-ask",
        "a child who must be asked first may pitch",
        "arm",
        arm,
        s -> s.is("answer", "ask-first"),
        s -> s.node().put("answer", "may-pitch").put("pitches_left", 20));
    kind(
        "arm-known",
        "outings are said to be known to a later day",
        "arm|known",
        arm,
        s -> s.node().hasNonNull("known_to"),
        s -> s.node().put("known_to", moved(s.text("known_to"), 9)));
    kind(
        "arm-twice",
        "an arm day stands there twice",
        "arm|twice",
        arm,
        KindList::any,
        s -> s.twice("arms"));
    kind(
        "arm-rest-left",
        "pitches are left on a day of none",
        "arm|pitch",
        arm,
        s -> !s.is("answer", "may-pitch"),
        s -> s.node().put("pitches_left", 30));
  }
}
