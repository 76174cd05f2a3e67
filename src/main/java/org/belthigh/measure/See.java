package org.belthigh.measure;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.belthigh.intake.Toss;
import org.belthigh.model.Grain;

/**
 * How well a player sees where the toss comes.
 *
 * @param grains a reading for every grain; a finer call counts at every coarser grain too
 */
public record See(Map<Grain, Reading> grains) {
  public See {
    grains = Map.copyOf(grains);
    if (grains.size() != Grain.values().length) {
      throw new IllegalArgumentException("a reading for every grain, but there are " + grains);
    }
  }

  /**
   * The calls at one grain. A call after a swing is half given away by the swing; those of tosses
   * that were let go are the clean test.
   *
   * @param all both together
   * @param onTakes without a swing
   * @param onSwings after a swing
   */
  public record Reading(Calls all, Calls onTakes, Calls onSwings) {}

  /** The calls at {@code grain}. */
  public Reading at(Grain grain) {
    return grains.get(grain);
  }

  static See of(List<Toss> tosses) {
    Map<Boolean, List<Toss>> bySwing =
        tosses.stream().collect(Collectors.partitioningBy(Toss::swing));
    Map<Grain, Reading> grains = new EnumMap<>(Grain.class);
    Arrays.stream(Grain.values())
        .forEach(
            grain ->
                grains.put(
                    grain,
                    new Reading(
                        Calls.of(grain, tosses),
                        Calls.of(grain, bySwing.get(false)),
                        Calls.of(grain, bySwing.get(true)))));
    return new See(grains);
  }
}
