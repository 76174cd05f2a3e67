package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.files.Fields;
import org.belthigh.files.Yaml;
import org.belthigh.intake.ClubRecord;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Problem;
import org.belthigh.model.Skill;
import org.belthigh.words.Words;

/**
 * One case of a file {@code rules/progress/tests/*.yaml}: what one player logged, and what must
 * follow for a skill. Coaches read these files, so an unknown key is a fault.
 */
record ProgressCase(
    String file, String name, LocalDate on, Skill skill, ClubRecord record, Expected expected) {
  /** The cases of all files. */
  static List<ProgressCase> all() {
    return RuleCase.files("progress").stream().flatMap(f -> read(f).stream()).toList();
  }

  /** The cases of a file. */
  static List<ProgressCase> read(Path file) {
    List<Problem> problems = new ArrayList<>();
    List<ProgressCase> cases = new ArrayList<>();
    try {
      Yaml.read(file.toString(), Files.readString(file), problems)
          .flatMap(n -> Fields.read(n, problems, f -> f.each("cases", c -> of(file, c))))
          .ifPresent(cases::addAll);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(problems).extracting(Problem::text).isEmpty();
    assertThat(cases).as("cases of %s", file).isNotEmpty();
    return cases;
  }

  private static ProgressCase of(Path file, Fields f) {
    return new ProgressCase(
        file.getFileName().toString(),
        f.text("name"),
        f.date("on"),
        f.word("skill", Skill.class),
        f.inside("given", ProgressCase::given).orElseThrow().record(),
        f.inside("expect", Expected::of).orElseThrow());
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

  /** Runs the rules that are loaded over what is given and compares. */
  void check() {
    check(RuleBase.shared());
  }

  /** The record amid children of other ages, one who does everything well and one who does not. */
  ClubRecord amidOthers() {
    ClubRecord good = log(new Logs("p81", on.minusYears(15)), 12, 12).record();
    ClubRecord poor = log(new Logs("p82", on.minusYears(9)), 2, 12).record();
    return new ClubRecord(
        record.club(),
        all(record.players(), good.players(), poor.players()),
        record.events(),
        all(record.tosses(), good.tosses(), poor.tosses()),
        record.tallies(),
        record.outings(),
        record.wellness(),
        record.otherSports(),
        record.placements(),
        record.unread(),
        record.problems());
  }

  private Logs log(Logs logs, int good, int of) {
    for (int back : new int[] {0, 1, 3, 5, 20}) {
      LocalDate day = on.minusDays(back);
      logs.calls(day, good, of)
          .takes(day, of - good, of)
          .chases(day, of - good, of)
          .hits(day, "countdown", good, of)
          .sends(day, "field-call", good, of);
    }
    return logs;
  }

  private static <T> List<T> all(List<T> own, List<T> good, List<T> poor) {
    return Stream.of(own, good, poor).flatMap(List::stream).toList();
  }

  /** Runs {@code rules} over what is given and compares. */
  void check(RuleBase rules) {
    Progress progress = new Progress(RuleCase.CATALOGUE, rules);
    for (ClubRecord asked : List.of(record, amidOthers())) {
      expected.check(progress.decide(asked, on).get(Logs.PLAYER).get(skill.ordinal()));
    }
    if (!expected.fired().isEmpty() || !expected.notFired().isEmpty()) {
      assertThat(fired(rules))
          .containsAll(expected.fired())
          .noneMatch(expected.notFired()::contains);
    }
  }

  /** Ids of the rules that fired about the skill on the day itself. */
  Set<String> fired(RuleBase rules) {
    return rules.why(new Progress(RuleCase.CATALOGUE, rules).facts(record, on)).stream()
        .filter(because -> because.matched().stream().anyMatch(this::isAbout))
        .map(Because::rule)
        .collect(Collectors.toSet());
  }

  private boolean isAbout(Object fact) {
    return fact instanceof Standing standing
        ? standing.skill() == skill
        : fact instanceof SeenEnough seen
            ? seen.standing().skill() == skill
            : fact instanceof Judged judged
                ? judged.standing().skill() == skill
                : fact instanceof FloorProved floor
                    ? floor.standing().skill() == skill
                    : fact instanceof Undecided open && open.standing().skill() == skill;
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
      String reasonEs,
      Optional<String> provedOn,
      Optional<List<String>> passed,
      List<String> fired,
      List<String> notFired) {
    static Expected of(Fields f) {
      return new Expected(
          f.text("rule"),
          f.texts("also"),
          f.word("decision", Outcome.class),
          f.text("step"),
          f.optionalText("next").orElse(""),
          f.optionalText("reason").orElse(""),
          f.optionalText("reason_es").orElse(""),
          f.optionalText("proved_on"),
          f.has("passed") ? Optional.of(f.texts("passed")) : Optional.empty(),
          f.texts("fired"),
          f.texts("not_fired"));
    }

    void check(SkillDecision decision) {
      assertThat(decision.rules().get(0)).as("rule").isEqualTo(rule);
      assertThat(decision.rules().stream().skip(1)).as("also").isEqualTo(also);
      assertThat(decision.outcome()).as("decision").isEqualTo(this.decision);
      assertThat(decision.step().id()).as("step").isEqualTo(step);
      assertThat(decision.next().map(s -> s.id()).orElse("")).as("next").isEqualTo(next);
      provedOn.ifPresent(w -> assertThat(day(decision)).as("proved_on").isEqualTo(w));
      passed.ifPresent(w -> assertThat(passed(decision)).as("passed").isEqualTo(w));
      assertThat(said(decision, "en")).as("reason").contains(reason);
      assertThat(said(decision, "es")).as("reason_es").contains(reasonEs);
    }

    private static String day(SkillDecision decision) {
      return decision.evidence().provedOn().map(LocalDate::toString).orElse("none");
    }

    private static List<String> passed(SkillDecision decision) {
      return decision.evidence().passed().stream().map(p -> p.step() + " " + p.on()).toList();
    }

    private static String said(SkillDecision decision, String language) {
      Words words = RuleCase.WORDS;
      decision.settles().ifPresent(p -> assertThat(words.say(p, language)).isNotBlank());
      return words.say(decision.because(), language);
    }
  }

  @Override
  public String toString() {
    return file + ": " + name;
  }
}
