package org.belthigh.measure;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.belthigh.model.Share;

/** Pairs of what was so and what was answered, counted. */
final class Agreement {
  private final Map<String, Integer> truths = new TreeMap<>();
  private final Map<String, Integer> answers = new TreeMap<>();
  private Share right = Share.none();

  void add(String truth, String answer) {
    truths.merge(truth, 1, Integer::sum);
    answers.merge(answer, 1, Integer::sum);
    right = right.and(truth.equals(answer));
  }

  Share right() {
    return right;
  }

  /**
   * Cohen's kappa: (observed - chance) / (1 - chance), where chance is the agreement of answers
   * given blindly in the same mix. Counted in whole numbers and divided once.
   *
   * <p>Empty where nothing was seen or chance agreement is 1. Source: Cohen 1960, checked against
   * the tables of Cohen 1968 and of Fleiss, Cohen and Everitt 1969.
   */
  OptionalDouble kappa() {
    long n = right.seen();
    long chance = 0; // times n squared
    for (Map.Entry<String, Integer> truth : truths.entrySet()) {
      chance += (long) truth.getValue() * answers.getOrDefault(truth.getKey(), 0);
    }
    return n * n == chance
        ? OptionalDouble.empty()
        : OptionalDouble.of((double) (n * right.made() - chance) / (n * n - chance));
  }
}
