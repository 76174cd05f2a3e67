package org.belthigh.decide;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Step;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Share;
import org.belthigh.model.Side;

/**
 * The pull between a mark and a floor as tosses come in.
 *
 * <p>Each toss adds w·ln(P(toss | mark) / P(toss | floor)) with a weight w from 0 to 1. For a
 * hitter at the floor the power of e to the sum is a non-negative supermartingale that starts at 1,
 * so the chance that it <em>ever</em> reaches 1/e is at most e, however often it is looked at
 * (source: {@code ville-1939}). Three things keep it one: weights are fixed before the outcome;
 * only what speaks for the mark fades with time, never what speaks against it; and a hitter who
 * gets better is met by a mixture of sums, one beginning on each day, whose prior shares add up to
 * 1.
 *
 * <p>Against the mark a single sum is kept the same way round.
 */
final class Tug {
  /** Less than any part of a toss, more than thirds lose when they are added up. */
  private static final double ROUNDING = 1e-6;

  private final Step.Bar bar;
  private final Optional<Side> side;
  private final Catalogue catalogue;
  private final Weights weights;
  private final double markBar;
  private final double floorBar;

  /** One sum a beginning, of which the first {@link #beginnings} are in use. */
  private double[] sums = new double[8];

  private int beginnings;
  private double against;
  private double best;
  private LocalDate lastDay;
  private Pull pull;
  private final List<Weighed> weighed = new ArrayList<>();
  private double seen;
  private final List<Look> looks = new ArrayList<>();

  /** Where the test stood at the end of a day. */
  record Look(LocalDate day, int seen, double best, double against) {}

  /** Tosses of one kind on one day: {@code made} of {@code of}, each weighing {@code weight}. */
  private record Weighed(
      LocalDate day, double weight, double made, double of, int harder, double proof) {}

  /**
   * A test without tosses.
   *
   * @param side the side it is about; empty for both together
   * @param markError chance, over the season, of moving up a hitter at the floor
   * @param floorError chance, over the season, of firming up a hitter at the mark
   */
  Tug(
      Step.Bar bar,
      Optional<Side> side,
      Catalogue catalogue,
      Weights weights,
      double markError,
      double floorError) {
    this.bar = bar;
    this.side = side;
    this.catalogue = catalogue;
    this.weights = weights;
    this.markBar = -Math.log(markError);
    this.floorBar = -Math.log(floorError);
  }

  Step.Counted counted() {
    return bar.counted();
  }

  /** Whether tosses from {@code where} are counted here. */
  boolean takes(Side where) {
    return side.isEmpty() || side.get() == where;
  }

  /** Where fewer is better, a share is turned round: its mark is met by letting go, or not. */
  private boolean fewerIsBetter() {
    return bar.counted() == Step.Counted.TAKES || bar.counted() == Step.Counted.CHASES;
  }

  private double mark(LocalDate day, AgeBand band) {
    return catalogue.parameter(bar.mark()).on(day).at(band);
  }

  private double floor(LocalDate day, AgeBand band) {
    return catalogue.parameter(bar.floor()).on(day).at(band);
  }

  private double good(double share) {
    return fewerIsBetter() ? 1 - share : share;
  }

  /** The chance of success of a hitter at the mark, with a drill so many rungs harder. */
  double chanceAtMark(LocalDate day, AgeBand band, int harder) {
    return weights.harder(good(mark(day, band)), harder);
  }

  /** The chance of success of a hitter at the floor, with a drill so many rungs harder. */
  double chanceAtFloor(LocalDate day, AgeBand band, int harder) {
    return weights.harder(good(floor(day, band)), harder);
  }

  /**
   * Adds {@code made} successes of {@code of} tosses; a success is what the mark hopes for. A toss
   * that two people marked comes as two halves.
   *
   * @param harder by how many rungs and notches the tosses are harder than the step asks
   */
  void add(double made, double of, LocalDate day, AgeBand band, int harder, double weight) {
    Pull pull = pull(day, band, harder);
    add(made * pull.success() + (of - made) * pull.failure(), made, of, day, harder, weight);
  }

  /** What a success and a failure of a day's drill say; the tosses of a day share it. */
  private record Pull(LocalDate day, AgeBand band, int harder, double success, double failure) {
    boolean fits(LocalDate otherDay, AgeBand otherBand, int otherHarder) {
      return harder == otherHarder && band == otherBand && day.equals(otherDay);
    }
  }

  private Pull pull(LocalDate day, AgeBand band, int harder) {
    if (pull == null || !pull.fits(day, band, harder)) {
      double mark = chanceAtMark(day, band, harder);
      double floor = chanceAtFloor(day, band, harder);
      pull =
          new Pull(day, band, harder, Math.log(mark / floor), Math.log((1 - mark) / (1 - floor)));
    }
    return pull;
  }

  /** Adds a log likelihood ratio that was reckoned elsewhere, such as that of a finished score. */
  void add(double ratio, double made, double of, LocalDate day, int harder, double weight) {
    enter(day);
    for (int j = 0; j < beginnings; j++) {
      sums[j] += weight * ratio;
    }
    against -= weight * ratio;
    seen += of;
    weighed.add(new Weighed(day, weight, made, of, harder, weight * ratio));
  }

  /** Begins a new day: what speaks for something fades, and one more sum begins. */
  private void enter(LocalDate day) {
    if (day.equals(lastDay)) {
      return;
    }
    if (lastDay != null) {
      double left = weights.left(ChronoUnit.DAYS.between(lastDay, day));
      for (int j = 0; j < beginnings; j++) {
        sums[j] = fade(sums[j], left);
      }
      against = fade(against, left);
    }
    sums = beginnings == sums.length ? Arrays.copyOf(sums, 2 * beginnings) : sums;
    sums[beginnings++] = 0;
    lastDay = day;
  }

  private static double fade(double sum, double left) {
    return sum > 0 ? sum * left : sum;
  }

  /** Looks at the test, as happens at the end of each day on which tosses were counted. */
  void look(LocalDate day) {
    best = Math.max(best, proof());
    looks.add(new Look(day, seen(), best, against));
  }

  /** Where it stood after so many days of tosses, 0 for the first; at the start before any. */
  Look look(int index, LocalDate day) {
    return index < 0 ? new Look(day, 0, 0, 0) : looks.get(index);
  }

  /** Tosses seen, each once, however many people marked it. */
  int seen() {
    return (int) Math.round(seen);
  }

  /** Whether any were seen on {@code day}, the newest so far. */
  boolean counted(LocalDate day) {
    return day.equals(lastDay);
  }

  /** Plain counts; where two people disagree on a toss, halves add up, and the rest is a miss. */
  private Share share() {
    double successes = weighed.stream().mapToDouble(Weighed::made).sum();
    int made = (int) Math.floor(successes + ROUNDING);
    return new Share(fewerIsBetter() ? seen() - made : made, seen());
  }

  private int tosses(IntPredicate harder) {
    return (int)
        Math.round(
            weighed.stream().filter(w -> harder.test(w.harder())).mapToDouble(Weighed::of).sum());
  }

  /** The plain proof for the mark from tosses from {@code first} to {@code last}. */
  double proofWithin(LocalDate first, LocalDate last) {
    return weighed.stream()
        .filter(w -> !w.day().isBefore(first) && !w.day().isAfter(last))
        .mapToDouble(Weighed::proof)
        .sum();
  }

  /** The plain proof for the mark from tosses before {@code first}. */
  double proofBefore(LocalDate first) {
    return weighed.stream().filter(w -> w.day().isBefore(first)).mapToDouble(Weighed::proof).sum();
  }

  /** The proof for the mark now: the logarithm of the mixture; 0 without tosses. */
  double proof() {
    double mixed = 0;
    for (int j = 0; j < beginnings; j++) {
      mixed += prior(j) * Math.exp(sums[j]);
    }
    // what is kept for later beginnings has seen nothing yet and stands at 1
    double later = beginnings == 0 ? 1.0 : weights.restart() / beginnings;
    return Math.log(mixed + later);
  }

  /** Shares that add up to 1: most for the first day, r/(j(j-1)) for the j-th. */
  private double prior(int index) {
    int j = index + 1;
    return j == 1 ? 1 - weights.restart() : weights.restart() / ((double) j * (j - 1));
  }

  /** The proof against the mark now. */
  double against() {
    return against;
  }

  double best() {
    return best;
  }

  double markBar() {
    return markBar;
  }

  double floorBar() {
    return floorBar;
  }

  /** The reading on {@code day} for a player of {@code band}. */
  Evidence.Reading reading(LocalDate day, AgeBand band) {
    return new Evidence.Reading(
        bar.counted(),
        side,
        share(),
        tosses(harder -> harder > 0),
        tosses(harder -> harder < 0),
        estimate(day),
        mark(day, band),
        floor(day, band),
        proof(),
        best,
        against,
        markBar,
        floorBar,
        toGo(good(mark(day, band)), good(floor(day, band))));
  }

  private Estimate estimate(LocalDate day) {
    double total = 0;
    double squares = 0;
    double made = 0;
    LocalDate same = null;
    double left = 1;
    for (Weighed w : weighed) {
      left = w.day().equals(same) ? left : weights.left(ChronoUnit.DAYS.between(w.day(), day));
      same = w.day();
      double weight = w.weight() * left;
      total += weight * w.of();
      squares += weight * weight * w.of();
      made += weight * (fewerIsBetter() ? w.of() - w.made() : w.made());
    }
    return Estimate.of(made, total, squares);
  }

  /** Tosses of full weight that a hitter at the mark needs, on average, for the rest. */
  private int toGo(double mark, double floor) {
    double perToss =
        mark * Math.log(mark / floor) + (1 - mark) * Math.log((1 - mark) / (1 - floor));
    return best >= markBar ? 0 : (int) Math.ceil((markBar - proof()) / perToss);
  }
}
