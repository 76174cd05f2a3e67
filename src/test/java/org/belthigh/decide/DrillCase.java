package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Step;
import org.belthigh.files.Fields;
import org.belthigh.files.Yaml;
import org.belthigh.intake.Home;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.Place;
import org.belthigh.model.Problem;
import org.belthigh.model.Skill;
import org.belthigh.model.Space;
import org.belthigh.words.Words;

/**
 * One case of a file {@code rules/drill/tests/*.yaml}: a drill, what is there and who hits, and
 * what must speak against the drill. Coaches read these files, so an unknown key is a fault.
 */
record DrillCase(
    String file,
    String name,
    Curriculum curriculum,
    String drill,
    DrillQuestion asked,
    Expected want) {
  private static final Curriculum CURRICULUM = RuleCase.CATALOGUE.curricula().get("belthigh-2027");
  private static final Set<String> CLUB = Set.of("tee", "net", "screen", "machine");
  private static final Set<String> FAMILY = Set.of("tee", "net", "machine");

  /** All rules that must speak against it, and one of the sentences. */
  record Expected(List<String> rules, Optional<String> reason, Optional<String> reasonEs) {}

  /** The cases of a file. */
  static List<DrillCase> read(Path file) {
    List<Problem> problems = new ArrayList<>();
    List<DrillCase> cases = new ArrayList<>();
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

  private static DrillCase of(Path file, Fields f) {
    String name = f.text("name");
    return f.inside(
            "given",
            given -> {
              String drill = given.text("drill");
              return new DrillCase(
                  file.getFileName().toString(),
                  name,
                  given.flag("listed", true) ? CURRICULUM : without(drill),
                  drill,
                  player(given, place(given)),
                  f.inside("expect", DrillCase::expect).orElseThrow());
            })
        .orElseThrow();
  }

  private static DrillQuestion place(Fields f) {
    Optional<Place> place = f.optionalWord("place", Place.class);
    if (place.isEmpty()) {
      return DrillQuestion.any();
    }
    DrillQuestion at = DrillQuestion.at(place.get());
    at = f.flag("grown_up", true) ? at.grownUp() : at;
    return place.get() == Place.HOME ? home(f, at) : club(f, at);
  }

  private static DrillQuestion club(Fields f, DrillQuestion at) {
    return at.gear(CLUB, f.has("gear") ? Set.copyOf(f.texts("gear")) : CLUB)
        .balls(Set.of(Ball.values()));
  }

  private static DrillQuestion home(Fields f, DrillQuestion at) {
    Home home =
        new Home(
            f.optionalWord("space", Space.class).orElse(Space.YARD),
            f.has("gear")
                ? f.texts("gear").stream()
                    .map(g -> Coded.find(Home.Gear.class, g).orElseThrow())
                    .collect(Collectors.toSet())
                : Set.of(Home.Gear.values()));
    return at.gear(FAMILY, home.gear().stream().map(Coded::id).collect(Collectors.toSet()))
        .balls(
            Arrays.stream(Ball.values())
                .filter(ball -> home.instead(ball) != Ball.NONE)
                .collect(Collectors.toSet()))
        .room(
            f.optionalWhole("room", 0, 100).orElse(100),
            home.swings(),
            f.optionalWhole("age", 4, 22).orElse(10));
  }

  private static DrillQuestion player(Fields f, DrillQuestion at) {
    DrillQuestion asked = at.hitter("Ana", f.optionalWhole("age", 4, 22).orElse(10));
    for (String step : f.texts("works_on")) {
      asked = asked.worksOn(CURRICULUM.step(step).orElseThrow());
    }
    asked =
        asked
            .behind(f.texts("behind").stream().map(s -> CURRICULUM.step(s).orElseThrow()).toList())
            .held(
                f.texts("held").stream()
                    .map(k -> Coded.find(Hold.Kind.class, k).orElseThrow())
                    .collect(Collectors.toSet()));
    return f.has("swings_left")
        ? asked.swingsLeft(f.whole("swings_left", 0, 500), f.whole("tosses", 0, 500))
        : asked;
  }

  private static Expected expect(Fields f) {
    return new Expected(f.texts("rules"), f.optionalText("reason"), f.optionalText("reason_es"));
  }

  /** The curriculum with that drill on no step's list. */
  private static Curriculum without(String drill) {
    return new Curriculum(
        CURRICULUM.id(),
        CURRICULUM.version(),
        CURRICULUM.status(),
        CURRICULUM.title(),
        Stream.of(Skill.values())
            .collect(
                Collectors.toMap(
                    skill -> skill, skill -> without(drill, CURRICULUM.ladders().get(skill)))),
        CURRICULUM.drills(),
        CURRICULUM.gear());
  }

  private static Curriculum.Ladder without(String drill, Curriculum.Ladder ladder) {
    return new Curriculum.Ladder(
        ladder.skill(),
        ladder.name(),
        ladder.steps().stream().map(s -> without(drill, s)).toList());
  }

  private static Step without(String drill, Step step) {
    return new Step(
        step.id(),
        step.skill(),
        step.rung(),
        step.name(),
        step.aim(),
        step.cue(),
        step.easyCue(),
        step.letGo(),
        step.measured(),
        step.grain(),
        step.fromAge(),
        step.judgedFrom(),
        step.startFrom(),
        step.startTo(),
        step.needs(),
        step.tosses(),
        step.bars(),
        step.drills().stream().filter(d -> !d.equals(drill)).toList());
  }

  private Drills drills(RuleBase rules) {
    return new Drills(curriculum, rules);
  }

  /** What the rules are run over. */
  List<Object> facts() {
    return drills(RuleBase.shared()).facts(asked);
  }

  /** The ids of the rules that speak against the drill. */
  Set<String> fired() {
    return fired(RuleBase.shared());
  }

  private Set<String> fired(RuleBase rules) {
    return reasons(rules).stream().map(Reason::rule).collect(Collectors.toCollection(TreeSet::new));
  }

  private List<Reason> reasons(RuleBase rules) {
    Map<String, List<Reason>> against = drills(rules).against(asked);
    return against.getOrDefault(drill, List.of());
  }

  /** Runs the rules that are loaded over what is given and compares. */
  void check() {
    check(RuleBase.shared());
  }

  /** Runs {@code rules} over what is given and compares. */
  void check(RuleBase rules) {
    assertThat(curriculum.drills()).containsKey(drill);
    assertThat(fired(rules)).isEqualTo(new TreeSet<>(want.rules()));
    want.reason().ifPresent(w -> assertThat(said(rules, "en")).contains(w));
    want.reasonEs().ifPresent(w -> assertThat(said(rules, "es")).contains(w));
    Words.LANGUAGES.forEach(
        l -> assertThat(said(rules, l)).noneMatch(s -> s.contains("{") || s.isBlank()));
  }

  private List<String> said(RuleBase rules, String language) {
    return reasons(rules).stream().map(r -> RuleCase.WORDS.say(r.phrase(), language)).toList();
  }
}
