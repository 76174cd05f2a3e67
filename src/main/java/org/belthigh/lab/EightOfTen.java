package org.belthigh.lab;

import java.util.List;

/**
 * The bar that is commonly used: a look each week at the last ten tosses of each kind. Here only to
 * be compared with; nothing decides by it.
 */
final class EightOfTen {
  private static final int LAST = 10;
  private static final int GOOD = 8;

  private EightOfTen() {}

  /** When it moved up: tosses seen by then, of all kinds, and the week; 0 where it never did. */
  record Passed(int tosses, int week) {
    boolean ever() {
      return week > 0;
    }
  }

  /**
   * The first weekly look that passes.
   *
   * @param good for each kind, whether each toss was good, in order
   */
  static Passed passed(List<List<Boolean>> good, Scenario scenario) {
    int days = 0;
    for (int week = 1; week <= Scenario.WEEKS; week++) {
      int now = week;
      days += (int) scenario.days().stream().filter(d -> d.week() == now).count();
      int seen = days * scenario.tossesADay();
      if (good.stream().allMatch(kind -> passes(kind, Math.min(seen, kind.size())))) {
        return new Passed(seen * good.size(), week);
      }
    }
    return new Passed(0, 0);
  }

  private static boolean passes(List<Boolean> kind, int seen) {
    List<Boolean> last = kind.subList(Math.max(0, seen - LAST), seen);
    return last.stream().filter(g -> g).count() >= GOOD;
  }
}
