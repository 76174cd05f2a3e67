package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.belthigh.intake.ClubRecord;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the rules conclude depends on no order: neither of the facts nor of the rules. What rests on
 * another conclusion is inserted logically, so it is taken back with it.
 */
class ShuffledRulesTest {
  private static final int ORDERS = 4;

  /** The same rules, each pack and the packs themselves in an order made up by lot. */
  private static List<Model> shuffled(Random random) {
    List<Model> models = new ArrayList<>();
    for (Model model : RuleBase.models()) {
      List<Rule> rules = new ArrayList<>(model.getRules());
      Collections.shuffle(rules, random);
      ModelImpl other = new ModelImpl(model.getName());
      rules.forEach(other::addRule);
      models.add(other);
    }
    Collections.shuffle(models, random);
    return models;
  }

  private static void same(List<Object> facts, RuleBase other, Random random, String run) {
    List<Verdict> verdicts = RuleBase.shared().fire(facts);
    List<Object> mixed = new ArrayList<>(facts);
    Collections.shuffle(mixed, random);

    assertThat(other.fire(mixed)).as(run).containsExactlyInAnyOrderElementsOf(verdicts);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void holds_and_arms_of_every_case_are_the_same_in_any_order(long seed) {
    Random random = new Random(seed);
    for (int order = 0; order < ORDERS; order++) {
      RuleBase other = RuleBase.of(shuffled(random));
      for (String pack : List.of("hold", "arm")) {
        for (Path file : RuleCase.files(pack)) {
          for (RuleCase one : RuleCase.read(file)) {
            ClubRecord record = one.record();
            LocalDate on = one.on();
            String run = "seed " + seed + ", " + one.file() + ": " + one.name();
            same(new Holds(RuleCase.CATALOGUE).facts(record, on), other, random, run);
            same(new Arms(RuleCase.CATALOGUE).run(record, on).facts(), other, random, run);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void progress_of_every_case_is_the_same_in_any_order(long seed) {
    Random random = new Random(seed);
    Progress progress = new Progress(RuleCase.CATALOGUE);
    for (int order = 0; order < ORDERS; order++) {
      RuleBase other = RuleBase.of(shuffled(random));
      for (ProgressCase one : ProgressCase.all()) {
        same(progress.facts(one.record(), one.on()), other, random, "seed " + seed + ", " + one);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void drills_of_every_case_are_the_same_in_any_order(long seed) {
    Random random = new Random(seed);
    RuleBase other = RuleBase.of(shuffled(random));
    for (Path file : RuleCase.files("drill")) {
      for (DrillCase one : DrillCase.read(file)) {
        String run = "seed " + seed + ", " + one.file() + ": " + one.name();
        same(one.facts(), other, random, run);
      }
    }
  }

  @Test
  void rules_are_really_in_another_order() {
    List<String> written = names(RuleBase.models());
    List<String> other = names(shuffled(new Random(1)));

    assertThat(other).isNotEqualTo(written).containsExactlyInAnyOrderElementsOf(written);
  }

  private static List<String> names(List<Model> models) {
    return models.stream().flatMap(m -> m.getRules().stream()).map(Rule::getName).toList();
  }
}
