package org.belthigh.plan.practice;

import java.util.Arrays;

/**
 * An answer: who is in which squad, and what each squad does when.
 *
 * @param squadOf the squad of each hitter, in the order of the practice's hitters
 * @param posts by squad and rotation: the place of the task in the practice's list, or {@link
 *     #FIELDS}
 */
@SuppressWarnings("ArrayRecordComponent") // the search changes it a million times a second
public record Arrangement(int[] squadOf, int[][] posts) {
  /** The squad has no task: it fetches balls and writes. */
  public static final int FIELDS = -1;

  Arrangement copy() {
    int[][] copy = new int[posts.length][];
    for (int q = 0; q < posts.length; q++) {
      copy[q] = posts[q].clone();
    }
    return new Arrangement(squadOf.clone(), copy);
  }

  /**
   * How the common swings are shared out over the posts of a squad: like the room that each has,
   * and all of them used.
   *
   * @param common what each hitter has in all
   */
  public int[] shares(Practice practice, int squad, int common) {
    int[] room =
        Arrays.stream(posts[squad])
            .map(t -> t == FIELDS ? 0 : practice.tasks().get(t).swings())
            .toArray();
    int all = Arrays.stream(room).sum();
    int[] shares = new int[room.length];
    int roomSoFar = 0;
    int given = 0;
    for (int r = 0; r < room.length; r++) {
      roomSoFar += room[r];
      int due = all == 0 ? 0 : Math.min(common, all) * roomSoFar / all;
      shares[r] = due - given;
      given = due;
    }
    return shares;
  }
}
