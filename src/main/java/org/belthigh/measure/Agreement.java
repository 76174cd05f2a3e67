package org.belthigh.measure;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.ToIntBiFunction;
import org.belthigh.model.Share;

/** Pairs of what was so and what was answered, counted. */
final class Agreement {
  private final Map<String, Map<String, Integer>> answersByTruth = new TreeMap<>();
  private final Map<String, Integer> truths = new TreeMap<>();
  private final Map<String, Integer> answers = new TreeMap<>();
  private Share right = Share.none();

  void add(String truth, String answer) {
    answersByTruth.computeIfAbsent(truth, t -> new TreeMap<>()).merge(answer, 1, Integer::sum);
    truths.merge(truth, 1, Integer::sum);
    answers.merge(answer, 1, Integer::sum);
    right = right.and(truth.equals(answer));
  }

  Share right() {
    return right;
  }

  /** What was so, and how often. */
  Map<String, Integer> truths() {
    return Map.copyOf(truths);
  }

  /** What was answered, and how often. */
  Map<String, Integer> answers() {
    return Map.copyOf(answers);
  }

  /** The pairs whose truth and answer satisfy {@code made}, of those that satisfy {@code seen}. */
  Share share(BiPredicate<String, String> seen, BiPredicate<String, String> made) {
    int[] counts = new int[2];
    answersByTruth.forEach(
        (truth, given) ->
            given.forEach(
                (answer, n) -> {
                  if (seen.test(truth, answer)) {
                    counts[0] += made.test(truth, answer) ? n : 0;
                    counts[1] += n;
                  }
                }));
    return new Share(counts[0], counts[1]);
  }

  /**
   * Cohen's kappa: (observed - chance) / (1 - chance), where chance is the agreement of answers
   * given blindly in the same mix. Counted in whole numbers and divided once.
   *
   * <p>Empty where nothing was seen or chance agreement is 1. Source: Cohen 1960, checked against
   * the tables of Cohen 1968 and of Fleiss, Cohen and Everitt 1969.
   */
  OptionalDouble kappa() {
    return weightedKappa((truth, answer) -> truth.equals(answer) ? 0 : 1);
  }

  /**
   * Weighted kappa: 1 - (observed disagreement) / (disagreement of blind answers in the same mix),
   * each pair weighed by how wrong the answer is. Counted in whole numbers and divided once.
   *
   * <p>Empty where nothing was seen or blind answers could not disagree. Source: Cohen 1968.
   *
   * @param disagreement of a truth and an answer, 0 for agreement, else above; any scale
   */
  OptionalDouble weightedKappa(ToIntBiFunction<String, String> disagreement) {
    long observed = 0; // times n
    long chance = 0; // times n squared
    for (Map.Entry<String, Integer> truth : truths.entrySet()) {
      Map<String, Integer> given = answersByTruth.get(truth.getKey());
      for (Map.Entry<String, Integer> answer : answers.entrySet()) {
        long weight = disagreement.applyAsInt(truth.getKey(), answer.getKey());
        observed += weight * given.getOrDefault(answer.getKey(), 0);
        chance += weight * truth.getValue() * answer.getValue();
      }
    }
    return chance == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of((double) (chance - right.seen() * observed) / chance);
  }
}
