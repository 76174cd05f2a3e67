package org.belthigh.audit;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A hold that the club folder calls for.
 *
 * @param rule which rule speaks for it; empty for rest, for which one of several speaks
 * @param until last day held; empty where a person must end it
 * @param why what calls for it, in words
 */
record HoldDue(
    String kind, Optional<String> rule, LocalDate from, Optional<LocalDate> until, String why) {

  /** Whether nothing is thrown on {@code day}. */
  boolean stopsThrowing(LocalDate day) {
    return !kind.equals("swinging") && !day.isBefore(from) && until.filter(day::isAfter).isEmpty();
  }

  String days() {
    return "from " + from + until.map(u -> " to " + u).orElse(" until it is ended");
  }
}
