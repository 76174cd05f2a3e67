package org.belthigh.measure;

import java.util.List;

/**
 * One countdown, swing by swing: a ball hit hard costs 1, any other swing 2, until the count is at
 * or below zero.
 *
 * @param swings swings that cost
 * @param hard of them hit hard
 * @param complete whether the count got to zero or below
 * @param free swings after that
 */
record CountdownWalk(int swings, int hard, boolean complete, int free) {
  private static final int HARD_COST = 1;
  private static final int OTHER_COST = 2;

  /**
   * Walks through the swings.
   *
   * @param start the start count, 1 or more
   * @param hits for each swing in order, whether it hit the ball hard
   */
  static CountdownWalk of(int start, List<Boolean> hits) {
    int left = start;
    int swings = 0;
    int hard = 0;
    while (left > 0 && swings < hits.size()) {
      boolean well = hits.get(swings);
      left -= well ? HARD_COST : OTHER_COST;
      hard += well ? 1 : 0;
      swings++;
    }
    return new CountdownWalk(swings, hard, left <= 0, hits.size() - swings);
  }
}
