package org.belthigh.decide;

import java.time.LocalDate;

/**
 * The first days after a head injury, a sore arm or a sore back was cleared: less is planned, and
 * only what was allowed is done.
 *
 * @param cleared day of the latest clearance that counts
 * @param last last of these days
 */
public record Comeback(String player, LocalDate cleared, LocalDate last) {
  public Comeback {
    if (last.isBefore(cleared)) {
      throw new IllegalArgumentException("A comeback from " + cleared + " ends before: " + last);
    }
  }

  /** Whether {@code day} is one of these days. */
  public boolean on(LocalDate day) {
    return !day.isBefore(cleared) && !day.isAfter(last);
  }
}
