package org.belthigh.measure;

import java.util.List;
import org.belthigh.intake.Tally;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;

/** Tallies added up. */
final class Tallied {
  private Tallied() {}

  /** All tallies of {@code measure}, which is not the countdown, as one share. */
  static Share share(List<Tally> tallies, MeasureKind measure) {
    return tallies.stream()
        .filter(tally -> tally.measure() == measure)
        .map(tally -> new Share(tally.made(), tally.of()))
        .reduce(Share.none(), Share::plus);
  }
}
