package org.belthigh.speed;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;

/** Several measurements of one thing, in one unit. */
record Sample(double median, double lowest, double highest) {
  /**
   * The sample of {@code values}, of which there is at least one.
   *
   * @throws IllegalArgumentException if there is none
   */
  static Sample of(Collection<Double> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("Nothing was measured");
    }
    double[] sorted = values.stream().mapToDouble(v -> v).sorted().toArray();
    int half = sorted.length / 2;
    double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    return new Sample(median, sorted[0], Arrays.stream(sorted).max().orElseThrow());
  }

  /** The same in another unit. */
  Sample times(double factor) {
    return new Sample(median * factor, lowest * factor, highest * factor);
  }

  /** Median, and lowest to highest. */
  String text(String unit) {
    return number(median) + unit + " (" + number(lowest) + " to " + number(highest) + ")";
  }

  /** Three digits that count. */
  static String number(double value) {
    int decimals = value == 0 ? 0 : Math.max(0, 2 - (int) Math.floor(Math.log10(Math.abs(value))));
    return String.format(Locale.ROOT, "%,." + decimals + "f", value);
  }
}
