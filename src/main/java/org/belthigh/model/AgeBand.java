package org.belthigh.model;

import java.util.List;
import java.util.Optional;

/** The age bands by which marks and ceilings are given, both ends included. */
public enum AgeBand implements Coded {
  AGE_7_8(7, 8),
  AGE_9_10(9, 10),
  AGE_11_12(11, 12),
  AGE_13_14(13, 14),
  AGE_15_16(15, 16),
  AGE_17_18(17, 18);

  private static final List<AgeBand> ALL = List.of(values());

  private final int from;
  private final int to;

  AgeBand(int from, int to) {
    this.from = from;
    this.to = to;
  }

  /** The band of {@code age} in whole years; the youngest below 7, the oldest above 18. */
  public static AgeBand of(int age) {
    // asked for every toss
    for (AgeBand band : ALL) {
      if (age <= band.to) {
        return band;
      }
    }
    return AGE_17_18;
  }

  /** The band written {@code 9-10}, or empty. */
  public static Optional<AgeBand> parse(String text) {
    return Coded.find(AgeBand.class, text);
  }

  /** As in files: {@code 9-10}. */
  @Override
  public String id() {
    return from + "-" + to;
  }

  /** The youngest age in whole years. */
  public int from() {
    return from;
  }

  /** The oldest age in whole years. */
  public int to() {
    return to;
  }
}
