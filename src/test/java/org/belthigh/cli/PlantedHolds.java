package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Holds: who must not do what, until when, and who ends it. */
final class PlantedHolds extends KindList {
  PlantedHolds() {
    Places hold = of(KindList::children, "holds");
    kind("hold-missing", "one hold is removed", "hold|rest|ask|pitch|complain|throw", hold, KindList::any, s -> s.remove("holds"));
    kind("hold-short", "a hold ends three days early", "until|end|hold|rest", hold, PlantedHolds::later, s -> s.node().put("until", moved(s.text("until"), -3)));
    kind("hold-ended", "a hold without end gets one", "until|end|hold", hold, s -> !later(s), s -> s.node().put("until", s.text("from")));
    kind("hold-late", "a hold begins two days late", "from|begin|hold", hold, KindList::any, s -> s.node().put("from", moved(s.text("from"), 2)));
    kind("hold-source", "a hold has no source", "source", hold, KindList::any, s -> s.node().put("source", ""));
    kind("hold-because", "a hold has no because", "because|reason", hold, KindList::any, s -> s.node().put("because", ""));
    kind("hold-rule", "a hold names an unknown rule", "rule", hold, KindList::any, s -> s.node().put("rule", "no.such.rule"));
    kind("hold-kind", "a hold on everything is one on pitching", "hold|kind|everything", hold, s -> s.is("kind", "everything"), s -> s.node().put("kind", "pitching"));
    kind("hold-who", "who ends a hold is not said", "who|end", hold, KindList::any, s -> s.node().put("who_ends", ""));
    kind("hold-by", "a hold may be ended by a coach", "end|who|role", hold, s -> s.filled("ended_by"), s -> s.node().putArray("ended_by").add("coach"));
    // MORE
  }

  private static boolean later(Spot spot) {
    return spot.node().hasNonNull("until");
  }
}
