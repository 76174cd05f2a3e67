package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
  private static final Progress PROGRESS = new Progress(CatalogueLoader.load().orThrow());

  @TestFactory
  Stream<DynamicContainer> cases_hold() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("rules/progress/tests"))) {
      return files.sorted().toList().stream().map(this::file);
    }
  }

  private DynamicContainer file(Path file) {
    List<Problem> problems = new ArrayList<>();
    List<DynamicTest> tests = new ArrayList<>();
    Map<String, Integer> decided = new HashMap<>();
    try {
      Yaml.read(file.toString(), Files.readString(file), problems)
          .flatMap(n -> Fields.read(n, problems, f -> f.each("cases", c -> test(c, decided))))
          .ifPresent(tests::addAll);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(problems).extracting(Problem::text).isEmpty();
    String rule = file.getFileName().toString().replace(".yaml", "");
    assertThat(decided.get(rule)).as("cases of %s that it decides", file).isNotNull();
    assertThat(decided.keySet()).as("cases of %s that it does not", file).hasSizeGreaterThan(1);
    return DynamicContainer.dynamicContainer(file.getFileName().toString(), tests);
  }

  private DynamicTest test(Fields f, Map<String, Integer> decided) {
    String name = f.text("name");
    LocalDate on = f.date("on");
    Skill skill = f.word("skill", Skill.class);
    Logs logs = f.inside("given", ProgressRulesTest::given).orElseThrow();
    Expected expected = f.inside("expect", Expected::of).orElseThrow();
    decided.merge(expected.rule(), 1, Integer::sum);
    return DynamicTest.dynamicTest(name, () -> expected.check(decide(logs, on, skill)));
  }

  private static SkillDecision decide(Logs logs, LocalDate on, Skill skill) {
    return PROGRESS.decide(logs.record(), on).get(Logs.PLAYER).get(skill.ordinal());
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

  /** What must follow; the rule is the one that decided. */
  private record Expected(
      String rule, Outcome decision, String step, String next, String reason, String reasonEs) {
    static Expected of(Fields f) {
      return new Expected(
          f.text("rule"),
          f.word("decision", Outcome.class),
          f.text("step"),
          f.optionalText("next").orElse(""),
          f.optionalText("reason").orElse(""),
          f.optionalText("reason_es").orElse(""));
    }

    void check(SkillDecision decision) {
      assertThat(decision.rules().get(0)).as("rule").isEqualTo(rule);
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
