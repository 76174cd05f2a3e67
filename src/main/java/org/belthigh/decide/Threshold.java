package org.belthigh.decide;

import org.belthigh.model.AgeBand;

/**
 * A fact for the rules of the pack {@code progress}: a number of ours on the day of the plan.
 * Public only because the rules are built as a model of their own.
 *
 * @param what {@link #DAYS}, {@link #MARK}, {@link #FLOOR} or {@link #DIP}
 * @param kinds of tosses among which the chance of an error is shared out
 */
public record Threshold(String what, AgeBand band, int kinds, double value) {
  /** Different days that a judgement needs. */
  public static final String DAYS = "days";

  /** Proof for the mark that moves up, in nats. */
  public static final String MARK = "mark";

  /** Proof against it that firms up, in nats. */
  public static final String FLOOR = "floor";

  /** Proof against it from the last days alone that is called a dip, in nats. */
  public static final String DIP = "dip";
}
