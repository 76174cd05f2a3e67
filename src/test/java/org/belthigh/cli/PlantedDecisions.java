package org.belthigh.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Decisions and their reasons. */
final class PlantedDecisions extends KindList {
  PlantedDecisions() {
    Places decision = of(KindList::children, "decisions");
    kind(
        "decision-missing",
        "a decision is missing",
        "decision|skill",
        decision,
        KindList::any,
        s -> s.remove("decisions"));
    kind(
        "decision-unknown",
        "a decision that is none",
        "decision",
        decision,
        KindList::any,
        s -> s.node().put("decision", "leap-ahead"));
    kind(
        "decision-up",
        "keep-going became move-up",
        "decision|move-up|decid",
        decision,
        s -> s.is("decision", "keep-going"),
        s -> s.node().put("decision", "move-up"));
    kind(
        "decision-loose",
        "firm-up became keep-going",
        "decision|firm-up|decid",
        decision,
        s -> s.is("decision", "firm-up"),
        s -> s.node().put("decision", "keep-going"));
    kind(
        "decision-step",
        "a decision is about a step of no curriculum",
        "step",
        decision,
        KindList::any,
        s -> s.node().put("step", "drive-99"));
    kind(
        "decision-skill",
        "a decision is about an unknown skill",
        "skill|flying",
        decision,
        KindList::any,
        s -> s.node().put("skill", "flying"));
    kind(
        "decision-rule",
        "a decision names an unknown rule",
        "rule",
        decision,
        KindList::any,
        s -> s.node().putArray("rules").add("no.such.rule"));
    kind(
        "decision-because",
        "a decision has no because",
        "because|reason",
        decision,
        KindList::any,
        s -> s.node().put("because", ""));
    kind(
        "decision-false",
        "a decision's because is untrue",
        "because|reason",
        decision,
        KindList::any,
        s -> s.node().put("because", "The coach likes it."));
    kind(
        "decision-seen",
        "more seen than logged",
        "seen|log",
        decision,
        s -> s.node().has("seen"),
        s -> s.node().put("seen", s.number("seen") + 50));

    kind(
        "decision-twice",
        "a skill has two decisions",
        "second|twice",
        decision,
        KindList::any,
        s -> s.twice("decisions"));
    kind(
        "decision-jump",
        "keep-going stands on the ladder's last step",
        "step|decision",
        decision,
        s -> s.is("decision", "keep-going") && s.is("skill", "drive") && !s.is("step", "drive-6"),
        s -> s.node().put("step", "drive-6"));
    kind(
        "decision-down",
        "keep-going became step-back",
        "decision|decid",
        decision,
        s -> s.is("decision", "keep-going"),
        s -> s.node().put("decision", "step-back"));
    kind(
        "decision-other-rule",
        "a decision names the rule of another",
        "rule",
        decision,
        s -> !s.node().path("rules").toString().contains("PRG-001"),
        s -> s.node().putArray("rules").add("PRG-001"));
    kind(
        "decision-rules-none",
        "a decision names no rule",
        "rule",
        decision,
        s -> s.filled("rules"),
        s -> s.node().putArray("rules"));
    kind(
        "decision-last",
        "last seen on another day",
        "last|seen",
        decision,
        s -> s.node().hasNonNull("last_seen"),
        s -> s.node().put("last_seen", moved(s.text("last_seen"), -3)));
    kind(
        "decision-settles",
        "what would settle it is another",
        "settles",
        decision,
        s -> s.node().hasNonNull("settles"),
        s -> s.node().put("settles", "nothing at all"));
    kind(
        "decision-next",
        "the next step is one of no curriculum",
        "next|step",
        decision,
        KindList::any,
        s -> s.node().put("next", "drive-99"));
    kind(
        "decision-swapped",
        "two decisions have each other's because",
        "because",
        KindList::children,
        s ->
            s.node().path("decisions").size() > 1
                && !s.node().at("/decisions/0/because").equals(s.node().at("/decisions/1/because")),
        PlantedDecisions::swap);
  }

  private static void swap(Spot child) {
    ObjectNode one = (ObjectNode) child.node().at("/decisions/0");
    ObjectNode other = (ObjectNode) child.node().at("/decisions/1");
    String because = one.path("because").asText();
    one.put("because", other.path("because").asText());
    other.put("because", because);
  }
}
