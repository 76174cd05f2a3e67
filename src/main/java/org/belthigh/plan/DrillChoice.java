package org.belthigh.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.catalogue.Step;
import org.belthigh.intake.Home;
import org.belthigh.model.Ball;
import org.belthigh.model.Feed;
import org.belthigh.model.Place;
import org.belthigh.model.Skill;

/**
 * Which drill of a step fits a place, its gear and what the player may do.
 *
 * <p>The least used one so far comes first, so that nobody does the same drill until it bores; ties
 * go to the order of the curriculum.
 */
final class DrillChoice {
  /** What no family is asked to have; a tee and a net only where they say so. */
  private static final String MACHINE = "machine";

  /** Gear that a station needs for itself, and the name under which a club counts it. */
  private static final Map<String, String> COUNTED =
      Map.of("tee", "tees", "net", "nets", "screen", "screens", "machine", "machines");

  private final Curriculum curriculum;
  private final Map<String, Integer> equipment;
  private final boolean softball;
  private final Home home;
  private final int reach;
  private final int age;

  /**
   * A choice for one group.
   *
   * @param equipment how many of each the club has; empty where it does not say, which stands for
   *     tees, nets and screens enough, and no machine
   */
  DrillChoice(Curriculum curriculum, Map<String, Integer> equipment, boolean softball) {
    this(curriculum, equipment, softball, Home.USUAL, Integer.MAX_VALUE, 10);
  }

  private DrillChoice(
      Curriculum curriculum,
      Map<String, Integer> equipment,
      boolean softball,
      Home home,
      int reach,
      int age) {
    this.curriculum = curriculum;
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
    return new DrillChoice(curriculum, equipment, softball, family, room, years);
  }

  /** Whether the family has the ball, the gear and the room. */
  private boolean atHome(Drill drill) {
    Ball needed = drill.balls().get(Place.HOME);
    return !drill.gear().contains(MACHINE)
        && has(drill, Home.Gear.TEE)
        && has(drill, Home.Gear.NET)
        && (needed == Ball.NONE || home.instead(needed) != Ball.NONE)
        && Told.feet(drill, age) <= reach
        && (home.swings() || !drill.swing());
  }

  private boolean has(Drill drill, Home.Gear thing) {
    return !drill.gear().contains(thing.id()) || home.gear().contains(thing);
  }

  /** What a player may do just now. */
  enum Swings {
    /** A drill with a swing, else one without. */
    WANTED,
    /** Only a drill without a swing. */
    BARRED
  }

  /**
   * The drill to do.
   *
   * @param adult whether a grown-up tosses there
   * @param used how often the player has had each drill
   * @param bores drills that the player has had too often running
   * @return empty where no drill of the step fits
   */
  Optional<Drill> of(
      Step step,
      Place place,
      boolean adult,
      Swings swings,
      Map<String, Integer> used,
      Predicate<Drill> bores) {
    return step.drills().stream()
        .map(curriculum::drill)
        .filter(d -> fits(d, place, adult) && !bores.test(d))
        .filter(d -> swings == Swings.WANTED || !d.swing())
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
  private static Comparator<Drill> leastUsed(Map<String, Integer> used, Place place) {
    return Comparator.comparingInt(d -> used.getOrDefault(d.id(), 0) + reluctance(d, place));
  }

  /**
   * How much more often another drill is done before this one's turn comes: where bats and balls
   * are at hand, what is about hitting is done with them; what is written down tells how it goes;
   * and the rest is the change that keeps it fresh.
   */
  private static int reluctance(Drill drill, Place place) {
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

  /** The first rung of its ladder that a drill belongs to. */
  int easiestRung(Drill drill) {
    return curriculum.ladders().get(drill.skill()).steps().stream()
        .filter(s -> s.drills().contains(drill.id()))
        .mapToInt(Step::rung)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** All drills that can be done at {@code place} with a grown-up there, by id. */
  List<Drill> drills(Place place) {
    return curriculum.drills().values().stream()
        .filter(d -> fits(d, place, true))
        .sorted(Comparator.comparing(Drill::id))
        .toList();
  }

  /**
   * How many stations can use a thing at the same time, by gear; what the club does not count is
   * enough.
   */
  Map<String, Integer> stock() {
    Map<String, Integer> stock = new TreeMap<>();
    if (!equipment.isEmpty()) {
      COUNTED.forEach((gear, name) -> stock.put(gear, equipment.getOrDefault(name, 0)));
    }
    return stock;
  }

  /** Whether it can be done at {@code place} with the gear and the people there. */
  boolean fits(Drill drill, Place place, boolean adult) {
    if (!drill.at(place) || (drill.adults() > 0 && !adult) || drill.helpers() > 0) {
      return false;
    }
    return place == Place.HOME
        ? atHome(drill)
        : has(drill, "tee", "tees") && has(drill, "net", "nets") && screened(drill) && fed(drill);
  }

  private boolean has(Drill drill, String gear, String stock) {
    return !drill.gear().contains(gear)
        || equipment.isEmpty()
        || equipment.getOrDefault(stock, 0) > 0;
  }

  /** A hard ball is tossed from behind a screen or not at all. */
  private boolean screened(Drill drill) {
    return has(drill, "screen", "screens");
  }

  private boolean fed(Drill drill) {
    return drill.feed() != Feed.MACHINE || equipment.getOrDefault("machines", 0) > 0;
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
