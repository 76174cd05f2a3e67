package org.belthigh.plan.practice;

import java.util.List;
import java.util.Set;
import org.belthigh.model.Bats;
import org.belthigh.model.Skill;

/**
 * A player who takes part.
 *
 * @param alike sorts hitters of like need side by side
 * @param distances stands for the distances that tosses come from; hitters with the same number
 *     share them
 * @param swingsLeft most swings that the day allows, 1 and up
 * @param week the skills that the week is about
 * @param needs what each task is to the hitter, in the order of the practice's tasks
 * @param had how often the hitter has had each task so far, in the same order
 */
public record Hitter(
    String id,
    String alike,
    Bats bats,
    int distances,
    int swingsLeft,
    Set<Skill> week,
    List<Need> needs,
    List<Integer> had) {
  public Hitter {
    week = Set.copyOf(week);
    needs = List.copyOf(needs);
    had = List.copyOf(had);
    if (swingsLeft < 1 || needs.size() != had.size()) {
      throw new IllegalArgumentException(
          "Hitter " + id + " has " + swingsLeft + " swings left, " + needs.size() + " needs");
    }
  }
}
