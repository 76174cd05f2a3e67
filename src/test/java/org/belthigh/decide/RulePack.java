package org.belthigh.decide;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;

/** A pack of rules beside the cases that state them, so that its rules can be tried changed. */
enum RulePack {
  /** Cases of holds ask who may pitch too. */
  HOLD("hold", "hold arm"),
  /** A hold keeps from pitching. */
  ARM("arm", "hold arm"),
  PROGRESS("progress", "progress"),
  DRILL("drill", "drill");

  /**
   * One case of the pack.
   *
   * @param file the rule that its file is named after
   * @param check fails where those rules do not lead to what the case says
   */
  record Case(String file, String name, Consumer<RuleBase> check) {}

  private final String id;
  private final String needed;

  /** The packs whose rules its cases need are one word each. */
  RulePack(String id, String needed) {
    this.id = id;
    this.needed = needed;
  }

  /** The directory below {@code rules/}. */
  String id() {
    return id;
  }

  /** Ids of its rules, as they stand in it. */
  List<String> rules() {
    return own(models()).getRules().stream().map(Rule::getName).toList();
  }

  /** The mistakes that can be made in one of its rules. Each call makes all of them anew. */
  List<RuleMutant> mutants(String rule) {
    return RuleMutants.of(named(own(models()), rule));
  }

  /** What its cases need, without a mistake. */
  RuleBase asWritten() {
    return RuleBase.of(models());
  }

  /**
   * What its cases need, with the mistakes of those numbers in that rule, one after the other. A
   * number counts in {@link RuleMutants#of}. All is made anew, so that nothing is left of another
   * mistake.
   */
  RuleBase with(String rule, int... mistakes) {
    List<Model> models = models();
    Model own = own(models);
    Optional<Rule> mutant = Optional.of(named(own, rule));
    for (int mistake : mistakes) {
      mutant = mutant.flatMap(r -> RuleMutants.of(r).get(mistake).rule());
    }
    models.set(models.indexOf(own), with(own, rule, mutant));
    return RuleBase.of(models);
  }

  private static Model with(Model model, String rule, Optional<Rule> other) {
    ModelImpl changed = new ModelImpl(model.getName());
    for (Rule one : model.getRules()) {
      (one.getName().equals(rule) ? other : Optional.of(one)).ifPresent(changed::addRule);
    }
    return changed;
  }

  private List<Model> models() {
    List<Model> models = new ArrayList<>(RuleBase.models());
    List<String> names = List.of(needed.split(" "));
    models.removeIf(m -> !names.contains(m.getName().replace("rules.", "")));
    return models;
  }

  private Model own(List<Model> models) {
    return models.stream().filter(m -> m.getName().equals("rules." + id)).findFirst().orElseThrow();
  }

  private static Rule named(Model model, String name) {
    return model.getRules().stream()
        .filter(r -> r.getName().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** All of its cases; those of {@code rule} first. */
  List<Case> cases(String rule) {
    return RuleCase.files(id).stream()
        .flatMap(this::cases)
        .sorted(Comparator.comparing((Case c) -> !c.file().equals(rule)))
        .toList();
  }

  private Stream<Case> cases(Path file) {
    String rule = file.getFileName().toString().replace(".yaml", "");
    return switch (this) {
      case PROGRESS ->
          ProgressCase.read(file).stream().map(c -> new Case(rule, c.name(), c::check));
      case DRILL -> DrillCase.read(file).stream().map(c -> new Case(rule, c.name(), c::check));
      case HOLD, ARM -> RuleCase.read(file).stream().map(c -> new Case(rule, c.name(), c::check));
    };
  }
}
