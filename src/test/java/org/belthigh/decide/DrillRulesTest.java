package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.model.Ball;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs the cases of {@code rules/drill/tests}, which coaches can read; and what holds for all. */
class DrillRulesTest {
  private static final Curriculum CURRICULUM = RuleCase.CATALOGUE.curricula().get("belthigh-2027");
  private static final Drills DRILLS = new Drills(CURRICULUM);

  @TestFactory
  Stream<DynamicContainer> cases_hold() {
    return RuleCase.files("drill").stream().map(this::file);
  }

  private DynamicContainer file(Path file) {
    List<DrillCase> cases = DrillCase.read(file);
    return DynamicContainer.dynamicContainer(
        file.toString(), cases.stream().map(c -> DynamicTest.dynamicTest(c.name(), c::check)));
  }

  private static Stream<Step> steps() {
    return Stream.of(Skill.values()).flatMap(s -> CURRICULUM.ladders().get(s).steps().stream());
  }

  private static Set<String> open(DrillQuestion asked, Skill skill) {
    Map<String, List<Reason>> against = DRILLS.against(asked);
    return CURRICULUM.drills().values().stream()
        .filter(d -> d.skill() == skill)
        .map(Drill::id)
        .filter(id -> !against.containsKey(id))
        .collect(Collectors.toSet());
  }

  @Test
  void nothing_asked_is_nothing_against() {
    assertThat(DRILLS.against(DrillQuestion.any())).isEmpty();
    assertThat(DRILLS.against(DrillQuestion.any().hitter("Ana", 4))).isEmpty();
  }

  @Test
  void each_step_leaves_its_own_drills_and_those_of_the_steps_below() {
    steps()
        .forEach(
            step ->
                assertThat(open(DrillQuestion.any().worksOn(step), step.skill()))
                    .as(step.id())
                    .isEqualTo(
                        CURRICULUM.ladders().get(step.skill()).steps().stream()
                            .filter(s -> s.rung() <= step.rung())
                            .flatMap(s -> s.drills().stream())
                            .collect(Collectors.toSet())));
  }

  @Test
  void at_home_each_step_leaves_its_own_drills_that_are_done_there() {
    Set<Ball> all = Set.of(Ball.values());
    DrillQuestion home = DrillQuestion.at(Place.HOME).grownUp().balls(all);
    steps()
        .forEach(
            step ->
                assertThat(open(home.worksOn(step), step.skill()))
                    .as(step.id())
                    .isEqualTo(
                        step.drills().stream()
                            .filter(d -> CURRICULUM.drill(d).at(Place.HOME))
                            .collect(Collectors.toSet())));
  }

  @Test
  void a_drill_of_a_step_is_never_too_early_for_a_child_below_its_age() {
    steps()
        .forEach(
            step ->
                assertThat(open(DrillQuestion.any().hitter("Ana", 4).worksOn(step), step.skill()))
                    .as(step.id())
                    .containsAll(step.drills()));
  }

  @Test
  void a_question_is_answered_once() {
    DrillQuestion one = DrillQuestion.at(Place.CAGE).grownUp();
    DrillQuestion same = DrillQuestion.at(Place.CAGE).grownUp();

    assertThat(DRILLS.against(one)).isSameAs(DRILLS.against(same));
  }
}
