package org.belthigh.intake;

import java.util.EnumSet;
import java.util.Set;
import org.belthigh.model.Ball;
import org.belthigh.model.Coded;
import org.belthigh.model.Space;

/**
 * Where and with what a family can practise.
 *
 * @param gear what they have
 */
public record Home(Space space, Set<Gear> gear) {
  /** What is taken where the roster says nothing: a driveway, plastic and foam balls. */
  public static final Home USUAL = new Home(Space.DRIVEWAY, EnumSet.of(Gear.PLASTIC, Gear.FOAM));

  public Home {
    gear = Set.copyOf(gear);
  }

  /** What a family may have or lack. */
  public enum Gear implements Coded {
    PLASTIC,
    FOAM,
    TEE,
    NET
  }

  /** Whether a bat may be swung there. */
  public boolean swings() {
    return space != Space.HALLWAY;
  }

  /**
   * The ball to use for a drill that is done with {@code ball}: foam for plastic indoors and where
   * there is no plastic; {@link Ball#NONE} where they have none that will do.
   */
  public Ball instead(Ball ball) {
    if (ball == Ball.PLASTIC && gear.contains(Gear.PLASTIC) && swings()) {
      return Ball.PLASTIC;
    }
    boolean soft = ball == Ball.PLASTIC || ball == Ball.FOAM;
    return soft && gear.contains(Gear.FOAM) ? Ball.FOAM : Ball.NONE;
  }
}
