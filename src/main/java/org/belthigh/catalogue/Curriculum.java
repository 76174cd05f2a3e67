package org.belthigh.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.belthigh.model.LocalText;
import org.belthigh.model.Skill;

/**
 * What is taught in which order: four ladders of steps, and the drills they use.
 *
 * @param ladders one per skill, in the order of {@link Skill}
 * @param drills by id
 * @param gear names of things needed, by id
 */
public record Curriculum(
    String id,
    String version,
    String status,
    LocalText title,
    Map<Skill, Ladder> ladders,
    Map<String, Drill> drills,
    Map<String, LocalText> gear) {
  public Curriculum {
    ladders = Map.copyOf(ladders);
    drills = Map.copyOf(drills);
    gear = Map.copyOf(gear);
  }

  /**
   * The steps of one skill, first rung first.
   *
   * @param name the skill's name for people, such as "Call the spot"
   */
  public record Ladder(Skill skill, LocalText name, List<Step> steps) {
    public Ladder {
      steps = List.copyOf(steps);
    }

    /** Where a player of {@code age} without a log begins. */
    public Step start(int age) {
      return steps.stream()
          .filter(s -> s.startsAt(age))
          .findFirst()
          .orElse(age < steps.get(0).fromAge() ? steps.get(0) : steps.get(steps.size() - 1));
    }
  }

  /** The step with that id; empty where there is none. */
  public Optional<Step> step(String stepId) {
    return ladders.values().stream()
        .flatMap(l -> l.steps().stream())
        .filter(s -> s.id().equals(stepId))
        .findFirst();
  }

  /** The step above {@code step}; empty at the top. */
  public Optional<Step> after(Step step) {
    List<Step> steps = ladders.get(step.skill()).steps();
    return step.rung() < steps.size() ? Optional.of(steps.get(step.rung())) : Optional.empty();
  }

  /** The drill with that id. @throws IllegalArgumentException if there is none */
  public Drill drill(String drillId) {
    Drill drill = drills.get(drillId);
    if (drill == null) {
      throw new IllegalArgumentException("No drill '" + drillId + "' in curriculum " + id);
    }
    return drill;
  }

  /** The drills of a skill: those of its steps, easiest first, then the others by id. */
  public List<Drill> drills(Skill skill) {
    return Stream.concat(
            ladders.get(skill).steps().stream().flatMap(step -> step.drills().stream()),
            drills.keySet().stream().sorted())
        .map(drills::get)
        .filter(drill -> drill.skill() == skill)
        .distinct()
        .toList();
  }
}
