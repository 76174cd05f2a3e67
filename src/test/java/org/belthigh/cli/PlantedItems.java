package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** What is done on a day. */
final class PlantedItems extends KindList {
  PlantedItems() {
    Places item = of(of(KindList::children, "days"), "items");
    Predicate<Spot> swung = s -> s.number("swings") > 0;
    kind("item-swings", "an item of 120 swings", "swing", item, swung, s -> s.node().put("swings", 120).put("reps", 120));
    kind("item-reps", "more swings than repetitions", "swing|rep", item, swung, s -> s.node().put("reps", 1));
    kind("item-drill", "a drill that is none", "drill", item, KindList::any, s -> s.node().put("drill", "no-such-drill"));
    kind("item-skill", "an item is for another skill", "skill|drive|step", item, s -> !s.is("skill", "bunt"), s -> s.node().put("skill", "no-skill"));
    kind("item-step", "an item is for a step of no curriculum", "step", item, KindList::any, s -> s.node().put("step", "drive-99"));
    kind("item-feet", "a toss from four feet", "feet|ft|distance", item, s -> s.number("feet") > 8, s -> s.node().put("feet", 4));
    kind("item-ball", "a hard ball where another was given", "ball", item, s -> List.of("foam", "plastic").contains(s.text("ball")), s -> s.node().put("ball", "baseball"));
    kind("item-feed", "a feed that is none of the drill's", "feed", item, KindList::any, s -> s.node().put("feed", "cannon"));
    kind("item-live", "live pitching where there was a tee", "live|feed|drill", item, s -> s.is("feed", "tee"), s -> s.node().put("feed", "live"));
    kind("item-minutes", "an item of three hours", "minute", item, KindList::any, s -> s.node().put("minutes", 180));
    kind("item-negative", "swings below zero", "swing|negative|-5", item, swung, s -> s.node().put("swings", -5));
    // MORE
  }
}
