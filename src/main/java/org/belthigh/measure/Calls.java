package org.belthigh.measure;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.belthigh.intake.Toss;
import org.belthigh.model.Grain;
import org.belthigh.model.Share;
import org.belthigh.model.Spot;

/**
 * The calls of one player at one grain, of tosses logged one by one.
 *
 * @param exact calls that were right, of all
 * @param oneOff calls that missed by one spot, of tosses over the nine: a king's move on the
 *     picture, at the coarser grains the next row or column; empty share at the grain of strikes
 * @param kappa agreement beyond blind answers in the same mix, -1 to 1; empty where nothing was
 *     seen or chance agreement is 1
 * @param weightedKappa the same, a call two spots off being twice as wrong as one off, a ball taken
 *     for a spot or the other way round as wrong as the farthest spot (ours); empty likewise
 * @param ballOrStrike balls called a ball against strikes called a ball
 * @param recall for each answer that was tossed, how often it was called
 * @param precision for each answer that was given, how often it was right
 * @param mix what was tossed, and what blind calls would score on it
 */
public record Calls(
    Share exact,
    Share oneOff,
    OptionalDouble kappa,
    OptionalDouble weightedKappa,
    Detection ballOrStrike,
    Map<String, Share> recall,
    Map<String, Share> precision,
    TossMix mix) {
  public Calls {
    recall = Map.copyOf(recall);
    precision = Map.copyOf(precision);
    if (exact.seen() != mix.tosses()) {
      throw new IllegalArgumentException(
          exact.seen() + " calls cannot be of " + mix.tosses() + " tosses");
    }
  }

  /** Calls that were right or one spot off, of tosses over the nine. */
  public Share withinOne() {
    Share balls = recall.getOrDefault(Spot.BALL.id(), Share.none());
    return new Share(exact.made() - balls.made() + oneOff.made(), oneOff.seen());
  }

  static Calls of(Grain grain, List<Toss> tosses) {
    Agreement agreement = new Agreement();
    tosses.forEach(
        toss -> toss.answer(grain).ifPresent(a -> agreement.add(grain.seen(toss.zone()), a)));
    Picture picture = Picture.of(grain);
    Map<String, Integer> tossed = agreement.truths();
    return new Calls(
        agreement.right(),
        agreement.share(
            (truth, answer) -> !ball(truth), (truth, answer) -> picture.steps(truth, answer) == 1),
        agreement.kappa(),
        agreement.weightedKappa(picture::steps),
        new Detection(
            agreement.share((truth, answer) -> ball(truth), (truth, answer) -> ball(answer)),
            agreement.share((truth, answer) -> !ball(truth), (truth, answer) -> ball(answer))),
        tossed.keySet().stream()
            .collect(
                Collectors.toMap(
                    spot -> spot,
                    spot -> agreement.share((t, a) -> t.equals(spot), String::equals))),
        agreement.answers().keySet().stream()
            .collect(
                Collectors.toMap(
                    answer -> answer,
                    answer -> agreement.share((t, a) -> a.equals(answer), String::equals))),
        new TossMix(grain, tossed));
  }

  private static boolean ball(String answer) {
    return answer.equals(Spot.BALL.id());
  }
}
