package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Practices and who is where. */
final class PlantedPractices extends KindList {
  PlantedPractices() {
    Places practice = KindList::practices;
    kind("practice-missing", "a practice is missing", "practice|miss", practice, KindList::any, s -> s.remove("practices"));
    kind("practice-twice", "a practice stands there twice", "twice|again|more than once", practice, KindList::any, s -> s.twice("practices"));
    kind("practice-moved", "a practice is on a day of no practice", "practice|calendar|event", practice, KindList::any, s -> s.node().put("date", moved(s.text("date"), 300)));
    kind("practice-group", "a practice is of an unknown group", "group", practice, KindList::any, s -> s.node().put("group", "g9"));
    kind("practice-adults", "more adults than the calendar has", "adult", practice, KindList::any, s -> s.node().put("adults", s.number("adults") + 4));
    kind("practice-minutes", "more hitting minutes than the practice has", "minute", practice, KindList::any, s -> s.node().put("hitting_minutes", 400));
    kind("practice-place", "cage work at a field", "place|cage", practice, s -> s.is("place", "field"), s -> s.node().put("place", "cage"));
    kind("practice-gear", "the gear list is emptied", "gear|bring", practice, s -> s.filled("gear"), s -> s.node().putArray("gear"));
    kind("practice-cautions", "the safety box is emptied", "caution|safety", practice, s -> s.filled("cautions"), s -> s.node().putArray("cautions"));
    kind("practice-nothrow", "who may not throw is emptied", "throw", practice, s -> s.filled("no_throwing"), s -> s.node().putArray("no_throwing"));
    kind("practice-noswing", "who may not swing is emptied", "swing", practice, s -> s.filled("no_swinging"), s -> s.node().putArray("no_swinging"));
    kind("rotations-none", "the rotations are emptied", "rotation|station|turn", practice, s -> s.filled("rotations"), s -> s.node().putArray("rotations"));
    Places turn = of(practice, "rotations");
    kind("rotation-minute", "a rotation begins late", "rotation|minute", turn, s -> s.node().has("minute"), s -> s.node().put("minute", s.number("minute") + 90));
    Places post = of(turn, "posts");
    kind("post-unknown", "a child of no roster hits at a station", "no-child|roster", post, s -> s.node().path("players").isArray(), s -> s.list("players").add("no-child"));
    // MORE
  }
}
