package org.belthigh.decide;

import java.time.LocalDate;
import java.util.List;

/**
 * What a rule of the pack {@code arm} concluded about one day under one book. Public only because
 * the rules are built as a model of their own.
 *
 * @param waits what the no waits for; {@link Waits#NOTHING} unless it is one of rest
 * @param speaks whose sentence is shown where several books conclude it
 * @param figures the facts that the sentence takes its numbers from
 */
public record ArmVerdict(
    String rule, Effect effect, Waits waits, Speaks speaks, Question about, List<Figure> figures)
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
    ROOM,
    /** The year until the innings of twelve months have room again: no stop on throwing. */
    YEAR
  }

  /** Which of several books speaks. */
  public enum Speaks {
    /** Each book for itself, and the club where no book says it. */
    EACH,
    /** The strictest for all, the club's own numbers among them. */
    STRICTEST
  }

  public ArmVerdict {
    figures = List.copyOf(figures);
  }

  /** A verdict of each book for itself. */
  public static ArmVerdict of(String rule, Effect effect, Question about, Figure... figures) {
    return new ArmVerdict(rule, effect, Waits.NOTHING, Speaks.EACH, about, List.of(figures));
  }

  /** A verdict of which the strictest book's stands for all. */
  public static ArmVerdict strictest(
      String rule, Effect effect, Question about, Figure... figures) {
    return new ArmVerdict(rule, effect, Waits.NOTHING, Speaks.STRICTEST, about, List.of(figures));
  }

  /** No pitching for a time; the strictest book speaks. */
  public static ArmVerdict waiting(
      String rule, Waits waits, Speaks speaks, Question about, Figure... figures) {
    return new ArmVerdict(rule, Effect.NO_PITCHING, waits, speaks, about, List.of(figures));
  }

  boolean saysYes() {
    return effect == Effect.MAY_PITCH;
  }

  /** First day after the rest that is owed; long past where the verdict is not about rest. */
  LocalDate over() {
    return figures.stream()
        .filter(RestOwed.class::isInstance)
        .map(f -> ((RestOwed) f).over())
        .findFirst()
        .orElse(LocalDate.MIN);
  }

  /** Pitches left, where it says yes; else the limit that was reached. */
  int number() {
    return figures.stream().mapToInt(ArmVerdict::number).min().orElse(Integer.MAX_VALUE);
  }

  private static int number(Figure figure) {
    return figure instanceof Room room
        ? room.left()
        : figure instanceof Limit limit ? limit.most() : Integer.MAX_VALUE;
  }
}
