package org.belthigh.speed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A row of the table.
 *
 * @param what names the row from run to run
 * @param beside the floor or peer of the same run; empty where there is none
 * @param ratio what is compared from run to run; empty where there is nothing beside it
 * @param target empty where none was set
 */
record Row(
    String what, String measured, String beside, OptionalDouble ratio, Optional<Target> target) {
  /** A target in words, and whether it was met. */
  record Target(String words, boolean met) {
    /** Met where {@code value} is at most {@code limit}. */
    static Target atMost(double limit, double value, String words) {
      return new Target(words, value <= limit);
    }

    /** Met where {@code value} is at least {@code limit}. */
    static Target atLeast(double limit, double value, String words) {
      return new Target(words, value >= limit);
    }

    /** Met where both are. */
    Target and(Target other) {
      return new Target(words + "; " + other.words, met && other.met);
    }
  }

  /** A row without anything beside it and without a target. */
  static Row alone(String what, String measured) {
    return new Row(what, measured, "", OptionalDouble.empty(), Optional.empty());
  }

  /** A row with a ratio. */
  static Row beside(String what, String measured, String beside, double ratio) {
    return new Row(what, measured, beside, OptionalDouble.of(ratio), Optional.empty());
  }

  /** The same row with a target. */
  Row with(Target goal) {
    return new Row(what, measured, beside, ratio, Optional.of(goal));
  }

  /** The line of the table. */
  String line() {
    return "| "
        + String.join(
            " | ",
            List.of(
                what,
                measured,
                beside,
                ratio.isPresent() ? Sample.number(ratio.getAsDouble()) : "",
                target.map(Target::words).orElse(""),
                target.map(t -> t.met() ? "yes" : "**no**").orElse("")))
        + " |";
  }
}
