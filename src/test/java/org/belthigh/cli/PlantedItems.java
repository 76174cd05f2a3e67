package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** What is done on a day. */
final class PlantedItems extends KindList {
  PlantedItems() {
    Places item = of(of(KindList::children, "days"), "items");
    Predicate<Spot> swung = s -> s.number("swings") > 0;
    kind(
        "item-swings",
        "an item of 400 swings",
        "swing|400 tosses",
        item,
        swung,
        s -> s.node().put("swings", 400).put("reps", 400));
    kind(
        "item-reps",
        "more swings than repetitions",
        "swing|rep",
        item,
        s -> s.number("swings") > 1,
        s -> s.node().put("reps", 1));
    kind(
        "item-drill",
        "a drill that is none",
        "drill",
        item,
        KindList::any,
        s -> s.node().put("drill", "no-such-drill"));
    kind(
        "item-skill",
        "an item is for another skill",
        "skill|drive|step",
        item,
        s -> !s.is("skill", "bunt"),
        s -> s.node().put("skill", "no-skill"));
    kind(
        "item-step",
        "an item is for a step of no curriculum",
        "step",
        item,
        KindList::any,
        s -> s.node().put("step", "drive-99"));
    kind(
        "item-feet",
        "a toss from four feet",
        "feet|ft|distance",
        item,
        s -> s.number("feet") > 8,
        s -> s.node().put("feet", 4));
    kind(
        "item-ball",
        "a hard ball where another was given",
        "ball",
        item,
        s -> List.of("foam", "plastic").contains(s.text("ball")),
        s -> s.node().put("ball", "baseball"));
    kind(
        "item-feed",
        "a feed that is none of the drill's",
        "feed|fed by",
        item,
        KindList::any,
        s -> s.node().put("feed", "cannon"));
    kind(
        "item-fed-live",
        "live pitching where there was a tee",
        "fed by live|live",
        item,
        s -> s.is("feed", "tee"),
        s -> s.node().put("feed", "live"));
    kind(
        "item-minutes",
        "an item of three hours",
        "minute",
        item,
        KindList::any,
        s -> s.node().put("minutes", 180));
    kind(
        "item-negative",
        "swings below zero",
        "swing|negative|-5",
        item,
        swung,
        s -> s.node().put("swings", -5));

    kind(
        "item-hard-home",
        "a hard ball at home",
        "home|ball",
        of(atHome(), "items"),
        s -> !s.is("ball", "none"),
        s -> s.node().put("ball", "baseball"));
    kind(
        "item-machine",
        "a drill at a machine that the club does not have",
        "machine",
        onField(),
        s -> s.filled("items"),
        s -> work(s.node(), s.text("place"), "machine-near-and-far", "baseball", "machine", 40, 6));
    kind(
        "item-overhand",
        "overhand hitting by a child under ten",
        "step|drill|age|overhand",
        KindList::children,
        s -> s.number("age") < 10 && worked(s),
        s -> older(s, "overhand-drive", "overhand"));
    kind(
        "item-live",
        "live at-bats by a child under eleven",
        "step|drill|age|live",
        KindList::children,
        s -> s.number("age") < 11 && worked(s),
        s -> older(s, "live-at-bat", "live"));
    kind(
        "item-older-step",
        "a drill for a step that the child has not reached",
        "step",
        item,
        s -> s.is("step", "drive-1") || s.is("step", "drive-2"),
        s -> s.node().put("step", "drive-6"));
    kind(
        "item-younger-step",
        "a step long done",
        "step",
        item,
        s -> s.is("step", "drive-4") || s.is("step", "drive-3"),
        s -> s.node().put("step", "drive-1"));
    kind(
        "item-twice",
        "one drill twice on a day",
        "twice|swing|minute|drill",
        item,
        swung,
        s -> s.twice("items"));
    kind(
        "item-missing",
        "one drill of a practice day is left out",
        "station|rotation|drill|swing",
        of(onFieldSoon(), "items"),
        s -> s.siblings("items").size() > 1,
        s -> s.remove("items"));
    kind(
        "item-swing-none",
        "swings in a drill without a bat",
        "bat|swing",
        item,
        s -> s.is("feed", "none"),
        s -> s.node().put("swings", 4).put("reps", 12));
    kind(
        "item-feet-far",
        "a toss from sixty feet",
        "ft|feet",
        item,
        s -> s.number("feet") > 8,
        s -> s.node().put("feet", 60));
    kind(
        "item-ball-unknown",
        "a ball that is none",
        "ball|golf",
        item,
        KindList::any,
        s -> s.node().put("ball", "golf"));
    kind(
        "item-reps-many",
        "repetitions beyond what a child does in a drill",
        "toss|rep|swing",
        item,
        swung,
        s -> s.node().put("reps", 400));
    kind(
        "item-minutes-none",
        "a drill that takes no time",
        "minute",
        item,
        swung,
        s -> s.node().put("minutes", 0));
    kind(
        "item-skill-other",
        "a drill listed under another skill",
        "skill|step|drill",
        item,
        s -> s.is("skill", "drive"),
        s -> s.node().put("skill", "see"));
    kind(
        "item-swings-text",
        "swings that are no number",
        "swing|number",
        item,
        swung,
        s -> s.node().put("swings", "many"));
  }

  private static Places atHome() {
    return plan -> days(plan).stream().filter(d -> d.is("place", "home")).toList();
  }

  private static Places onField() {
    return plan ->
        days(plan).stream().filter(d -> d.is("place", "field") || d.is("place", "cage")).toList();
  }

  /** Those of the first week, whose practices are laid out; later days are provisional. */
  private static Places onFieldSoon() {
    return plan ->
        days(plan).stream()
            .filter(d -> d.is("place", "field") || d.is("place", "cage"))
            .filter(d -> !d.node().path("provisional").asBoolean())
            .toList();
  }

  private static boolean worked(Spot child) {
    return child.node().path("days").toString().contains("\"feed\":\"tee\"");
  }

  /** Hitting of older children in place of the tee. */
  private static void older(Spot child, String drill, String feed) {
    for (JsonNode day : child.node().path("days")) {
      for (JsonNode item : day.path("items")) {
        if (item.path("feed").asText().equals("tee")) {
          ((ObjectNode) item).put("drill", drill).put("feed", feed).put("feet", 35);
        }
      }
    }
  }

  /** Work of one drill on a day, in place of what stands there. */
  static void work(
      ObjectNode day, String place, String drill, String ball, String feed, int feet, int swings) {
    day.put("place", place);
    day.putArray("items")
        .addObject()
        .put("drill", drill)
        .put("skill", "drive")
        .put("step", "drive-1")
        .put("ball", ball)
        .put("feed", feed)
        .put("feet", feet)
        .put("reps", Math.max(12, swings))
        .put("swings", swings)
        .put("minutes", 8);
  }
}
