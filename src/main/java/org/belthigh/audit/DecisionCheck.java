package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.Progress;
import org.belthigh.decide.SkillDecision;
import org.belthigh.model.Phrase;
import org.belthigh.words.Words;

/**
 * Each decision is the one that the logs of the club folder lead to. The decider is asked again,
 * with the club folder as it is read now: that the plan says what was decided is seen, that the
 * decider decides rightly is not.
 */
final class DecisionCheck {
  /** The rule by which a hitter has dipped. */
  private static final String DIP = "PRG-011";

  private static final List<String> OUTCOMES =
      List.of("move-up", "keep-going", "firm-up", "not-seen-enough");

  private final Given given;
  private final Words words;
  private final Map<String, List<SkillDecision>> decided = new HashMap<>();

  DecisionCheck(Given given, Words words) {
    this.given = given;
    this.words = words;
    Progress progress = new Progress(given.catalogue());
    given
        .record()
        .byGroup()
        .values()
        .forEach(group -> decided.putAll(progress.decide(group, given.plan().from())));
  }

  /** What the decider says of a child, skill by skill. */
  private List<SkillDecision> of(Given.Child child) {
    return decided.getOrDefault(child.id(), List.of());
  }

  /**
   * The step that a hitter who dipped goes back to for a week: of the first such skill the last
   * step that the log shows behind the hitter.
   */
  Optional<String> easier(Given.Child child) {
    return easier(of(child), given.curriculum());
  }

  static Optional<String> easier(List<SkillDecision> decided, Curriculum curriculum) {
    return decided.stream()
        .filter(d -> d.rules().contains(DIP))
        .min(Comparator.comparing(SkillDecision::skill))
        .flatMap(
            dipped ->
                dipped.evidence().passed().stream()
                    .flatMap(p -> curriculum.step(p.step()).stream())
                    .filter(s -> s.rung() < dipped.step().rung())
                    .max(Comparator.comparingInt(Step::rung)))
        .map(Step::id);
  }

  void check(Given.Child child) {
    List<SkillDecision> own = of(child);
    for (JsonNode said : child.said().path("decisions")) {
      own.stream()
          .filter(d -> d.skill().id().equals(said.path("skill").asText()))
          .forEach(d -> decision(child.id() + ", " + d.skill().id(), said, d));
    }
  }

  private void decision(String where, JsonNode said, SkillDecision own) {
    String outcome = said.path("decision").asText();
    if (!OUTCOMES.contains(outcome)) {
      given.fault(where, "the decision '" + outcome + "'", "decisions are " + OUTCOMES);
    } else {
      same(where, "decision", outcome, own.outcome().id());
    }
    same(where, "step", said.path("step").asText(), own.step().id());
    same(where, "next", text(said.path("next")), own.next().map(Step::id).orElse("nothing"));
    List<String> rules = Given.words(said, "rules");
    rules.stream()
        .filter(r -> !given.catalogue().rules().containsKey(r))
        .forEach(r -> given.fault(where, "the rule '" + r + "'", "there is no such rule"));
    same(where, "rules", rules.toString(), own.rules().toString());
    says(where, "because", said.path("because"), Optional.of(own.because()));
    says(where, "settles", said.path("settles"), own.settles());
    same(where, "seen", text(said.path("seen")), own.evidence().seen() + "");
    same(
        where,
        "last_seen",
        text(said.path("last_seen")),
        own.evidence().last().map(Object::toString).orElse("nothing"));
  }

  private static String text(JsonNode node) {
    return node.isNull() || node.isMissingNode() ? "nothing" : node.asText();
  }

  private void same(String where, String key, String found, String wanted) {
    if (!found.equals(wanted)) {
      given.fault(
          where, key + " is " + found, "by the rules and the logs of the club it is " + wanted);
    }
  }

  private void says(String where, String key, JsonNode found, Optional<Phrase> wanted) {
    List<String> sentences = new ArrayList<>();
    wanted.ifPresent(p -> Words.LANGUAGES.forEach(l -> sentences.add(words.say(p, l))));
    if (sentences.isEmpty()) {
      sentences.add("nothing");
    }
    if (!sentences.contains(text(found))) {
      given.fault(
          where,
          key + " says '" + text(found) + "'",
          "what the logs of the club give is '" + sentences.get(0) + "'");
    }
  }
}
