package org.belthigh.measure;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.model.Grain;
import org.belthigh.model.Spot;

/**
 * What was tossed, and what somebody would score on it who does not look: a share of right calls
 * says nothing without it.
 *
 * <p>Source: own arithmetic; with 40 % balls "ball" every time is right 40 % of the time, guessing
 * in proportion 20 %.
 *
 * @param grain at which the tosses are read
 * @param tossed how often each answer was the right one
 */
public record TossMix(Grain grain, Map<String, Integer> tossed) {
  public TossMix {
    tossed = Map.copyOf(tossed);
    if (tossed.values().stream().anyMatch(n -> n < 1)) {
      throw new IllegalArgumentException("an answer in the mix was tossed at least once");
    }
  }

  /** Number of tosses. */
  public int tosses() {
    return tossed.values().stream().mapToInt(n -> n).sum();
  }

  /** The answer that was right most often, the first on the picture among equals; or empty. */
  public Optional<String> commonest() {
    int most = tossed.values().stream().mapToInt(n -> n).max().orElse(0);
    return Stream.of(Spot.values())
        .map(grain::seen)
        .filter(answer -> tossed.getOrDefault(answer, 0) == most && most > 0)
        .findFirst();
  }

  /** Share of right calls of one who always says the commonest answer, 0 to 1; or empty. */
  public OptionalDouble alwaysCommonest() {
    return commonest().map(answer -> share(tossed.get(answer))).orElse(OptionalDouble.empty());
  }

  /** Share of right calls of one who guesses each answer as often as it comes, 0 to 1; or empty. */
  public OptionalDouble inProportion() {
    return inProportion(String::equals);
  }

  /** The same, where an answer is right too when it is one spot off; of tosses over the nine. */
  public OptionalDouble withinOneInProportion() {
    return strikes().inProportion((truth, answer) -> Picture.of(grain).steps(truth, answer) <= 1);
  }

  /**
   * The best blind share of calls within one spot, of tosses over the nine: the middle of the
   * picture is a neighbour of all, so that this is often 1. Empty where none was tossed.
   */
  public OptionalDouble withinOneAtBest() {
    TossMix strikes = strikes();
    return Stream.of(Spot.values())
        .filter(Spot::strike)
        .map(grain::seen)
        .mapToInt(
            answer ->
                strikes.tossed.entrySet().stream()
                    .filter(t -> Picture.of(grain).steps(t.getKey(), answer) <= 1)
                    .mapToInt(Map.Entry::getValue)
                    .sum())
        .boxed()
        .max(Integer::compare)
        .map(strikes::share)
        .orElse(OptionalDouble.empty());
  }

  private TossMix strikes() {
    return new TossMix(
        grain,
        tossed.entrySet().stream()
            .filter(t -> !t.getKey().equals(Spot.BALL.id()))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
  }

  private OptionalDouble inProportion(BiPredicate<String, String> right) {
    long pairs =
        tossed.entrySet().stream()
            .flatMapToLong(
                truth ->
                    tossed.entrySet().stream()
                        .filter(answer -> right.test(truth.getKey(), answer.getKey()))
                        .mapToLong(answer -> (long) truth.getValue() * answer.getValue()))
            .sum();
    long n = tosses();
    return n == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) pairs / (n * n));
  }

  private OptionalDouble share(int made) {
    int n = tosses();
    return n == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) made / n);
  }
}
