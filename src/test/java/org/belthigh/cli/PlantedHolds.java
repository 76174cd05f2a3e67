package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Holds: who must not do what, until when, and who ends it. */
final class PlantedHolds extends KindList {
  PlantedHolds() {
    Places hold = of(KindList::children, "holds");
    kind(
        "hold-missing",
        "one hold is removed",
        "hold|rest|ask|pitch|complain|throw",
        hold,
        KindList::any,
        s -> s.remove("holds"));
    kind(
        "hold-short",
        "a hold ends three days early",
        "until|end|hold|rest",
        hold,
        PlantedHolds::later,
        s -> s.node().put("until", moved(s.text("until"), -3)));
    kind(
        "hold-ended",
        "a hold without end gets one",
        "until|end|hold",
        hold,
        s -> !later(s),
        s -> s.node().put("until", s.text("from")));
    kind(
        "hold-late",
        "a hold begins two days late",
        "from|begin|hold",
        hold,
        KindList::any,
        s -> s.node().put("from", moved(s.text("from"), 2)));
    kind(
        "hold-source",
        "a hold has no source",
        "source",
        hold,
        KindList::any,
        s -> s.node().put("source", ""));
    kind(
        "hold-because",
        "a hold has no because",
        "because|reason",
        hold,
        KindList::any,
        s -> s.node().put("because", ""));
    kind(
        "hold-rule",
        "a hold names an unknown rule",
        "rule",
        hold,
        KindList::any,
        s -> s.node().put("rule", "no.such.rule"));
    kind(
        "hold-kind",
        "a hold on everything is one on pitching",
        "hold|kind|everything",
        hold,
        s -> s.is("kind", "everything"),
        s -> s.node().put("kind", "pitching"));
    kind(
        "hold-who",
        "who ends a hold is not said",
        "who|end",
        hold,
        KindList::any,
        s -> s.node().put("who_ends", ""));
    kind(
        "hold-by",
        "a hold may be ended by a coach",
        "end|who|role",
        hold,
        s -> s.filled("ended_by"),
        s -> s.node().putArray("ended_by").add("coach"));

    kind(
        "hold-longer",
        "a hold ends three days late",
        "until|end|hold",
        hold,
        PlantedHolds::later,
        s -> s.node().put("until", moved(s.text("until"), 3)));
    kind(
        "hold-forever",
        "a rest never ends",
        "until|end|hold",
        hold,
        PlantedHolds::later,
        s -> s.node().putNull("until"));
    kind(
        "hold-twice",
        "a hold stands there twice",
        "twice|again|hold",
        hold,
        KindList::any,
        s -> s.twice("holds"));
    kind(
        "hold-invented",
        "a hold that nothing calls for",
        "hold",
        KindList::children,
        s -> !s.filled("holds"),
        s ->
            s.node()
                .withArray("holds")
                .addObject()
                .put("kind", "everything")
                .put("from", moved(s.node().at("/days/0/date").asText(), 0))
                .putNull("until")
                .put("because", "Nothing.")
                .put("rule", "HLD-001")
                .put("source", "ours")
                .put("who_ends", "Nobody.")
                .putArray("ended_by"));
    kind(
        "hold-unknown",
        "a hold on something unknown",
        "hold",
        hold,
        KindList::any,
        s -> s.node().put("kind", "singing"));
    kind(
        "hold-throwing",
        "a hold on throwing is one on swinging",
        "hold",
        hold,
        s -> s.is("kind", "throwing"),
        s -> s.node().put("kind", "swinging"));
    kind(
        "hold-by-none",
        "nobody is named who may end a hold",
        "end",
        hold,
        s -> s.filled("ended_by"),
        s -> s.node().putArray("ended_by"));
    kind(
        "hold-by-more",
        "a parent may end a hold of a physician",
        "end",
        hold,
        s ->
            s.node().path("ended_by").toString().contains("physician")
                && !s.node().path("ended_by").toString().contains("parent"),
        s -> s.list("ended_by").add("parent"));
    kind(
        "hold-false",
        "a hold's because is untrue",
        "because",
        hold,
        KindList::any,
        s -> s.node().put("because", "The coach likes it."));
    kind(
        "hold-other-source",
        "a hold has another source",
        "source",
        hold,
        KindList::any,
        s -> s.node().put("source", "A book that nobody wrote"));
    kind(
        "hold-other-rule",
        "a hold names the rule of another",
        "rule",
        hold,
        s -> !s.is("rule", "PRG-001"),
        s -> s.node().put("rule", "PRG-001"));
    kind(
        "hold-work",
        "swings on a day that a hold forbids",
        "hold",
        KindList::children,
        PlantedHolds::held,
        PlantedHolds::swing);
  }

  private static boolean later(Spot spot) {
    return spot.node().hasNonNull("until");
  }

  /** Whether the child's first hold without end is on everything or on swinging. */
  private static boolean held(Spot child) {
    JsonNode hold = child.node().at("/holds/0");
    return List.of("everything", "swinging").contains(hold.path("kind").asText())
        && !hold.hasNonNull("until")
        && child.filled("days");
  }

  private static void swing(Spot child) {
    ObjectNode day = (ObjectNode) child.node().path("days").get(child.list("days").size() - 1);
    PlantedItems.work(day, "field", "tee-belt-high", "baseball", "tee", 0, 6);
  }
}
