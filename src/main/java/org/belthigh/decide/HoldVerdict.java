package org.belthigh.decide;

/**
 * What a rule of the pack {@code hold} concluded from one open report. Public only because the
 * rules are built as a model of their own.
 *
 * @param thatDayAlone whether it stops the day of the report and no other
 */
public record HoldVerdict(String rule, Hold.Kind kind, boolean thatDayAlone, Open open)
    implements Verdict {
  /** A stop until somebody ends the report. */
  public static HoldVerdict untilEnded(String rule, Hold.Kind kind, Open open) {
    return new HoldVerdict(rule, kind, false, open);
  }

  /** A stop on the day of the report. */
  public static HoldVerdict thatDay(String rule, Hold.Kind kind, Open open) {
    return new HoldVerdict(rule, kind, true, open);
  }
}
