package org.belthigh.plan.practice;

import java.util.Set;
import org.belthigh.model.Skill;

/**
 * A drill as a practice sees it.
 *
 * @param id of the drill
 * @param adult whether a grown-up has to be beside it; always so where there is a swing
 * @param swings full swings of each hitter in one visit, for the length of stay and the largest
 *     squad; 0 without a swing
 * @param bare whether it leaves the grown-up or the bat idle: fine to watch with, a waste elsewhere
 * @param gear what one station takes while it runs, of the things that the club counts
 */
public record Task(
    String id, Skill skill, boolean adult, int swings, boolean bare, Set<String> gear) {
  public Task {
    gear = Set.copyOf(gear);
    if (swings < 0 || (swings > 0 && !adult)) {
      throw new IllegalArgumentException(
          "Task " + id + " has swings " + swings + " and adult " + adult);
    }
  }
}
