package org.belthigh.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.decide.DrillQuestion;
import org.belthigh.decide.Drills;
import org.belthigh.decide.Hold;
import org.belthigh.decide.Reason;
import org.belthigh.intake.Home;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/**
 * Which drill is done, of those that no rule rejects for the place, its gear and the player.
 *
 * <p>The least used one so far comes first, so that nobody does the same drill until it bores; ties
 * go to the order of the curriculum. May be shared by threads.
 */
final class DrillChoice {
  private static final String MACHINE = "machine";

  /** Gear that a station needs for itself, and the name under which a club counts it. */
  private static final Map<String, String> COUNTED =
      Map.of("tee", "tees", "net", "nets", "screen", "screens", MACHINE, "machines");

  /** What a family may have or lack; nobody is asked to have a machine. */
  private static final Set<String> COUNTED_AT_HOME =
      Set.of(Home.Gear.TEE.id(), Home.Gear.NET.id(), MACHINE);

  private final Curriculum curriculum;
  private final Drills drills;
  private final Map<String, Integer> equipment;
  private final boolean softball;
  private final Home home;
  private final int reach;
  private final int age;

  /** What the rules reject there and at a step: looked up for every child at every post. */
  private final Map<Place, Set<String>> rejectedWithAdult = new ConcurrentHashMap<>();

  private final Map<Place, Set<String>> rejectedAlone = new ConcurrentHashMap<>();
  private final Map<String, Set<String>> rejectedAtStep = new ConcurrentHashMap<>();

  /** A choice for one group that shares its drills with nobody. */
  DrillChoice(Curriculum curriculum, Map<String, Integer> equipment, boolean softball) {
    this(curriculum, new Drills(curriculum), equipment, softball);
  }

  /**
   * A choice for one group.
   *
   * @param drills those of {@code curriculum}, as the rules see them
   * @param equipment how many of each the club has; empty where it does not say, which stands for
   *     tees, nets and screens enough, and no machine
   */
  DrillChoice(
      Curriculum curriculum, Drills drills, Map<String, Integer> equipment, boolean softball) {
    this(curriculum, drills, equipment, softball, Home.USUAL, Integer.MAX_VALUE, 10);
  }

  private DrillChoice(
      Curriculum curriculum,
      Drills drills,
      Map<String, Integer> equipment,
      boolean softball,
      Home home,
      int reach,
      int age) {
    this.curriculum = curriculum;
    this.drills = drills;
    this.equipment = equipment;
    this.softball = softball;
    this.home = home;
    this.reach = reach;
    this.age = age;
  }

  /**
   * The same choice for one family.
   *
   * @param room farthest toss, in feet, that they have room for
   * @param years age of the hitter
   */
  DrillChoice in(Home family, int room, int years) {
    return new DrillChoice(curriculum, drills, equipment, softball, family, room, years);
  }

  /** What is at {@code place}, as the rules are asked about it. */
  DrillQuestion there(Place place, boolean adult) {
    DrillQuestion at = adult ? DrillQuestion.at(place).grownUp() : DrillQuestion.at(place);
    return place == Place.HOME
        ? at.gear(COUNTED_AT_HOME, familyGear())
            .balls(familyBalls())
            .room(reach, home.swings(), age)
        : at.gear(COUNTED.keySet(), clubGear()).balls(EnumSet.allOf(Ball.class));
  }

  private Set<String> familyGear() {
    return home.gear().stream().map(Coded::id).collect(Collectors.toSet());
  }

  private Set<Ball> familyBalls() {
    return Arrays.stream(Ball.values())
        .filter(ball -> home.instead(ball) != Ball.NONE)
        .collect(Collectors.toSet());
  }

  private Set<String> clubGear() {
    return COUNTED.keySet().stream()
        .filter(gear -> equipment.isEmpty() ? !gear.equals(MACHINE) : count(gear) > 0)
        .collect(Collectors.toSet());
  }

  private int count(String gear) {
    return equipment.getOrDefault(COUNTED.get(gear), 0);
  }

  /** What speaks against {@code drill}; nothing where it may be chosen. */
  List<Reason> against(Drill drill, DrillQuestion asked) {
    return drills.against(asked).getOrDefault(drill.id(), List.of());
  }

  /**
   * The drill to do.
   *
   * @param adult whether a grown-up tosses there
   * @param leave what holds and load leave the player
   * @param used how often the player has had each drill
   * @param bores drills that the player has had too often running
   * @return empty where no drill of the step fits
   */
  Optional<Drill> of(
      Step step,
      Place place,
      boolean adult,
      DrillQuestion leave,
      Map<String, Integer> used,
      Predicate<Drill> bores) {
    return step.drills().stream()
        .map(curriculum::drill)
        .filter(d -> fits(d, place, adult) && drills.open(d, leave) && !bores.test(d))
        .min(leastUsed(used, place));
  }

  /** Whether a step has a drill to write down that can be done at {@code place}. */
  boolean logged(Step step, Place place) {
    return step.drills().stream()
        .map(curriculum::drill)
        .anyMatch(d -> d.logged() && fits(d, place, true));
  }

  /** Whether a step has another drill than {@code drill} that can be done at {@code place}. */
  boolean alternate(Step step, Drill drill, Place place) {
    return step.drills().stream()
        .filter(id -> !id.equals(drill.id()))
        .anyMatch(id -> fits(curriculum.drill(id), place, true));
  }

  /** The order in which drills are picked: those had least often first. */
  static Comparator<Drill> leastUsed(Map<String, Integer> used, Place place) {
    return Comparator.comparingInt(d -> used.getOrDefault(d.id(), 0) + reluctance(d, place));
  }

  /**
   * How much more often another drill is done before this one's turn comes: where bats and balls
   * are at hand, what is about hitting is done with them; what is written down tells how it goes;
   * and the rest is the change that keeps it fresh.
   */
  static int reluctance(Drill drill, Place place) {
    boolean bare = !drill.swing() || drill.balls().get(place) == Ball.NONE;
    return (drill.skill() != Skill.SEE && bare ? 2 : 0) + (drill.logged() ? 0 : 1);
  }

  /** Whether the curriculum has a drill with that id; an old plan may name others. */
  boolean known(String id) {
    return curriculum.drills().containsKey(id);
  }

  /** The drill with that id. */
  Drill drill(String id) {
    return curriculum.drill(id);
  }

  /** Whether a drill comes with a step above {@code step}, or with none. */
  boolean early(Drill drill, Step step) {
    return rejectedAtStep
        .computeIfAbsent(
            step.id(), id -> drills.against(DrillQuestion.any().worksOn(step)).keySet())
        .contains(drill.id());
  }

  /** All drills that can be done at {@code place} with a grown-up there, by id. */
  List<Drill> drills(Place place) {
    return curriculum.drills().values().stream()
        .filter(d -> fits(d, place, true))
        .sorted(Comparator.comparing(Drill::id))
        .toList();
  }

  /** Whether holds leave a player who is at a practice any of the drills that are done there. */
  boolean turn(Place place, Set<Hold.Kind> held) {
    DrillQuestion at = there(place, true);
    return held.isEmpty() || none(at) || !none(at.held(held));
  }

  private boolean none(DrillQuestion asked) {
    return drills.against(asked).size() == curriculum.drills().size();
  }

  /**
   * How many stations can use a thing at the same time, by gear; what the club does not count is
   * enough.
   */
  Map<String, Integer> stock() {
    Map<String, Integer> stock = new TreeMap<>();
    if (!equipment.isEmpty()) {
      COUNTED.keySet().forEach(gear -> stock.put(gear, count(gear)));
    }
    return stock;
  }

  /** Whether it can be done at {@code place} with the gear and the people there. */
  boolean fits(Drill drill, Place place, boolean adult) {
    return !(adult ? rejectedWithAdult : rejectedAlone)
        .computeIfAbsent(place, p -> drills.against(there(p, adult)).keySet())
        .contains(drill.id());
  }

  /** The ball in hand: a softball group hits softballs where others hit baseballs. */
  Ball ball(Drill drill, Place place) {
    Ball ball = drill.balls().get(place);
    if (place == Place.HOME) {
      return home.instead(ball);
    }
    return softball && ball == Ball.BASEBALL ? Ball.SOFTBALL : ball;
  }
}
