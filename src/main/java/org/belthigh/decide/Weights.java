package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.intake.Toss;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Place;

/**
 * How much a toss weighs, 0 to 1, before it is known how it went.
 *
 * <p>A weight that does not depend on the outcome keeps the error of the test: for w from 0 to 1
 * the mean of the w-th power of a likelihood ratio is at most 1 (Jensen). All weights are
 * parameters of ours, common practice, in {@code rules/parameters/progress.yaml}.
 *
 * @param home a toss at home, logged by the family
 * @param tally a count instead of single tosses
 * @param afterSwing a call that the swing half gives away
 * @param harderRung logits by which each rung that a drill lies above the step, and each notch that
 *     a toss is harder than its drill, lowers the chance
 * @param difficulty what makes a notch
 * @param halfLifeDays days after which an old toss says half as much
 * @param restart share of the proof's prior that is kept for later beginnings
 */
record Weights(
    double home,
    double tally,
    double afterSwing,
    double harderRung,
    Difficulty difficulty,
    double halfLifeDays,
    double restart) {

  /** The weights in force on {@code day}. */
  static Weights on(Catalogue catalogue, LocalDate day) {
    return new Weights(
        value(catalogue, "weight-home", day),
        value(catalogue, "weight-tally", day),
        value(catalogue, "weight-call-after-swing", day),
        value(catalogue, "harder-rung-logits", day),
        new Difficulty(value(catalogue, "notch-distance", day)),
        value(catalogue, "toss-half-life-days", day),
        value(catalogue, "restart-share", day));
  }

  private static double value(Catalogue catalogue, String id, LocalDate day) {
    return catalogue.parameter(id).on(day).at(AgeBand.AGE_9_10);
  }

  /** The weight of {@code toss}. */
  double of(Toss toss, boolean called) {
    double weight = toss.place().filter(p -> p == Place.HOME).isPresent() ? home : 1.0;
    return called && toss.swing() ? weight * afterSwing : weight;
  }

  /** What is left of a toss after {@code days}. */
  double left(long days) {
    return Math.pow(0.5, days / halfLifeDays);
  }

  /** A chance of success made harder by {@code rungs}; below 0 easier. */
  double harder(double chance, int rungs) {
    if (rungs == 0 || chance <= 0 || chance >= 1) {
      return chance;
    }
    double logit = Math.log(chance / (1 - chance)) - harderRung * rungs;
    return 1 / (1 + Math.exp(-logit));
  }
}
