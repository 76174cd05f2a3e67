package org.belthigh.decide;

import java.time.LocalDate;

/**
 * That a player comes back from a complaint that was cleared. Public only because the rules are
 * built as a model of their own.
 */
public record ComebackVerdict(String rule, Comeback comeback) implements Verdict {
  /** Back since {@code cleared}, for so many days. */
  public static ComebackVerdict of(
      String rule, String player, LocalDate cleared, ComebackDays days) {
    return new ComebackVerdict(
        rule, new Comeback(player, cleared, cleared.plusDays(days.days() - 1L)));
  }
}
