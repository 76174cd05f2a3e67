package org.belthigh.decide;

import org.belthigh.model.Distance;
import org.belthigh.model.LocalText;
import org.belthigh.model.Phrase;

/**
 * What a rule of the pack {@code drill} concluded: a drill may not be chosen, and what is missing.
 * Public only because the rules are built as a model of their own.
 */
public record Rejected(String rule, DrillAsked drill, Phrase says) implements DrillVerdict {
  /** Nothing more is to be said than which drill it is. */
  public static Rejected of(String rule, DrillAsked drill) {
    return new Rejected(rule, drill, Phrase.of(rule));
  }

  /** It is not done there. */
  public static Rejected at(String rule, DrillAsked drill, PlaceAsked asked) {
    return new Rejected(rule, drill, Phrase.of(rule, "place", asked.place().id()));
  }

  /** The gear is missing. */
  public static Rejected without(String rule, DrillAsked drill, DrillGear gear) {
    return new Rejected(rule, drill, Phrase.of(rule, "gear", gear.name()));
  }

  /** The ball is missing. */
  public static Rejected without(String rule, DrillAsked drill, DrillAt there) {
    return new Rejected(rule, drill, Phrase.of(rule, "ball", there.ball().id()));
  }

  /** It reaches farther than there is room. */
  public static Rejected beyond(String rule, DrillAsked drill, DrillReach reach, RoomThere room) {
    return new Rejected(
        rule,
        drill,
        Phrase.of(rule, "asked", Distance.feet(reach.feet()), "room", Distance.feet(room.feet())));
  }

  /** The player is younger than the step's children are. */
  public static Rejected young(String rule, LaterStep later, HitterAsked hitter) {
    return new Rejected(
        rule, later.drill(), Phrase.of(rule, "from", later.first().fromAge(), "age", hitter.age()));
  }

  /** Another step comes first. */
  public static Rejected before(String rule, LaterStep later, StepNeeds needs) {
    return step(rule, later.drill(), needs.name()).and("later", later.first().name());
  }

  /** It is not of the step that the player works on. */
  public static Rejected other(String rule, DrillAsked drill, WorksOn now) {
    return step(rule, drill, now.name());
  }

  /** More swings than are left. */
  public static Rejected tooMany(String rule, DrillAsked drill, SwingsLeft swings) {
    return new Rejected(
        rule, drill, Phrase.of(rule, "left", swings.left(), "tosses", swings.tosses()));
  }

  private static Rejected step(String rule, DrillAsked drill, LocalText step) {
    return new Rejected(rule, drill, Phrase.of(rule, "step", step));
  }

  private Rejected and(String name, Object value) {
    return new Rejected(rule, drill, says.with(name, value));
  }
}
