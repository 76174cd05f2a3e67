package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.files.Fields;
import org.belthigh.files.Yaml;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Problem;
import org.belthigh.model.Skill;
import org.belthigh.words.Words;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Runs the cases of {@code rules/progress/tests}, which coaches can read. */
class ProgressRulesTest {
  private static final Catalogue CATALOGUE = CatalogueLoader.load().orThrow();

  @TestFactory
  Stream<DynamicContainer> cases_hold() {
    return RuleCase.files("progress").stream().map(ProgressRulesTest::file);
  }

  private static DynamicContainer file(Path file) {
    List<Case> cases = read(file);
    Set<String> decided = cases.stream().map(c -> c.expected().rule()).collect(Collectors.toSet());
    String rule = file.getFileName().toString().replace(".yaml", "");
    assertThat(decided).as("cases of %s that it decides", file).contains(rule);
    assertThat(decided).as("cases of %s that it does not", file).hasSizeGreaterThan(1);
    return DynamicContainer.dynamicContainer(
        file.getFileName().toString(),
        cases.stream()
            .map(c -> DynamicTest.dynamicTest(c.name(), () -> c.check(RuleBase.shared()))));
  }

  /** The cases of a file. */
  static List<Case> read(Path file) {
    List<Problem> problems = new ArrayList<>();
    List<Case> cases = new ArrayList<>();
    try {
      Yaml.read(file.toString(), Files.readString(file), problems)
          .flatMap(n -> Fields.read(n, problems, f -> f.each("cases", Case::of)))
          .ifPresent(cases::addAll);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(problems).extracting(Problem::text).isEmpty();
    return cases;
  }

  /** What is known of one player, and what must follow for one skill. */
  record Case(String name, LocalDate on, Skill skill, Logs logs, Expected expected) {
    static Case of(Fields f) {
      return new Case(
          f.text("name"),
          f.date("on"),
          f.word("skill", Skill.class),
          f.inside("given", ProgressRulesTest::given).orElseThrow(),
          f.inside("expect", Expected::of).orElseThrow());
    }

    /** Runs those rules over it and compares. */
    void check(RuleBase rules) {
      Progress progress = new Progress(CATALOGUE, rules);
      expected.check(progress.decide(logs.record(), on).get(Logs.PLAYER).get(skill.ordinal()));
    }
  }

  private static Logs given(Fields f) {
    Logs logs = new Logs(f.date("born"));
    f.each(
        "placed", p -> logs.placed(p.date("date"), p.word("skill", Skill.class), p.text("step")));
    f.each("calls", c -> logs.calls(c.date("date"), c.whole("right", 0, 99), c.whole("of", 1, 99)));
    f.each("takes", c -> logs.takes(c.date("date"), c.whole("gone", 0, 99), c.whole("of", 1, 99)));
    f.each(
        "chases", c -> logs.chases(c.date("date"), c.whole("swung", 0, 99), c.whole("of", 1, 99)));
    f.each(
        "hits",
        c ->
            logs.hits(
                c.date("date"),
                c.optionalText("drill").orElse("countdown"),
                c.whole("hard", 0, 99),
                c.whole("of", 1, 99)));
    f.each(
        "sends",
        c ->
            logs.sends(
                c.date("date"),
                c.optionalText("drill").orElse("field-call"),
                c.whole("made", 0, 99),
                c.whole("of", 1, 99)));
    f.each(
        "tallies",
        c ->
            logs.tally(
                c.date("date"),
                c.text("drill"),
                c.word("measure", MeasureKind.class),
                c.whole("made", 0, 99),
                c.whole("of", 1, 99)));
    return logs;
  }

  /**
   * What must follow; the rule is the one that decided, and no rule but those of {@code also} spoke
   * too.
   */
  record Expected(
      String rule,
      List<String> also,
      Outcome decision,
      String step,
      String next,
      String reason,
      String reasonEs) {
    static Expected of(Fields f) {
      return new Expected(
          f.text("rule"),
          f.texts("also"),
          f.word("decision", Outcome.class),
          f.text("step"),
          f.optionalText("next").orElse(""),
          f.optionalText("reason").orElse(""),
          f.optionalText("reason_es").orElse(""));
    }

    void check(SkillDecision decision) {
      assertThat(decision.rules().get(0)).as("rule").isEqualTo(rule);
      assertThat(decision.rules().stream().skip(1)).as("also").isEqualTo(also);
      assertThat(decision.outcome()).as("decision").isEqualTo(this.decision);
      assertThat(decision.step().id()).as("step").isEqualTo(step);
      assertThat(decision.next().map(s -> s.id()).orElse("")).as("next").isEqualTo(next);
      assertThat(said(decision, "en")).as("reason").contains(reason);
      assertThat(said(decision, "es")).as("reason_es").contains(reasonEs);
    }

    private static String said(SkillDecision decision, String language) {
      Words words = RuleCase.WORDS;
      decision.settles().ifPresent(p -> assertThat(words.say(p, language)).isNotBlank());
      return words.say(decision.because(), language);
    }
  }
}
