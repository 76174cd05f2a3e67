package org.belthigh.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Feed;
import org.belthigh.model.Phrase;
import org.belthigh.model.Skill;

/**
 * Which drills of a curriculum may not be chosen, and why.
 *
 * <p>The rules run once for each question; its answer is kept, since a plan asks the same ones over
 * and over. May be shared by threads.
 */
public final class Drills {
  /** What a drill that a machine feeds needs, whether or not its own list says so. */
  private static final String MACHINE = "machine";

  private final RuleBase rules;
  private final Curriculum curriculum;
  private final List<Drill> drills;
  private final Map<DrillQuestion, Map<String, List<Reason>>> answers = new ConcurrentHashMap<>();

  /** The drills of {@code curriculum}. */
  public Drills(Curriculum curriculum) {
    this(curriculum, RuleBase.shared());
  }

  /** What other rules would lead to. */
  Drills(Curriculum curriculum, RuleBase rules) {
    this.curriculum = curriculum;
    this.rules = rules;
    this.drills =
        curriculum.drills().values().stream().sorted(Comparator.comparing(Drill::id)).toList();
  }

  /**
   * What speaks against drills, by their ids; one that is not among the keys may be chosen. The
   * reasons of a drill are in the order of their rules.
   */
  public Map<String, List<Reason>> against(DrillQuestion asked) {
    return answers.computeIfAbsent(asked, this::answer);
  }

  /** Whether no rule rejects {@code drill}. */
  public boolean open(Drill drill, DrillQuestion asked) {
    return !against(asked).containsKey(drill.id());
  }

  private Map<String, List<Reason>> answer(DrillQuestion asked) {
    Map<String, List<Reason>> reasons = new TreeMap<>();
    for (Verdict verdict : rules.fire(facts(asked))) {
      if (verdict instanceof DrillVerdict against) {
        Phrase says =
            asked.name().map(n -> against.says().with("player", n)).orElse(against.says());
        reasons
            .computeIfAbsent(against.drill().id(), id -> new ArrayList<>())
            .add(new Reason(against.rule(), says));
      }
    }
    reasons.replaceAll((id, list) -> List.copyOf(list));
    return reasons;
  }

  /** What is asked, and what the drills ask for in that respect. */
  List<Object> facts(DrillQuestion asked) {
    List<Object> facts = new ArrayList<>(asked.facts());
    drills.forEach(d -> facts.add(new DrillAsked(d.id(), d.skill(), d.swing())));
    if (asked.about(PlaceAsked.class)) {
      drills.forEach(d -> facts.addAll(there(d)));
    }
    asked.reach().ifPresent(age -> drills.forEach(d -> facts.add(reach(d, age))));
    if (asked.about(WorksOn.class)) {
      steps().forEach(step -> facts.addAll(order(step)));
    }
    return facts;
  }

  /** Where a drill is done, with what and with whom. */
  private List<Object> there(Drill drill) {
    List<Object> facts = new ArrayList<>();
    drill.balls().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(at -> facts.add(new DrillAt(drill.id(), at.getKey(), at.getValue())));
    Stream.concat(
            drill.gear().stream(), Stream.of(MACHINE).filter(m -> drill.feed() == Feed.MACHINE))
        .distinct()
        .map(gear -> new DrillGear(drill.id(), gear, curriculum.gear().get(gear)))
        .forEach(facts::add);
    if (drill.adults() > 0) {
      facts.add(new DrillHands(drill.id(), Hands.GROWN_UP));
    }
    if (drill.helpers() > 0) {
      facts.add(new DrillHands(drill.id(), Hands.HELPER));
    }
    return facts;
  }

  private static DrillReach reach(Drill drill, AgeBand age) {
    return new DrillReach(drill.id(), drill.feet().getOrDefault(age, 0));
  }

  private Stream<Step> steps() {
    return Stream.of(Skill.values())
        .flatMap(skill -> curriculum.ladders().get(skill).steps().stream());
  }

  /** Which drills a step lists, and what it needs. */
  private List<Object> order(Step step) {
    List<Object> facts = new ArrayList<>();
    step.drills().stream()
        .distinct()
        .map(
            id ->
                new DrillOf(id, step.skill(), step.id(), step.name(), step.rung(), step.fromAge()))
        .forEach(facts::add);
    step.needs().stream()
        .distinct()
        .map(id -> new StepNeeds(step.id(), id, curriculum.step(id).map(Step::name).orElseThrow()))
        .forEach(facts::add);
    return facts;
  }
}
