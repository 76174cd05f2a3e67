package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.model.Skill;

/**
 * A fact for the rules of the pack {@code progress}: what the tosses of one kind say at the end of
 * a day. Proof is a log likelihood ratio in nats: how much better the mark explains the tosses than
 * the floor does. Public only because the rules are built as a model of their own.
 *
 * @param kind 0 for the first kind of tosses that the step counts
 * @param seen counted tosses
 * @param best highest proof for the mark so far
 * @param against proof against the mark now
 * @param before plain proof for the mark from the tosses before the last days
 * @param dip plain proof against the mark from the last days alone
 */
public record Proof(
    String player,
    Skill skill,
    LocalDate day,
    int kind,
    int seen,
    double best,
    double against,
    double before,
    double dip) {
  /** Whether what came before the last days spoke for the mark. */
  public boolean wasGood() {
    return before > 0;
  }
}
