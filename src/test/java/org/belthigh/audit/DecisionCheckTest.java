package org.belthigh.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.belthigh.audit.SmallClub.CATALOGUE;
import static org.belthigh.audit.SmallClub.FROM;
import static org.belthigh.audit.SmallClub.WORDS;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.decide.Evidence;
import org.belthigh.decide.Outcome;
import org.belthigh.decide.Progress;
import org.belthigh.decide.SkillDecision;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A decision that stands in a plan is the one that the logs lead to. Ada has called forty tosses on
 * one day; the decider is asked once, and its answer is written wrongly, key by key.
 */
class DecisionCheckTest {
  @TempDir private Path folder;
  private SmallClub club;
  private List<SkillDecision> decided;

  @BeforeEach
  void open() throws Exception {
    List<String> tosses =
        new ArrayList<>(List.of("date,player,drill,round,toss,zone,called,swing"));
    for (int i = 1; i <= 40; i++) {
      tosses.add(
          "2027-03-30,a1,zone-call,1," + i + (i % 2 == 0 ? ",5,strike,no" : ",ball,ball,no"));
    }
    club = new SmallClub(folder).with("logs/march.csv", tosses.toArray(String[]::new));
    ClubRecord group = club.record().byGroup().get("u10");
    decided = new Progress(CATALOGUE).decide(group, FROM).get("a1");
    assertThat(decided.get(0).evidence().last()).as("see was seen").isPresent();
    assertThat(decided.get(3).evidence().last()).as("send was not").isEmpty();
  }

  private static String say(Phrase phrase, String language) {
    return WORDS.say(phrase, language);
  }

  private static ObjectNode node(SkillDecision decision, String language) {
    ObjectNode node =
        JsonNodeFactory.instance
            .objectNode()
            .put("skill", decision.skill().id())
            .put("step", decision.step().id())
            .put("decision", decision.outcome().id())
            .put("next", decision.next().map(s -> s.id()).orElse(null))
            .put("because", say(decision.because(), language))
            .put("seen", decision.evidence().seen())
            .put("last_seen", decision.evidence().last().map(Object::toString).orElse(null))
            .put("settles", decision.settles().map(p -> say(p, language)).orElse(null));
    decision.rules().forEach(node.putArray("rules")::add);
    return node;
  }

  private List<String> said(String language, Consumer<ObjectNode> wrong) throws Exception {
    ObjectNode ada = JsonNodeFactory.instance.objectNode().put("player", "a1");
    ArrayNode decisions = ada.putArray("decisions");
    decided.forEach(d -> decisions.add(node(d, language)));
    wrong.accept((ObjectNode) decisions.get(0));
    ObjectNode plan = JsonNodeFactory.instance.objectNode();
    plan.putArray("players").add(ada);
    Given given = Beside.given(club, plan.toString(), SmallClub.ada());
    DecisionCheck check = new DecisionCheck(given, WORDS);
    given.children().forEach(check::check);
    return SmallClub.said(given.findings());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void what_was_decided_may_be_said_in_each_language(String language) throws Exception {
    assertThat(said(language, n -> {})).isEmpty();
  }

  @Test
  void a_decision_is_one_of_the_four() throws Exception {
    assertThat(said("en", n -> n.put("decision", "jump")))
        .containsExactly(
            "a1, see: the decision 'jump'; decisions are [move-up, keep-going, firm-up,"
                + " not-seen-enough]");
  }

  @Test
  void it_is_the_one_that_the_logs_lead_to() throws Exception {
    String own = decided.get(0).outcome().id();
    assertThat(own).isNotEqualTo("move-up");
    assertThat(said("en", n -> n.put("decision", "move-up")))
        .containsExactly(
            "a1, see: decision is move-up; by the rules and the logs of the club it is " + own);
  }

  @ParameterizedTest
  @CsvSource({"step, see-6", "next, see-6", "last_seen, 2027-03-29"})
  void so_are_step_next_and_the_last_day_seen(String key, String wrong) throws Exception {
    assertThat(said("en", n -> n.put(key, wrong)))
        .singleElement()
        .asString()
        .startsWith("a1, see: " + key + " is " + wrong + "; by the rules and the logs of the club");
  }

  @Test
  void and_how_many_tosses_were_seen() throws Exception {
    int seen = decided.get(0).evidence().seen();
    assertThat(said("en", n -> n.put("seen", seen + 1)))
        .containsExactly(
            "a1, see: seen is %d; by the rules and the logs of the club it is %d"
                .formatted(seen + 1, seen));
    assertThat(said("en", n -> n.remove("seen")))
        .singleElement()
        .asString()
        .contains("seen is nothing");
  }

  @Test
  void a_rule_is_one_of_the_catalogue_and_the_one_that_decided() throws Exception {
    assertThat(said("en", n -> n.putArray("rules").add("PRG-999")))
        .hasSize(2)
        .anyMatch(t -> t.equals("a1, see: the rule 'PRG-999'; there is no such rule"))
        .anyMatch(t -> t.startsWith("a1, see: rules is [PRG-999]; by the rules"));
    assertThat(said("en", n -> n.putArray("rules"))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"because", "settles"})
  void the_sentences_are_those_of_the_decision(String key) throws Exception {
    assertThat(said("en", n -> n.put(key, "The coach likes it.")))
        .singleElement()
        .asString()
        .startsWith(
            "a1, see: " + key + " says 'The coach likes it.'; what the logs of the club give is '");
  }

  @Test
  void decisions_of_another_skill_are_not_mixed_up() throws Exception {
    assertThat(said("en", n -> n.put("skill", "hop"))).isEmpty();
  }

  private static SkillDecision of(Skill skill, String works, String rule, String... behind) {
    Curriculum curriculum = CATALOGUE.curricula().get("belthigh-2027");
    return new SkillDecision(
        "a1",
        skill,
        curriculum.step(works).orElseThrow(),
        Outcome.KEEP_GOING,
        Optional.empty(),
        Phrase.of(rule),
        Optional.empty(),
        List.of(rule),
        Set.of(),
        new Evidence(
            List.of(),
            1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Stream.of(behind).map(b -> new Evidence.Passed(b, FROM)).toList()),
        Optional.empty());
  }

  @Test
  void who_dipped_goes_back_to_the_last_step_behind() {
    Curriculum curriculum = CATALOGUE.curricula().get("belthigh-2027");
    SkillDecision dipped = of(Skill.SEE, "see-3", "PRG-011", "see-1", "see-2", "see-4");
    SkillDecision later = of(Skill.DRIVE, "drive-2", "PRG-011", "drive-1");

    assertThat(DecisionCheck.easier(List.of(later, dipped), curriculum))
        .as("of the first skill, the highest step below")
        .contains("see-2");
    assertThat(DecisionCheck.easier(List.of(later), curriculum)).contains("drive-1");
    assertThat(
            DecisionCheck.easier(List.of(of(Skill.SEE, "see-3", "PRG-001", "see-2")), curriculum))
        .as("no dip")
        .isEmpty();
    assertThat(DecisionCheck.easier(List.of(of(Skill.SEE, "see-1", "PRG-011")), curriculum))
        .as("nothing behind")
        .isEmpty();
    assertThat(
            DecisionCheck.easier(List.of(of(Skill.SEE, "see-1", "PRG-011", "see-1")), curriculum))
        .as("not the step itself")
        .isEmpty();
  }
}
