package org.belthigh.plan.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What has to be decided for one practice: who is in which squad, and which task each squad has in
 * each rotation. Squads go round: squad {@code q} starts at station {@code q} and moves on by one.
 *
 * @param hitters those who take part, by id
 * @param tasks what may be done there, at most {@link #MOST_TASKS}
 * @param stations how many there are, which is also the number of squads
 * @param adultStations how many of them have a grown-up; they come first
 * @param taughtMost most tasks explained at stations with a grown-up
 * @param watchedMost most tasks explained at stations without one
 * @param stock how many stations can use a thing at the same time; what is not named is enough
 */
public record Practice(
    List<Hitter> hitters,
    List<Task> tasks,
    int stations,
    int adultStations,
    int rotations,
    int taughtMost,
    int watchedMost,
    Map<String, Integer> stock) {
  /** Tasks are kept in one long as a set. */
  public static final int MOST_TASKS = 64;

  public Practice {
    hitters = hitters.stream().sorted(Comparator.comparing(Hitter::id)).toList();
    tasks = List.copyOf(tasks);
    stock = Map.copyOf(stock);
    int wanted = tasks.size();
    if (hitters.stream().anyMatch(h -> h.needs().size() != wanted) || wanted > MOST_TASKS) {
      throw new IllegalArgumentException("A practice has " + wanted + " tasks, not for everyone");
    }
    if (adultStations < 1
        || stations < adultStations
        || hitters.size() < stations
        || rotations < 1) {
      throw new IllegalArgumentException(
          hitters.size()
              + " hitters, "
              + stations
              + " stations, "
              + adultStations
              + " with an adult, "
              + rotations
              + " rotations");
    }
  }

  /** Where squad {@code squad} is in {@code rotation}; all count from 0. */
  public int station(int squad, int rotation) {
    return (squad + rotation) % stations;
  }

  /** Which squad is at {@code station} in {@code rotation}; all count from 0. */
  public int squad(int station, int rotation) {
    return Math.floorMod(station - rotation, stations);
  }

  /** Whether a grown-up is at {@code station}, which counts from 0. */
  public boolean adultAt(int station) {
    return station < adultStations;
  }
}
