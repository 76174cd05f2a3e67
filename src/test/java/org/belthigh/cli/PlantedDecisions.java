package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Decisions and their reasons. */
final class PlantedDecisions extends KindList {
  PlantedDecisions() {
    Places decision = of(KindList::children, "decisions");
    kind("decision-missing", "a decision is missing", "decision|skill", decision, KindList::any, s -> s.remove("decisions"));
    kind("decision-unknown", "a decision that is none", "decision", decision, KindList::any, s -> s.node().put("decision", "leap-ahead"));
    kind("decision-up", "keep-going became move-up", "decision|move-up|decid", decision, s -> s.is("decision", "keep-going"), s -> s.node().put("decision", "move-up"));
    kind("decision-loose", "firm-up became keep-going", "decision|firm-up|decid", decision, s -> s.is("decision", "firm-up"), s -> s.node().put("decision", "keep-going"));
    kind("decision-step", "a decision is about a step of no curriculum", "step", decision, KindList::any, s -> s.node().put("step", "drive-99"));
    kind("decision-skill", "a decision is about an unknown skill", "skill", decision, KindList::any, s -> s.node().put("skill", "flying"));
    kind("decision-rule", "a decision names an unknown rule", "rule", decision, KindList::any, s -> s.node().putArray("rules").add("no.such.rule"));
    kind("decision-because", "a decision has no because", "because|reason", decision, KindList::any, s -> s.node().put("because", ""));
    kind("decision-false", "a decision's because is untrue", "because|reason", decision, KindList::any, s -> s.node().put("because", "The coach likes it."));
    kind("decision-seen", "more seen than logged", "seen|log", decision, s -> s.node().has("seen"), s -> s.node().put("seen", s.number("seen") + 50));
    // MORE
  }
}
