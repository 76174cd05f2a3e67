package org.belthigh.decide;

/**
 * What a rule of the pack {@code arm} concluded about one day under one book. Public only because
 * the rules are built as a model of their own.
 *
 * @param waits what the no waits for; {@link Waits#NOTHING} unless it is one of rest
 * @param speaks whose sentence is shown where several books conclude it
 */
public record ArmVerdict(String rule, Effect effect, Waits waits, Speaks speaks, ArmDay about)
    implements Verdict {
  /** What follows. */
  public enum Effect {
    NO_PITCHING,
    MAY_PITCH,
    NO_CATCHING,
    NOTE
  }

  /** What a no waits for that is over after a number of days, and no more. */
  public enum Waits {
    /** Nothing that days alone bring. */
    NOTHING,
    /** Days after what was thrown before: an outing on the day itself changes nothing. */
    REST,
    /** Days until a count of several days has room again, the day itself among them. */
    ROOM
  }

  /** Which of several books speaks. */
  public enum Speaks {
    /** Each book for itself, and the club where no book says it. */
    EACH,
    /** The strictest for all, the club's own numbers among them. */
    STRICTEST
  }

  /** A verdict of each book for itself. */
  public static ArmVerdict of(String rule, Effect effect, ArmDay about) {
    return new ArmVerdict(rule, effect, Waits.NOTHING, Speaks.EACH, about);
  }

  /** A verdict of which the strictest book's stands for all. */
  public static ArmVerdict strictest(String rule, Effect effect, ArmDay about) {
    return new ArmVerdict(rule, effect, Waits.NOTHING, Speaks.STRICTEST, about);
  }

  /** No pitching until rest is over. */
  public static ArmVerdict resting(String rule, ArmDay about) {
    return new ArmVerdict(rule, Effect.NO_PITCHING, Waits.REST, Speaks.STRICTEST, about);
  }

  /** No pitching until there is room again. */
  public static ArmVerdict full(String rule, Speaks speaks, ArmDay about) {
    return new ArmVerdict(rule, Effect.NO_PITCHING, Waits.ROOM, speaks, about);
  }

  boolean saysYes() {
    return effect == Effect.MAY_PITCH;
  }
}
