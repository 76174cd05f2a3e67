package org.belthigh.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.belthigh.catalogue.Step;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Ball;
import org.belthigh.model.Place;

/**
 * What drills are asked about: a place, a player, or both. What is not said is not asked, so
 * nothing is rejected for it. Questions that say the same in the same order are equal.
 */
public final class DrillQuestion {
  private final List<Object> facts;
  private final Optional<AgeBand> reach;

  private DrillQuestion(List<Object> facts, Optional<AgeBand> reach) {
    this.facts = List.copyOf(facts);
    this.reach = reach;
  }

  /** About nothing yet. */
  public static DrillQuestion any() {
    return new DrillQuestion(List.of(), Optional.empty());
  }

  /** About that place, at which nobody and nothing is yet. */
  public static DrillQuestion at(Place place) {
    return any().and(Stream.of(new PlaceAsked(place)));
  }

  /** A grown-up is there. */
  public DrillQuestion grownUp() {
    return and(Stream.of(new HandsThere(Hands.GROWN_UP)));
  }

  /** Of the gear {@code counted} only that in {@code there} is there; any other gear is. */
  public DrillQuestion gear(Set<String> counted, Set<String> there) {
    return and(
        Stream.concat(
            counted.stream().sorted().map(GearCounted::new),
            there.stream().sorted().map(GearThere::new)));
  }

  /** These balls are at hand, or others that take their place. */
  public DrillQuestion balls(Set<Ball> balls) {
    return and(Arrays.stream(Ball.values()).filter(balls::contains).map(BallThere::new));
  }

  /**
   * There is no more room than that.
   *
   * @param feet farthest toss
   * @param swings whether a bat may be swung
   * @param age of the hitter, in whole years, by which drills are tossed from nearer or farther
   */
  public DrillQuestion room(int feet, boolean swings, int age) {
    return new DrillQuestion(
        and(Stream.of(new RoomThere(feet, swings))).facts, Optional.of(AgeBand.of(age)));
  }

  /**
   * About that player.
   *
   * @param name first name, for the sentences
   * @param age in whole years
   */
  public DrillQuestion hitter(String name, int age) {
    return and(Stream.of(new HitterAsked(name, age)));
  }

  /** The player works on {@code step}. */
  public DrillQuestion worksOn(Step step) {
    return and(Stream.of(new WorksOn(step.skill(), step.id(), step.name(), step.rung())));
  }

  /** Those steps are behind the player. */
  public DrillQuestion behind(Collection<Step> steps) {
    return and(steps.stream().map(Step::id).sorted().map(StepBehind::new));
  }

  /** Those holds are in force. */
  public DrillQuestion held(Set<Hold.Kind> kinds) {
    return and(kinds.stream().sorted(Comparator.naturalOrder()).map(HeldFrom::new));
  }

  /**
   * The load leaves so many swings.
   *
   * @param tosses of a session, each of which may be a swing
   */
  public DrillQuestion swingsLeft(int left, int tosses) {
    return and(Stream.of(new SwingsLeft(left, tosses)));
  }

  private DrillQuestion and(Stream<?> more) {
    List<Object> all = new ArrayList<>(facts);
    more.forEach(all::add);
    return new DrillQuestion(all, reach);
  }

  /** What was said, as facts for the rules. */
  List<Object> facts() {
    return facts;
  }

  /** The age at which tosses are measured; empty where room is not asked about. */
  Optional<AgeBand> reach() {
    return reach;
  }

  /** The player's first name; empty where no player is asked about. */
  Optional<String> name() {
    return facts.stream()
        .filter(HitterAsked.class::isInstance)
        .map(fact -> ((HitterAsked) fact).name())
        .findFirst();
  }

  /** Whether a fact of that type is among what was said. */
  boolean about(Class<?> type) {
    return facts.stream().anyMatch(type::isInstance);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DrillQuestion question
        && facts.equals(question.facts)
        && reach.equals(question.reach);
  }

  @Override
  public int hashCode() {
    return 31 * facts.hashCode() + reach.hashCode();
  }
}
