package org.belthigh.measure;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.belthigh.intake.Tally;
import org.belthigh.intake.Toss;
import org.belthigh.model.MeasureKind;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;

/**
 * How well a player chooses what to swing at: belt-high tosses and balls as one pair, so that
 * nobody looks good by swinging at everything or by taking everything.
 *
 * <p>Tosses near the edge, where the log says so, and tosses of drills without a swing count for
 * neither: no choice can be blamed there. Tallies count; they cannot leave such tosses out.
 *
 * @param swing swings at belt-high tosses (hits) against swings at balls (false alarms)
 * @param exempt belt-high tosses left out because the called field does not want the spot
 * @param nearEdge belt-high tosses and balls left out as near the edge
 * @param watched belt-high tosses and balls left out because the drill has no swing
 * @param swungAt swings at the belt-high tosses of {@code swing} that were logged one by one, by
 *     spot
 */
public record Choose(
    Detection swing, int exempt, int nearEdge, int watched, Map<Spot, Share> swungAt) {
  public Choose {
    swungAt = Map.copyOf(swungAt);
    if (exempt < 0 || nearEdge < 0 || watched < 0) {
      throw new IllegalArgumentException("counts are 0 or more");
    }
  }

  static Choose of(List<Toss> tosses, List<Tally> tallies) {
    List<Toss> choices = tosses.stream().filter(t -> !t.watched() && !t.nearEdge()).toList();
    Share taken = share(choices, tallies, MeasureKind.MIDDLE_TAKE, toss -> !toss.swing());
    return new Choose(
        new Detection(
            new Share(taken.seen() - taken.made(), taken.seen()),
            share(choices, tallies, MeasureKind.BALL_SWING, Toss::swing)),
        count(choices, Toss::exemptByField),
        count(tosses, toss -> asked(toss) && !toss.watched() && toss.nearEdge()),
        count(tosses, toss -> asked(toss) && toss.watched()),
        BySpot.of(choices.stream().filter(t -> t.countsFor(MeasureKind.MIDDLE_TAKE)), Toss::swing));
  }

  private static boolean asked(Toss toss) {
    return toss.countsFor(MeasureKind.MIDDLE_TAKE) || toss.countsFor(MeasureKind.BALL_SWING);
  }

  private static Share share(
      List<Toss> tosses, List<Tally> tallies, MeasureKind measure, Predicate<Toss> made) {
    Share share = Tallied.share(tallies, measure);
    for (Toss toss : tosses) {
      if (toss.countsFor(measure)) {
        share = share.and(made.test(toss));
      }
    }
    return share;
  }

  private static int count(List<Toss> tosses, Predicate<Toss> which) {
    return (int) tosses.stream().filter(which).count();
  }
}
