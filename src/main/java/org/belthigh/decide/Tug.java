package org.belthigh.decide;

import java.time.LocalDate;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Step;
import org.belthigh.model.AgeBand;
import org.belthigh.model.Share;

/**
 * The pull between a mark and a floor as tosses come in: a sequential likelihood ratio test.
 *
 * <p>Each toss adds ln(P(toss | mark) / P(toss | floor)). For a hitter at the floor the ratio is a
 * non-negative martingale that starts at 1, so the chance that it <em>ever</em> reaches 1/e is at
 * most e, however often it is looked at (source: {@code ville-1939}); the same holds the other way
 * round for a hitter at the mark. Looking every week therefore costs nothing.
 */
final class Tug {
  private final Step.Bar bar;
  private final Catalogue catalogue;
  private final double markBar;
  private final double floorBar;
  private Share counted = Share.none();
  private double proof;
  private double best;

  /**
   * A test without tosses.
   *
   * @param markError chance, over the season, of moving up a hitter at the floor
   * @param floorError chance, over the season, of firming up a hitter at the mark
   */
  Tug(Step.Bar bar, Catalogue catalogue, double markError, double floorError) {
    this.bar = bar;
    this.catalogue = catalogue;
    this.markBar = -Math.log(markError);
    this.floorBar = -Math.log(floorError);
  }

  Step.Counted counted() {
    return bar.counted();
  }

  /** Where fewer is better, a share is turned round: its mark is met by letting go, or not. */
  private boolean fewerIsBetter() {
    return bar.counted() == Step.Counted.TAKES || bar.counted() == Step.Counted.CHASES;
  }

  double mark(LocalDate day, AgeBand band) {
    return catalogue.parameter(bar.mark()).on(day).at(band);
  }

  double floor(LocalDate day, AgeBand band) {
    return catalogue.parameter(bar.floor()).on(day).at(band);
  }

  private double good(double share) {
    return fewerIsBetter() ? 1 - share : share;
  }

  /** Adds {@code made} successes of {@code of} tosses; a success is what the mark hopes for. */
  void add(int made, int of, LocalDate day, AgeBand band) {
    double mark = good(mark(day, band));
    double floor = good(floor(day, band));
    proof += made * Math.log(mark / floor) + (of - made) * Math.log((1 - mark) / (1 - floor));
    counted = counted.plus(new Share(made, of));
  }

  /** Adds a proof that was reckoned elsewhere, such as that of a finished score. */
  void add(double moreProof, int made, int of) {
    proof += moreProof;
    counted = counted.plus(new Share(made, of));
  }

  /** Looks at the test, as happens at the end of each day. */
  void look() {
    best = Math.max(best, proof);
  }

  int seen() {
    return counted.seen();
  }

  double proof() {
    return proof;
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
    double mark = mark(day, band);
    double floor = floor(day, band);
    int made = fewerIsBetter() ? counted.seen() - counted.made() : counted.made();
    return new Evidence.Reading(
        bar.counted(),
        new Share(made, counted.seen()),
        mark,
        floor,
        proof,
        best,
        markBar,
        floorBar,
        toGo(good(mark), good(floor)));
  }

  /** Tosses that a hitter at the mark needs, on average, for the rest of the proof. */
  private int toGo(double mark, double floor) {
    double perToss =
        mark * Math.log(mark / floor) + (1 - mark) * Math.log((1 - mark) / (1 - floor));
    return best >= markBar ? 0 : (int) Math.ceil((markBar - proof) / perToss);
  }
}
