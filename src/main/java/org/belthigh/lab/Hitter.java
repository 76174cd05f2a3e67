package org.belthigh.lab;

import java.util.Optional;
import org.belthigh.catalogue.Step;
import org.belthigh.model.Coded;

/**
 * A kind of hitter, by the true chance of success week by week.
 *
 * <p>A level of 0 is the floor of the step, 1 its mark; above 1 lies better than the mark.
 */
public enum Hitter implements Coded {
  /** At the floor all season, in each share that the step counts: any move up is false. */
  AT_FLOOR,
  /** Takes at their floor, chases at their mark: any move up is false. */
  TAKES_AT_FLOOR,
  /** Chases at their floor, takes at their mark: any move up is false. */
  CHASES_AT_FLOOR,
  /** As {@link #AT_FLOOR}, but good and bad tosses come in runs. */
  STREAKY_AT_FLOOR,
  /** At the mark all season: any firm-up is false. */
  AT_MARK,
  /** Takes at their mark, chases never: what the test of one share costs alone. */
  TAKES_AT_MARK,
  /** Chases at their mark, no belt-high ball let go. */
  CHASES_AT_MARK,
  /** As {@link #AT_MARK}, but good and bad tosses come in runs. */
  STREAKY_AT_MARK,
  /** Half way between. */
  BETWEEN,
  /** Better by the same amount each week, from the floor to a quarter past the mark. */
  LEARNING,
  /** At the mark, but for two weeks at the floor. */
  SLUMPING;

  /** Where a learner stops, in levels. */
  private static final double LEARNT = 1.25;

  /** So far past the mark that the share never waits for proof. */
  private static final double SURE = 100;

  /**
   * Share of tosses that simply repeat the one before it; ours, with no source. It is the
   * correlation of neighbours, and makes a share over many tosses vary as if only (1 - r) / (1 + r)
   * of them, two thirds, had been seen.
   */
  private static final double RUNS = 0.2;

  private static final int SLUMP_FROM = 5;
  private static final int SLUMP_TO = 6;

  /** Whether a move up is false. */
  public boolean atFloor() {
    return ordinal() <= STREAKY_AT_FLOOR.ordinal();
  }

  /** Whether a firm-up is false. */
  public boolean atMark() {
    return this == AT_MARK || this == STREAKY_AT_MARK;
  }

  /** The one share that is tried, where the other never waits for proof; empty for all. */
  Optional<Step.Counted> alone() {
    return switch (this) {
      case TAKES_AT_MARK -> Optional.of(Step.Counted.TAKES);
      case CHASES_AT_MARK -> Optional.of(Step.Counted.CHASES);
      default -> Optional.empty();
    };
  }

  /** Whether the true share is the same all season. */
  boolean steady() {
    return this != LEARNING && this != SLUMPING;
  }

  /** Whether good and bad tosses come in runs. */
  boolean streaky() {
    return this == STREAKY_AT_FLOOR || this == STREAKY_AT_MARK;
  }

  /** Share of tosses that simply repeat the one before it. */
  double runs() {
    return streaky() ? RUNS : 0;
  }

  /**
   * The level of one share.
   *
   * @param week 1 for the first
   * @param crossing the week in which a learner reaches the mark, 2 or later
   */
  double level(Step.Counted counted, int week, int crossing) {
    boolean takes = counted == Step.Counted.TAKES;
    return switch (this) {
      case AT_FLOOR, STREAKY_AT_FLOOR -> 0;
      case TAKES_AT_FLOOR -> takes ? 0 : 1;
      case CHASES_AT_FLOOR -> takes ? 1 : 0;
      case AT_MARK, STREAKY_AT_MARK -> 1;
      case TAKES_AT_MARK -> takes ? 1 : SURE;
      case CHASES_AT_MARK -> takes ? SURE : 1;
      case BETWEEN -> 0.5;
      case LEARNING -> Math.min(LEARNT, (week - 1.0) / (crossing - 1.0));
      case SLUMPING -> week >= SLUMP_FROM && week <= SLUMP_TO ? 0 : 1;
    };
  }
}
