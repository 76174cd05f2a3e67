package org.belthigh.plan;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Column;
import org.belthigh.model.Row;
import org.belthigh.model.Spot;

/**
 * The order in which a parent tosses.
 *
 * <p>The counts follow the drill's mix, by largest remainder; the sides come evenly. Among all
 * orders of those counts that keep runs short, each is equally likely: whole orders are shuffled
 * from a seed and thrown away until one will do, which favours none of them. The seed is made from
 * the player and the day, so that the same sheet can be printed again.
 */
final class TossScript {
  private static final int SAME_SPOT = 2;
  private static final int SAME_ROW = 3;
  private static final int TRIES = 10_000;

  private TossScript() {}

  /** {@code tosses} spots in order for {@code seed}, any text. */
  static List<Spot> of(Drill.Mix mix, int tosses, String seed) {
    SplittableRandom random = new SplittableRandom(seed(seed));
    List<Spot> order = new ArrayList<>(spots(mix, tosses, random));
    for (int i = 0; i < TRIES; i++) {
      shuffle(order, random);
      if (steady(order)) {
        return List.copyOf(order);
      }
    }
    throw new IllegalStateException(
        "No order of " + tosses + " tosses with the mix " + mix + " keeps runs short");
  }

  private static long seed(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }

  private static List<Spot> spots(Drill.Mix mix, int tosses, SplittableRandom random) {
    int[] counts = counts(new int[] {mix.low(), mix.belt(), mix.high(), mix.ball()}, tosses);
    List<Spot> spots = new ArrayList<>(Collections.nCopies(counts[3], Spot.BALL));
    for (Row row : Row.values()) {
      // the odd tosses of a row fall to any of the three sides alike
      int turn = random.nextInt(3);
      for (int i = 0; i < counts[row.ordinal()]; i++) {
        spots.add(Spot.at(row, Column.values()[(turn + i) % 3]));
      }
    }
    return spots;
  }

  /** Whole counts in the proportion of {@code percent}, by largest remainder, ties to the first. */
  static int[] counts(int[] percent, int total) {
    int[] counts = new int[percent.length];
    int given = 0;
    for (int i = 0; i < percent.length; i++) {
      counts[i] = percent[i] * total / 100;
      given += counts[i];
    }
    while (given < total) {
      int best = 0;
      for (int i = 1; i < percent.length; i++) {
        if (percent[i] * total - counts[i] * 100 > percent[best] * total - counts[best] * 100) {
          best = i;
        }
      }
      counts[best]++;
      given++;
    }
    return counts;
  }

  private static void shuffle(List<Spot> order, SplittableRandom random) {
    for (int i = order.size() - 1; i > 0; i--) {
      Collections.swap(order, i, random.nextInt(i + 1));
    }
  }

  private static boolean steady(List<Spot> order) {
    int spot = 0;
    int row = 0;
    for (int i = 0; i < order.size(); i++) {
      Spot here = order.get(i);
      boolean first = i == 0;
      spot = !first && here == order.get(i - 1) ? spot + 1 : 1;
      row = !first && here.row().equals(order.get(i - 1).row()) ? row + 1 : 1;
      if ((here.strike() && spot > SAME_SPOT) || row > longest(order, here)) {
        return false;
      }
    }
    return true;
  }

  /** Longest run allowed of a row, or of balls: three, or what a one-sided mix cannot avoid. */
  private static int longest(List<Spot> order, Spot spot) {
    int same = (int) order.stream().filter(s -> s.row().equals(spot.row())).count();
    int gaps = order.size() - same + 1;
    return Math.max(SAME_ROW, (same + gaps - 1) / gaps + 2);
  }
}
